// What the order of the items gives away: entries left out, runs, and orders that can be foreseen.
import type { Answer, Printed } from './task.ts';

const LONGEST_RUN = 2;

/** The faults of the order, read along the rows and, where the rows are known, down the columns. */
export function orderFaults({ key, columns }: Printed, answer: Answer): readonly string[] {
  const unused = key.flatMap((_, place) =>
    answer.includes(place) ? [] : [`no item asks for place ${place + 1} of the key`],
  );
  return [
    ...unused,
    ...readingFaults(answer, key.length, 'along the rows'),
    ...(columns === undefined
      ? []
      : readingFaults(downColumns(answer, columns), key.length, 'down the columns')),
  ];
}

function readingFaults(sequence: Answer, entries: number, way: string): readonly string[] {
  const isRun = (end: number) =>
    end >= LONGEST_RUN &&
    sequence.slice(end - LONGEST_RUN, end + 1).every((entry) => entry === sequence[end]);
  return [
    ...(sequence.some((_, end) => isRun(end))
      ? [`the same entry comes more than ${LONGEST_RUN} times running ${way}`]
      : []),
    ...(goesByKey(sequence, entries) ? [`the items follow the order of the key ${way}`] : []),
    ...(comesRound(sequence) ? [`the items repeat one order ${way}`] : []),
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
