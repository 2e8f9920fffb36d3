// How easily a young child takes one figure for another, from measured differences, and what is fair at which age.
import { FAIR_DE00 } from '../palette/index.ts';
import {
  type Differences,
  differencesOf,
  fairlyDifferent,
  SIZE_RATIO_FLOOR,
} from './differences.ts';
import { type Figure, formOf } from './figure.ts';
import { INSIDE_FLOOR } from './insides.ts';
import { areLookAlikes, floorOf, LINE_FLOOR } from './likeness.ts';
import { outlineShare, turnedOutlineShare } from './outline-distance.ts';
import { plainest, stanceOf } from './symmetry.ts';
import { NEAR_TEXTURES } from './textures.ts';
import { topologyOf } from './topology.ts';

/** The age in years for which something is fair. */
export type AgeBand = 3 | 4 | 5;

/** How two figures of one form lie to each other; of relations that hold together the first is meant. */
export type DirectionRelation =
  | 'opposite-obliques'
  | 'left-right'
  | 'up-down'
  | 'across'
  | 'turned'
  | 'slightly-turned';

/**
 * Distance of two directions; likeness falls by e for each whole one. The order is published: upright against
 * level, then up-down, then left-right, then mirrored obliques (Rudel & Teuber 1963, J. Comp. Physiol. Psychol.
 * 56, 892–898; left-right against up-down also Uehara 2013, Psychology 4, 736–740; obliques also Corballis &
 * Zalik 1977, J. Exp. Child Psychol. 24, 516). The half turns, rare as errors of children who write from
 * memory, stand before left-right. The numbers are provisional.
 */
const DIRECTION_DISTANCE: Readonly<Record<DirectionRelation, number>> = {
  across: 2.2,
  'up-down': 1.6,
  turned: 1.2,
  'left-right': 0.7,
  'slightly-turned': 0.5,
  'opposite-obliques': 0.35,
};

/** Letters that a broken or closed line tells apart are mixed up least (Gibson et al. 1962); provisional. */
const TOPOLOGY_DISTANCE = 0.6;
/** The most between forms that beginning readers mix up, whatever is measured; provisional. */
const MIXED_UP_DISTANCE = 1;
/** Fills, provisional: solid, outlined and textured are plain; two textures of one family are nearer. */
const FILL_DISTANCE = 1.5;
const NEAR_TEXTURE_DISTANCE = 1;
/** Of dots that lie otherwise less is seen than of outlines as far apart; provisional. */
const LAYOUT_SHARE = 0.5;

/**
 * Weber fraction of four-year-olds (Halberda & Feigenson 2008, Dev. Psychol. 44(5) 1457–1465, from memory):
 * the middle of the ages served.
 */
const WEBER_FRACTION = 0.383;
/** Distance for each standard deviation between two quantities; provisional. */
const QUANTITY_SCALE = 1.5;
/** Up to three are seen at a glance from two years on (Starkey & Cooper 1995, Br. J. Dev. Psychol. 13(4) 399–420). */
const AT_A_GLANCE = 3;
/** Small sets are told apart better at the same ratio (Cheung & Le Corre 2018, J. Num. Cogn. 4(2)); provisional. */
const AT_A_GLANCE_SHARE = 1.5;

/**
 * How like two figures are to a child of three to five, 0 (never taken for each other) to 1 (print alike), to
 * 0.01: e to the power of minus the sum of their distances in each attribute, so that two differences help
 * more than one (Shepard 1987, Science 237, 1317–1323, from memory). Distances are measured in fair distances: CIEDE2000 to
 * the worst served sight, share of outline, length ratio; quantities in standard deviations.
 */
export function pairLikeness(one: Figure, other: Figure): number {
  const found = differencesOf(one, other);
  const distance =
    (found.colourDe00 ?? 0) / FAIR_DE00 +
    (found.fill ? fillDistance(one, other) : 0) +
    Math.log(found.sizeRatio ?? 1) / Math.log(SIZE_RATIO_FLOOR) +
    quantityDistance(one, other, found) +
    shapeDistance(one, other, found);
  return Math.round(100 * Math.exp(-distance)) / 100;
}

