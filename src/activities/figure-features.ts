// Features that any set of figures has: how like they are, which attributes tell them apart, what changes idly.
import type { Figure } from '../figures/index.ts';
import type { Features } from './features.ts';
import {
  ATTRIBUTES,
  type Attribute,
  areAlike,
  type Comparison,
  compareFigures,
} from './figure-comparison.ts';

/** More than three attributes are never needed together. */
const MOST_TOGETHER = 3;

/** The different figures of a set, in the order in which they come first. */
export function distinctFigures(figures: readonly Figure[]): readonly Figure[] {
  const distinct: Figure[] = [];
  for (const figure of figures) {
    if (!distinct.some((other) => areAlike(other, figure))) distinct.push(figure);
  }
  return distinct;
}

/** `likeness`, `quantities`, `mirrored` and `oblique` of figures that must all be told from each other. */
export function likenessFeatures(figures: readonly Figure[]): Features {
  const compared = figures.map((figure) =>
    figures.filter((other) => other !== figure).map((other) => compareFigures(figure, other)),
  );
  return {
    likeness: meanOf(compared.map((pairs) => Math.max(0, ...pairs.map((pair) => pair.likeness)))),
    quantities: meanOf(
      compared.map((pairs) => Math.max(0, ...pairs.map(({ countShare = 0 }) => countShare))),
    ),
    mirrored: shareOf(compared, (pairs) => pairs.some((pair) => pair.isMirror)),
    oblique: shareOf(compared, (pairs) => pairs.some((pair) => pair.isOblique)),
  };
}

/** `likeness`, `quantities`, `mirrored` and `oblique` where each pair by itself must be told apart. */
export function pairFeatures(pairs: readonly Comparison[]): Features {
  return {
    likeness: meanOf(pairs.map(({ likeness }) => likeness)),
    quantities: meanOf(pairs.map(({ countShare = 0 }) => countShare)),
    mirrored: shareOf(pairs, ({ isMirror }) => isMirror),
    oblique: shareOf(pairs, ({ isOblique }) => isOblique),
  };
}

/**
 * How much figures differ among themselves, 0 (all alike) up to 1: the chance that two drawn at random differ,
 * each pair counted by how unlike it is (quadratic entropy: Rao 1982, Theor. Popul. Biol. 21, 24–43, from memory).
 */
export function mixture(figures: readonly Figure[]): number {
  const kinds = distinctFigures(figures);
  const shares = kinds.map((kind) => shareOf(figures, (figure) => areAlike(figure, kind)));
  const unlike = kinds.flatMap((kind, place) =>
    kinds.map((other, otherPlace) => {
      const chance = (shares[place] ?? 0) * (shares[otherPlace] ?? 0);
      return chance * (1 - compareFigures(kind, other).likeness);
    }),
  );
  return unlike.reduce((sum, part) => sum + part, 0);
}

/** How many attributes must be minded together to tell all the figures apart: 1 where one alone does it. */
export function attributesNeeded(figures: readonly Figure[]): number {
  return neededToTell(pairsOf(figures).map(([one, other]) => compareFigures(one, other).differing));
}

/** The same of pairs that must each be told apart, by the attributes in which they differ; at most three. */
export function neededToTell(pairs: readonly ReadonlySet<Attribute>[]): number {
  const tellsAll = (wanted: readonly Attribute[]) =>
    pairs.every((differing) => wanted.some((attribute) => differing.has(attribute)));
  for (let count = 1; count < MOST_TOGETHER; count++) {
    if (subsets(ATTRIBUTES, count).some(tellsAll)) return count;
  }
  return MOST_TOGETHER;
}

/** How many attributes change among the figures, but not among those that must be told apart. */
export function idleAttributes(figures: readonly Figure[], toldApart: readonly Figure[]): number {
  const meant = attributesChanging(toldApart);
  return [...attributesChanging(figures)].filter((attribute) => !meant.has(attribute)).length;
}

/** The attributes in which any two of the figures are seen to differ. */
export function attributesChanging(figures: readonly Figure[]): ReadonlySet<Attribute> {
  const pairs = pairsOf(distinctFigures(figures));
  return new Set(pairs.flatMap(([one, other]) => [...compareFigures(one, other).differing]));
}

function pairsOf<T>(items: readonly T[]): readonly (readonly [T, T])[] {
  return items.flatMap((one, index) =>
    items.slice(index + 1).map((other) => [one, other] as const),
  );
}

function subsets<T>(items: readonly T[], count: number): readonly (readonly T[])[] {
  if (count === 0) return [[]];
  return items.flatMap((item, index) =>
    subsets(items.slice(index + 1), count - 1).map((rest) => [item, ...rest]),
  );
}

function shareOf<T>(items: readonly T[], isSo: (item: T) => boolean): number {
  return items.length === 0 ? 0 : items.filter(isSo).length / items.length;
}

/** The mean; 0 of none. */
export function meanOf(numbers: readonly number[]): number {
  return numbers.length === 0 ? 0 : numbers.reduce((sum, next) => sum + next, 0) / numbers.length;
}
