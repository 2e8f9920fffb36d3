// Finds every set of pairs that may be taken for the same, from the printed page alone.
import { type Told, told } from '../../base/index.ts';
import { differencesOf, type Figure, fairlyDifferent, sameFigure } from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import { areAlikeUpright, areOfOneForm } from '../lying-otherwise.ts';
import type { Answer, Pair, Printed } from './task.ts';

type Verdict = 'same' | 'different' | 'doubtful';

/** Doubtful pairs double the answers; more than these say no more than that the page is ambiguous. */
const MOST_DOUBTS = 4;

/** All pairs that print alike, with every choice among those that one may call the same and another not. */
export function solve({ pairs }: Printed): Findings<Answer> {
  const isDirectionMeant = pairs.every(areOfOneForm);
  const verdicts = pairs.map((pair) => verdictOn(pair, isDirectionMeant));
  const placesOf = (wanted: Verdict) =>
    verdicts.flatMap((verdict, place) => (verdict === wanted ? [place] : []));
  const same = placesOf('same');
  const answers = subsets(placesOf('doubtful').slice(0, MOST_DOUBTS)).map((more) =>
    [...same, ...more].sort((a, b) => a - b),
  );
  return { answers, faults: [...numberFaults(pairs.length, same.length), ...twinFaults(pairs)] };
}

/**
 * Doubtful are two that differ by too little, that are mirror images in the letters' way, or dots of one number
 * that lie otherwise; and a figure beside itself turned, where other pairs on the page differ in form: there a
 * turned one is the same thing to many a child.
 */
function verdictOn([one, other]: Pair, isDirectionMeant: boolean): Verdict {
  if (sameFigure(one, other)) return 'same';
  if (!fairlyDifferent(one, other)) return 'doubtful';
  if (differencesOf(one, other).layout) return 'doubtful';
  return areAlikeUpright(one, other) && !isDirectionMeant ? 'doubtful' : 'different';
}

function numberFaults(pairs: number, same: number): readonly Told[] {
  if (pairs < 2) return [told('same-or-different', 'fault.one-pair')];
  if (same === 0) return [told('same-or-different', 'fault.none-same')];
  return same === pairs ? [told('same-or-different', 'fault.all-same')] : [];
}

/** Two boxes with the same two figures invite to match the boxes instead of the figures in them. */
function twinFaults(pairs: readonly Pair[]): readonly Told[] {
  return pairs.flatMap((pair, place) =>
    pairs
      .slice(place + 1)
      .flatMap((other, more) =>
        areTwins(pair, other)
          ? [told('same-or-different', 'fault.twice', { one: place + 1, other: place + more + 2 })]
          : [],
      ),
  );
}

function areTwins([one, other]: Pair, [left, right]: Pair): boolean {
  const holds = (first: Figure, second: Figure) =>
    sameFigure(one, first) && sameFigure(other, second);
  return holds(left, right) || holds(right, left);
}

function subsets<T>(items: readonly T[]): readonly (readonly T[])[] {
  return Array.from({ length: 2 ** items.length }, (_, bits) =>
    items.filter((_, index) => Math.floor(bits / 2 ** index) % 2 === 1),
  );
}