function fillDistance({ fill: one }: Figure, { fill: other }: Figure): number {
  const areNear = NEAR_TEXTURES.some((pair) =>
    [one, other].every((fill) => pair.some((texture) => texture === fill)),
  );
  return areNear ? NEAR_TEXTURE_DISTANCE : FILL_DISTANCE;
}

/** Standard deviations between two quantities in the usual model, |a − b| / (w · √(a² + b²)), to scale. */
function quantityDistance(one: Figure, other: Figure, { countRatio }: Differences): number {
  if (countRatio === undefined) return 0;
  const [a, b] = [one.count ?? 1, other.count ?? 1];
  const deviations = Math.abs(a - b) / (WEBER_FRACTION * Math.hypot(a, b));
  const isAtAGlance = Math.max(a, b) <= AT_A_GLANCE;
  return QUANTITY_SCALE * deviations * (isAtAGlance ? AT_A_GLANCE_SHARE : 1);
}

function shapeDistance(one: Figure, other: Figure, found: Differences): number {
  if (found.layout) return (LAYOUT_SHARE * (found.outlineShare ?? 0)) / LINE_FLOOR;
  const relation = directionRelation(one, other);
  if (relation) return DIRECTION_DISTANCE[relation];
  const inside = (found.insideShare ?? 0) / INSIDE_FLOOR;
  return inside + (found.turnedOutlineShare === undefined ? 0 : formDistance(one, other, found));
}

/** Forms that are alike once mirrored are as far apart as their mirror relation lets them be. */
function formDistance(
  one: Figure,
  other: Figure,
  { outlineShare: share = 0 }: Differences,
): number {
  const [form, otherForm] = [formOf(plainest(one)), formOf(plainest(other))];
  const floor = floorOf(form, otherForm);
  const topology = topologyOf(form) === topologyOf(otherForm) ? 0 : TOPOLOGY_DISTANCE;
  const measured = share / floor + topology;
  const mirrored = mirrorRelation(one, other);
  if (mirrored) return Math.min(measured, DIRECTION_DISTANCE[mirrored]);
  return areLookAlikes(form, otherForm) ? Math.min(measured, MIXED_UP_DISTANCE) : measured;
}

/**
 * How two figures of one form lie to each other: as mirror images, at right angles or turned; undefined where
 * they lie alike or are not of one form. Signs that are another sign turned count as that one.
 */
export function directionRelation(one: Figure, other: Figure): DirectionRelation | undefined {
  const [first, second] = [plainest(one), plainest(other)];
  const { turnDeg, mirrored } = differencesOf(first, second);
  if (formOf(first) !== formOf(second) || (turnDeg === undefined && !mirrored)) return undefined;
  const isLeftRight = liesLike(leftRightMirrored(first), second);
  const isUpDown = liesLike(leftRightMirrored(turnedBy(first, 180)), second);
  const isOblique = [first, second].every((figure) => stanceOf(figure).turn % 90 !== 0);
  if (isOblique && (isLeftRight || isUpDown)) return 'opposite-obliques';
  if (isUpDown) return 'up-down';
  if (isLeftRight) return 'left-right';
  if (turnDeg === 90) return 'across';
  return turnDeg !== undefined && turnDeg < 45 ? 'slightly-turned' : 'turned';
}

/**
 * Which mirroring or half turn makes two different forms alike, such as b and d; undefined where none does, or where the
 * insides of pictures tell them apart.
 */
