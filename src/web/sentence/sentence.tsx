// The recipe as one sentence whose bold words are its controls.
import type { ReactNode } from 'react';
import { Pieces } from '../speaking/pieces-shown.tsx';
import { words } from '../words.ts';
import { parameterControl } from './parameter-controls.tsx';
import { type ControlsProps, shellControls } from './shell-controls.tsx';

export function Sentence(props: ControlsProps) {
  const controls: Readonly<Record<string, ReactNode>> = {
    ...shellControls(props),
    ...Object.fromEntries(
      props.card.parameters.map((card) => [card.name, parameterControl(props, card)]),
    ),
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot flow as one sentence
    <div className="sentence" role="group" aria-label={words.recipe}>
      <Pieces pieces={words.sentence} controls={controls} />
    </div>
  );
}
