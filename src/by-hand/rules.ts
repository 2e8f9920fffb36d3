// What must hold between the pieces of a page whatever ruler marks they come to lie on.
import type { Bounds } from '../base/index.ts';
import { blanksBetween, isWithin, middleOf } from './bounds.ts';
import type { Direction } from './parts.ts';
import { isStanding, type Piece } from './piece.ts';
import { type Axis, type Place, RULER_MM, type Rule } from './snap.ts';

/** Between things that are stuck on or drawn, in mm; common practice, no source. */
export const APART_MM = 3;
/** Blank at the edges of a page that a hand keeps, in mm; common practice, no source. */
const EDGE_MM = 12;
/** At the foot the sheet code is written. */
const FOOT_MM = 20;
/** What lies so near to a line in the drawing, in mm, touches it and may go on doing so. */
const TOUCH_MM = 1;
/** A piece may reach so far over the line of its box, in mm: half of a stroke. */
const SLACK_MM = 0.6;

/** A piece at the size at which it is made by hand; bounds of that size about its printed middle. */
export interface Sized {
  readonly piece: Piece;
  readonly bounds: Bounds;
  /** Within which it must stay, where the page is folded. */
  readonly panel?: Bounds;
}

export interface PageSizeMm {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Why some pieces have no places of their own. */
export type Tangled = 'overlapping';

/** Both directions of a page, piece number i with the places 2i and 2i + 1; `overlapping` where pieces lie over one another in a way that places cannot say. */
export function axesOf(
  pieces: readonly Sized[],
  page: PageSizeMm,
): { readonly across: Axis; readonly down: Axis } | Tangled {
  const rules = { across: [] as Rule[], down: [] as Rule[] };
  for (const [i, one] of pieces.entries()) {
    for (let j = i + 1; j < pieces.length; j++) {
      const other = pieces[j];
      if (other && !addRules(rules, { ...one, index: i }, { ...other, index: j })) {
        return 'overlapping';
      }
    }
  }
  return {
    across: { places: placesOf(pieces, 'across', page.widthMm), rules: rules.across },
    down: { places: placesOf(pieces, 'down', page.heightMm), rules: rules.down },
  };
}

function placesOf(
  pieces: readonly Sized[],
  direction: Direction,
  pageMm: number,
): readonly Place[] {
  return pieces.flatMap((sized) => {
    const [from, to] = span(sized.panel ?? pageBounds(pageMm, direction), direction);
    const edgeMm = sized.panel ? APART_MM : 0;
    const half = halfOf(sized, direction);
    const leastMark = Math.ceil((from + edgeMm + half) / RULER_MM - 1e-9);
    const mostMark = Math.floor((to - edgeMm - half) / RULER_MM + 1e-9);
    return endsOf(sized, direction).map((atMm) => ({ atMm, leastMark, mostMark }));
  });
}

function pageBounds(pageMm: number, direction: Direction): Bounds {
  const end = pageMm - (direction === 'down' ? FOOT_MM : EDGE_MM);
  return { left: EDGE_MM, right: end, top: EDGE_MM, bottom: end };
}

function span(bounds: Bounds, direction: Direction): readonly [number, number] {
  return direction === 'across' ? [bounds.left, bounds.right] : [bounds.top, bounds.bottom];
}

/** Twice the middle of what stands, the two ends of what is ruled. */
function endsOf({ piece, bounds }: Sized, direction: Direction): readonly [number, number] {
  if (!isStanding(piece)) return span(bounds, direction);
  const { x, y } = middleOf(bounds);
  const middle = direction === 'across' ? x : y;
  return [middle, middle];
}

/** From a place of the piece to where its ink ends. */
function halfOf({ piece, bounds }: Sized, direction: Direction): number {
  const [from, to] = span(bounds, direction);
  return isStanding(piece) ? (to - from) / 2 : 0;
}

type Numbered = Sized & { readonly index: number };
type Rules = Readonly<Record<Direction, Rule[]>>;

/** False: the two lie over one another. */
function addRules(rules: Rules, one: Numbered, other: Numbered): boolean {
  const blanks = blanksBetween(one.piece.bounds, other.piece.bounds);
  const [inner, outer] = areaOf(one) <= areaOf(other) ? [one, other] : [other, one];
  if (outer.piece.kind === 'box' && isWithin(inner.piece.bounds, outer.piece.bounds, SLACK_MM)) {
    addInside(rules, inner, outer);
    return true;
  }
  if (Math.max(blanks.across, blanks.down) < -SLACK_MM) return mayOverlap(one, other);
  const direction = blanks.across >= blanks.down ? 'across' : 'down';
  const [before, after] = inOrder(one, other, direction);
  const marks = marksFor(before, after, direction, blanks[direction]);
  rules[direction].push({ from: 2 * before.index + 1, to: 2 * after.index, marks });
  return true;
}

function areaOf({ piece: { bounds } }: Sized): number {
  return (bounds.right - bounds.left) * (bounds.bottom - bounds.top);
}

/** A ring round a figure, a line through a box that it divides: they keep their common middles or ends by themselves. */
function mayOverlap(one: Sized, other: Sized): boolean {
  if (!isStanding(one.piece) || !isStanding(other.piece)) {
    return one.piece.kind === 'line' || other.piece.kind === 'line';
  }
  const [a, b] = [middleOf(one.piece.bounds), middleOf(other.piece.bounds)];
  return Math.hypot(a.x - b.x, a.y - b.y) < TOUCH_MM / 2;
}

function inOrder(one: Numbered, other: Numbered, direction: Direction) {
  const isBefore =
    span(one.piece.bounds, direction)[1] <= span(other.piece.bounds, direction)[0] + SLACK_MM;
  return isBefore ? ([one, other] as const) : ([other, one] as const);
}

/** Marks from the last place of one to the first of the next. */
function marksFor(one: Sized, other: Sized, direction: Direction, blankMm: number): number {
  const half = halfOf(one, direction) + halfOf(other, direction);
  const areRuled = !isStanding(one.piece) && !isStanding(other.piece);
  if (areRuled) return blankMm > TOUCH_MM ? 1 : 0;
  const touches = one.piece.kind === 'line' || other.piece.kind === 'line';
  const apartMm = touches && blankMm < TOUCH_MM ? 0 : APART_MM;
  return Math.ceil((half + apartMm) / RULER_MM - 1e-9);
}

function addInside(rules: Rules, inner: Numbered, outer: Numbered): void {
  for (const direction of ['across', 'down'] as const) {
    const [from, to] = span(inner.piece.bounds, direction);
    const [start, end] = span(outer.piece.bounds, direction);
    const half = halfOf(inner, direction);
    const marks = (blankMm: number) =>
      isStanding(inner.piece)
        ? Math.ceil((half + APART_MM) / RULER_MM - 1e-9)
        : blankMm > TOUCH_MM
          ? 1
          : 0;
    rules[direction].push(
      { from: 2 * outer.index, to: 2 * inner.index, marks: marks(from - start) },
      { from: 2 * inner.index + 1, to: 2 * outer.index + 1, marks: marks(end - to) },
    );
  }
}