export function mirrorRelation(one: Figure, other: Figure): DirectionRelation | undefined {
  const floor = floorOf(formOf(plainest(one)), formOf(plainest(other)));
  const isAlikeAsItLies = outlineShare(one, other) < floor;
  if (isAlikeAsItLies || turnedOutlineShare(one, other) >= floor) return undefined;
  if ((differencesOf(one, other).insideShare ?? 0) >= INSIDE_FLOOR) return undefined;
  const views = [
    ['left-right', leftRightMirrored(other)],
    ['up-down', leftRightMirrored(turnedBy(other, 180))],
    ['turned', turnedBy(other, 180)],
  ] as const;
  const fitting = views.filter(([, view]) => outlineShare(one, view) < floor);
  return fitting[0]?.[0];
}

/** The figure as a mirror to its right shows it. */
function leftRightMirrored(figure: Figure): Figure {
  return {
    ...figure,
    turn: (360 - (figure.turn ?? 0)) % 360,
    mirrored: !(figure.mirrored ?? false),
  };
}

function turnedBy(figure: Figure, turnDeg: number): Figure {
  return { ...figure, turn: ((figure.turn ?? 0) + turnDeg) % 360 };
}

function liesLike(one: Figure, other: Figure): boolean {
  const [stance, otherStance] = [stanceOf(one), stanceOf(other)];
  return stance.turn === otherStance.turn && stance.mirrored === otherStance.mirrored;
}

/**
 * Least ratio of two quantities above three that is a success and not only above chance, about 80 % right, by
 * age: the usual model with the Weber fractions of Halberda & Feigenson 2008 (0.525, 0.383, 0.229; from memory).
 */
export const FAIR_COUNT_RATIO: Readonly<Record<AgeBand, number>> = { 3: 2, 4: 1.6, 5: 1.3 };

/**
 * Least ratio of lengths by age: its square is the fair ratio of quantities, since area is told apart more
 * finely than number from three to six (Odic et al. 2013); never below what is fair at all.
 */
export const FAIR_SIZE_RATIO: Readonly<Record<AgeBand, number>> = {
  3: 1.42,
  4: SIZE_RATIO_FLOOR,
  5: SIZE_RATIO_FLOOR,
};

/**
 * Relations of directions that are fair at each age. Left and right seen side by side are hard at four still
 * (Fisher & Heincke 1982, Child Dev. 53(1) 235–238) and come at five; mirrored obliques not before six
 * (Corballis & Zalik 1977), nor small turns.
 */
const FAIR_RELATIONS: Readonly<Record<AgeBand, readonly DirectionRelation[]>> = {
  3: ['across', 'up-down'],
  4: ['across', 'up-down', 'turned'],
  5: ['across', 'up-down', 'turned', 'left-right'],
};

/** Whether some difference of two figures is large enough for a child of that age; stricter than `fairlyDifferent`. */
export function fairForAge(one: Figure, other: Figure, age: AgeBand): boolean {
  if (!fairlyDifferent(one, other)) return false;
  const found = differencesOf(one, other);
  const relation = directionRelation(one, other);
  const counts = [one.count ?? 1, other.count ?? 1];
  const leastRatio = Math.max(...counts) <= AT_A_GLANCE ? 1 : FAIR_COUNT_RATIO[age];
  return (
    found.fill === true ||
    (found.colourDe00 ?? 0) >= FAIR_DE00 ||
    (found.sizeRatio ?? 1) >= FAIR_SIZE_RATIO[age] ||
    (found.countRatio !== undefined && found.countRatio >= leastRatio) ||
    (found.layout === true && (found.outlineShare ?? 0) >= LINE_FLOOR) ||
    (relation !== undefined && FAIR_RELATIONS[age].includes(relation)) ||
    (found.insideShare ?? 0) >= INSIDE_FLOOR ||
    hasFairForm(one, other, found)
  );
}

function hasFairForm(one: Figure, other: Figure, { turnedOutlineShare }: Differences): boolean {
  const [form, otherForm] = [formOf(plainest(one)), formOf(plainest(other))];
  return (turnedOutlineShare ?? 0) >= floorOf(form, otherForm) && !areLookAlikes(form, otherForm);
}
