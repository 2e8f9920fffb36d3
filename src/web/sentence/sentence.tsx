// The recipe as one sentence whose bold words are its controls.
import type { ReactNode } from 'react';
import { Pieces } from '../speaking/pieces-shown.tsx';
import { isInSentence, words } from '../words.ts';
import { ChoiceParameter } from './choice-parameter.tsx';
import { type ControlsProps, shellControls } from './shell-controls.tsx';

export function Sentence(props: ControlsProps) {
  const controls: Readonly<Record<string, ReactNode>> = {
    ...shellControls(props),
    ...Object.fromEntries(
      props.card.parameters.flatMap((card) => {
        const { name, spec } = card;
        if (!isInSentence(name) || spec.kind !== 'choice') return [];
        const value = props.entries.changes[name] ?? props.inForce[name] ?? '';
        const objection = props.objectionTo(name);
        const { edit } = props;
        return [[name, <ChoiceParameter key={name} {...{ card, spec, value, objection, edit }} />]];
      }),
    ),
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot flow as one sentence
    <div className="sentence" role="group" aria-label={words.recipe}>
      <Pieces pieces={words.sentence} controls={controls} />
    </div>
  );
}
