// What the keys choose while the list of a choice is closed, as in any list of the browser's own.
import type { Choice } from './choice.ts';

/** The one beside it for an arrow to a side, the next one that begins with a letter; undefined where there is none. */
export function choiceByKey(
  key: string,
  value: string,
  choices: readonly Choice[],
): string | undefined {
  const at = choices.findIndex((choice) => choice.value === value);
  if (key === 'ArrowLeft') return choices[at - 1]?.value;
  if (key === 'ArrowRight') return choices[at + 1]?.value;
  if (key.trim().length !== 1) return undefined;
  const inTurn = [...choices.slice(at + 1), ...choices.slice(0, at + 1)];
  const letter = key.toLocaleLowerCase();
  return inTurn.find(({ name }) => name.toLocaleLowerCase().startsWith(letter))?.value;
}
