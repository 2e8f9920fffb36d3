// What the figures are called that can be tapped, and what was noted of them.
import type { TapTask } from '../planning/cards.ts';
import type { Tapped } from './result-draft.ts';
import { words } from './words.ts';

/** The name of each mark of a task; figures of one name are numbered in their order. */
export function markNames({ choices, about }: TapTask): ReadonlyMap<number, string> {
  const named = [
    ...choices.map(({ mark, name }) => ({ mark, name })),
    ...about.map(({ mark, name }, place) => ({ mark, name: name || words.place(place + 1) })),
  ];
  return new Map(
    named.map(({ mark, name }) => {
      const alike = named.filter((other) => other.name === name);
      const number = 1 + alike.findIndex((other) => other.mark === mark);
      return [mark, alike.length === 1 ? name : words.numbered(name, number)];
    }),
  );
}

export function notedWords(task: TapTask | undefined, { place, label }: Tapped): string {
  const name = task && markNames(task).get(place);
  const about = task?.about.find(({ mark }) => mark === place);
  if (name === undefined || about === undefined) return words.chosenInstead(name ?? label);
  return about.name === '' ? words.chosenAt(name, label) : words.takenFor(name, label);
}
