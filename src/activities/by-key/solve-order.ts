// What the order of the items gives away: entries left out, runs, and orders that can be foreseen.
import { type Told, told } from '../../base/index.ts';
import type { Answer, Printed } from './task.ts';

const LONGEST_RUN = 2;

/** The faults of the order, read along the rows and, where the rows are known, down the columns. */
export function orderFaults({ key, columns }: Printed, answer: Answer): readonly Told[] {
  const unused = key.flatMap((_, place) =>
    answer.includes(place) ? [] : [told('by-key', 'fault.idle-entry', { place: place + 1 })],
  );
  return [
    ...unused,
    ...readingFaults(answer, key.length, 'rows'),
    ...(columns === undefined
      ? []
      : readingFaults(downColumns(answer, columns), key.length, 'columns')),
  ];
}

function readingFaults(sequence: Answer, entries: number, way: string): readonly Told[] {
  const isRun = (end: number) =>
    end >= LONGEST_RUN &&
    sequence.slice(end - LONGEST_RUN, end + 1).every((entry) => entry === sequence[end]);
  return [
    ...(sequence.some((_, end) => isRun(end))
      ? [told('by-key', 'fault.run', { most: LONGEST_RUN, way })]
      : []),
    ...(goesByKey(sequence, entries) ? [told('by-key', 'fault.key-order', { way })] : []),
    ...(comesRound(sequence) ? [told('by-key', 'fault.round', { way })] : []),
  ];
}

function downColumns(answer: Answer, columns: number): Answer {
  return Array.from({ length: columns }, (_, column) =>
    answer.filter((_, place) => place % columns === column),
  ).flat();
}

/** In the key's order, forwards or backwards, begun again at its end, all the way. */
function goesByKey(sequence: Answer, entries: number): boolean {
  const step = (from: number, to: number) => (to - from + entries) % entries;
  const [first] = sequence;
  const steps = sequence.slice(1).map((entry, index) => step(sequence[index] ?? 0, entry));
  const forwards = first === 0 && steps.every((by) => by === 1);
  const backwards = first === entries - 1 && steps.every((by) => by === entries - 1);
  return forwards || backwards;
}

/** One stretch seen at least twice and repeated to the end. */
function comesRound(sequence: Answer): boolean {
  for (let period = 1; 2 * period <= sequence.length; period++) {
    const head = sequence.slice(0, sequence.length - period);
    if (head.every((entry, place) => entry === sequence[place + period])) return true;
  }
  return false;
}
