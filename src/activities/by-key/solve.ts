// Finds every answer that a printed by-key task admits, and everything that makes it unfit to be given.
import { told } from '../../base/index.ts';
import type { Figure } from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import { idleFaults } from './solve-idle.ts';
import { keyFaults } from './solve-key.ts';
import {
  type Attribute,
  looksEqual,
  mayBeTakenFor,
  readingsOf,
  showsResponse,
} from './solve-looks.ts';
import { orderFaults } from './solve-order.ts';
import type { Answer, Printed } from './task.ts';

/** More answers than this are not listed: a task with two is unfit already. */
const MOST_ANSWERS = 20;

/**
 * All answers: for each item every entry that it can be treated by, under the strict reading (it agrees in
 * all that the key's entries differ in) and under every other that a child may go by.
 */
export function solve(printed: Printed): Findings<Answer> {
  const { key, items } = printed;
  const readings = readingsOf(key);
  // Items that are printed in one way are judged once.
  const known = new Map<string, readonly number[]>();
  const matches = items.map((figure) => {
    const text = JSON.stringify(figure);
    const entries = known.get(text) ?? matchesOf(printed, figure, readings);
    known.set(text, entries);
    return entries;
  });
  const answers = combinationsOf(matches);
  const unmatched = matches.flatMap((entries, item) =>
    entries.length === 0 ? [told('by-key', 'fault.stranger', { item: item + 1 })] : [],
  );
  const [only] = answers;
  return {
    answers,
    faults: [
      ...keyFaults(key),
      ...unmatched,
      ...(only && answers.length === 1
        ? [...orderFaults(printed, only), ...idleFaults(printed, only)]
        : []),
    ],
  };
}

/** The entries that a figure can be treated by, in the order of the key. */
function matchesOf(
  { key }: Printed,
  figure: Figure,
  readings: readonly (readonly Attribute[])[],
): readonly number[] {
  return key.flatMap((entry, place) => {
    const byReading = readings.some((attributes) => looksEqual(figure, entry.figure, attributes));
    const isMatch = byReading || showsResponse(figure, entry.response);
    return isMatch || mayBeTakenFor(figure, entry.figure) ? [place] : [];
  });
}

/** One entry of each list, in every combination, cut off at `MOST_ANSWERS`. */
function combinationsOf(lists: readonly (readonly number[])[]): readonly Answer[] {
  return lists.reduce<readonly Answer[]>(
    (answers, list) =>
      answers.flatMap((answer) => list.map((entry) => [...answer, entry])).slice(0, MOST_ANSWERS),
    [[]],
  );
}
