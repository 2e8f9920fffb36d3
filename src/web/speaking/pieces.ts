// Sentences with controls in them, in whatever order a language has them.
import type { Values } from '../../languages/index.ts';

/** A piece of a sentence: plain words, or the place of a control. */
export type Piece<C extends string> = string | { readonly control: C };

/** Stands round the name of a control before the sentence is cut; no message holds it. */
const MARK = '\u0000';

/** The words between the controls, and the controls, as `say` has them in the places of their names. */
export function piecesOf<C extends string>(
  say: (controls: Values) => string,
  controls: readonly C[],
): readonly Piece<C>[] {
  const marked = Object.fromEntries(controls.map((name) => [name, `${MARK}${name}${MARK}`]));
  return say(marked)
    .split(MARK)
    .map((piece, place) => {
      const control = place % 2 === 1 ? controls.find((name) => name === piece) : undefined;
      return control === undefined ? piece : { control };
    })
    .filter((piece) => piece !== '');
}
