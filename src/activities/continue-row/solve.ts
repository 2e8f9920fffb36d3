// Finds every way to fill the empty places of a printed row, read attribute by attribute and figure by figure.
import { type Figure, sameFigure } from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import { faultsOf } from './solve-faults.ts';
import { baseOf, readingsOf } from './solve-readings.ts';
import {
  type AttributeStrand,
  attributeStrands,
  type Filling,
  kindsIn,
  type Strand,
  strandOf,
} from './solve-strands.ts';
import type { Answer, Printed } from './task.ts';

/** No more answers are looked for: one too many is enough. */
const MOST_ANSWERS = 20;

/** One value for each empty place. */
type Full = readonly number[];

/**
 * Each attribute goes on by itself in every way that it can be read; figures are put together from all of
 * these. Whole figures are read in the same ways. All that comes out are answers.
 */
export function solve(printed: Printed): Findings<Answer> {
  const kinds = kindsIn(printed.row);
  const attributes = attributeStrands(printed.row);
  const goings = attributes.map(({ strand }) => goingsOn(strand));
  const parted = together(attributes, goings);
  const [plainest] = parted;
  const whole = strandOf(printed.row, kinds);
  // Where one attribute changes with every figure and alone does, whole figures say nothing more.
  const isNew = attributes.every(({ strand }) => strand.join() !== whole.join());
  const wholes = plainest && isNew ? goingsOnAsWholes(whole, kinds, plainest) : [];
  const answers = distinct([...parted, ...wholes]);
  return {
    answers: answers.slice(0, MOST_ANSWERS).map((figures) => ({ figures })),
    faults: faultsOf(printed, kinds, {
      doesRepeat: plainest !== undefined,
      wanted: answers.flat(),
    }),
  };
}

/** What whole figures lead to; where they leave a place open, it is as in `plainest`. */
function goingsOnAsWholes(
  strand: Strand,
  kinds: readonly Figure[],
  plainest: readonly Figure[],
): readonly (readonly Figure[])[] {
  const fillings = new Map(readingsOf(strand).map((filling) => [filling.join(), filling]));
  return [...fillings.values()].map((filling) =>
    filling.map((kind, place) => kinds[kind ?? -1] ?? plainest[place] ?? {}),
  );
}

/** Every way in which one attribute goes on, the plainest first; none where it shows nothing twice. */
function goingsOn(strand: Strand): readonly Full[] {
  const base = baseOf(strand);
  if (!base) return [];
  const isOneValue = strand.every((value) => value === null || value === 0);
  const fillings: readonly Filling[] = isOneValue ? [base] : [base, ...readingsOf(strand)];
  const ways = new Map<string, Full>();
  for (const filling of fillings) {
    const full = filling.map((value, place) => value ?? base[place] ?? 0);
    ways.set(full.join(), full);
  }
  return [...ways.values()];
}

/** Every choice of one way for each attribute, put together to figures. */
function together(
  attributes: readonly AttributeStrand[],
  goings: readonly (readonly Full[])[],
): readonly (readonly Figure[])[] {
  let answers: readonly (readonly Figure[])[] = [[]];
  for (const [index, { partOf, strand }] of attributes.entries()) {
    const empty = strand.filter((value) => value === null).length;
    answers = answers.flatMap((before) =>
      (goings[index] ?? []).map((way) =>
        Array.from({ length: empty }, (_, place) => ({
          ...before[place],
          ...partOf(way[place] ?? 0),
        })),
      ),
    );
    answers = answers.slice(0, MOST_ANSWERS);
  }
  return answers;
}

function distinct(answers: readonly (readonly Figure[])[]): readonly (readonly Figure[])[] {
  const kept: (readonly Figure[])[] = [];
  for (const answer of answers) {
    if (!kept.some((other) => areAlike(other, answer))) kept.push(answer);
  }
  return kept;
}

function areAlike(one: readonly Figure[], other: readonly Figure[]): boolean {
  return one.every((figure, place) => {
    const match = other[place];
    return match !== undefined && sameFigure(figure, match);
  });
}
