// The recipe as one sentence whose bold words are its controls.
import { Fragment, type ReactNode } from 'react';
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
      {words.sentence.map((piece, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the pieces never change places
        <Fragment key={place}>
          {typeof piece === 'string' ? (
            piece.replace(MARK, '')
          ) : (
            <span className="with-mark">
              {controls[piece.control]}
              {markBehind(place)}
            </span>
          )}
        </Fragment>
      ))}
    </div>
  );
}

/** A comma or full stop never begins a line: it stays with the word before it. */
const MARK = /^[,.]/;

function markBehind(place: number): string {
  const next = words.sentence[place + 1];
  return typeof next === 'string' ? (MARK.exec(next)?.[0] ?? '') : '';
}
