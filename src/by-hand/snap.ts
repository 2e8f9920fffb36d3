// Moves the places of one direction of the page onto a ruler's marks, keeping their order and the blank between them.

/** A household ruler is read at every 5 mm without counting; common practice, no source. */
export const RULER_MM = 5;

/** A place along the page, in mm, and the marks between which it may come to lie. */
export interface Place {
  readonly atMm: number;
  readonly leastMark: number;
  readonly mostMark: number;
}

/** The place `to` comes so many marks after the place `from`, at the least. */
export interface Rule {
  readonly from: number;
  readonly to: number;
  readonly marks: number;
}

/** Places that lie so near in the drawing, in mm, are one. */
const SAME_MM = 0.5;
/** Gaps that differ by no more than this, in mm, are to stay alike. */
const ALIKE_MM = 0.6;
/** How much the whole is stretched or shrunk to meet the marks, as shares. */
const STRETCHES = Array.from({ length: 56 }, (_, index) => 0.8 + index / 80);
/** What counts against a way: marks that places are off, alike gaps that differ, and stretching. By eye. */
const AGAINST = { off: 1, unlike: 4, stretch: 6 } as const;

/** The places of one direction and the rules between them. */
export interface Axis {
  readonly places: readonly Place[];
  readonly rules: readonly Rule[];
}

/** For each place its mark, in units of `RULER_MM`. */
export interface Marks {
  readonly across: readonly number[];
  readonly down: readonly number[];
}

/** Both directions stretched alike, so that squares stay square; undefined where the rules leave no room for all. */
export function snapped(axes: { readonly across: Axis; readonly down: Axis }): Marks | undefined {
  const [across, down] = [solvable(axes.across), solvable(axes.down)];
  if (!across || !down) return undefined;
  let best: (Marks & { readonly against: number }) | undefined;
  for (const stretch of STRETCHES) {
    const [x, y] = [bestAt(across, stretch), bestAt(down, stretch)];
    if (!x || !y) return undefined;
    const against = x.against + y.against + AGAINST.stretch * Math.abs(stretch - 1);
    if (!best || against < best.against - 1e-9) {
      best = { across: x.marks, down: y.marks, against };
    }
  }
  return best;
}

interface Solvable {
  readonly tracks: Tracks;
  readonly into: readonly Rule[][];
  readonly most: readonly number[];
}

function solvable({ places, rules }: Axis): Solvable | undefined {
  const tracks = tracksOf(places);
  const into = chained(tracks, rules);
  const most = into && latest(tracks.all, into);
  return into && most ? { tracks, into, most } : undefined;
}

interface Found {
  readonly marks: readonly number[];
  readonly against: number;
}

function bestAt({ tracks, into, most }: Solvable, stretch: number): Found | undefined {
  const { all, trackOf } = tracks;
  if (all.length === 0) return { marks: [], against: 0 };
  let best: Found | undefined;
  for (const { wanted, exact } of waysAt(all, stretch)) {
    const marks = earliest(all, into, most, wanted);
    if (!marks) return undefined;
    const against = againstOf(all, marks, exact);
    if (!best || against < best.against - 1e-9) best = { marks, against };
  }
  return best && { ...best, marks: trackOf.map((track) => at(best.marks, track)) };
}

interface Tracks {
  /** In order along the page. */
  readonly all: readonly Place[];
  /** For each place its track. */
  readonly trackOf: readonly number[];
}

function tracksOf(places: readonly Place[]): Tracks {
  const order = places
    .map((_, index) => index)
    .sort((a, b) => at(places, a).atMm - at(places, b).atMm);
  const all: Place[] = [];
  const trackOf: number[] = places.map(() => 0);
  for (const index of order) {
    const place = at(places, index);
    const last = all[all.length - 1];
    if (last && place.atMm - last.atMm <= SAME_MM) {
      all[all.length - 1] = {
        atMm: last.atMm,
        leastMark: Math.max(last.leastMark, place.leastMark),
        mostMark: Math.min(last.mostMark, place.mostMark),
      };
    } else all.push(place);
    trackOf[index] = all.length - 1;
  }
  return { all, trackOf };
}

/** For each track the rules that end there, the one that keeps the order among them; undefined: a rule cannot be kept. */
function chained({ all, trackOf }: Tracks, rules: readonly Rule[]): readonly Rule[][] | undefined {
  const into: Rule[][] = all.map((_, track) =>
    track === 0 ? [] : [{ from: track - 1, to: track, marks: 0 }],
  );
  for (const rule of rules) {
    const [from, to] = [at(trackOf, rule.from), at(trackOf, rule.to)];
    if (from >= to) {
      if (rule.marks > 0) return undefined;
    } else into[to]?.push({ from, to, marks: rule.marks });
  }
  return into;
}

/** The last mark that each track may take. */
function latest(all: readonly Place[], into: readonly Rule[][]): readonly number[] | undefined {
  const most = all.map(({ mostMark }) => mostMark);
  for (let track = all.length - 1; track >= 0; track--) {
    if (at(most, track) < at(all, track).leastMark) return undefined;
    for (const { from, marks } of into[track] ?? []) {
      most[from] = Math.min(at(most, from), at(most, track) - marks);
    }
  }
  return most;
}

/** Each track as near to its target as those before it leave it free; undefined: one has no mark left. */
function earliest(
  all: readonly Place[],
  into: readonly Rule[][],
  most: readonly number[],
  targets: readonly number[],
): readonly number[] | undefined {
  const marks: number[] = [];
  for (const [track, { leastMark }] of all.entries()) {
    const least = Math.max(
      leastMark,
      ...(into[track] ?? []).map((rule) => at(marks, rule.from) + rule.marks),
    );
    if (least > at(most, track)) return undefined;
    const wanted = Math.round(at(targets, track));
    marks.push(Math.max(least, Math.min(at(most, track), wanted)));
  }
  return marks;
}

interface Way {
  /** In marks, not yet whole: what is tried, and what it is measured by. */
  readonly wanted: readonly number[];
  readonly exact: readonly number[];
}

/**
 * The drawing stretched about its middle, which comes to lie on a mark or half way between two; and the same with
 * each gap made whole for itself, so that gaps that are alike stay alike.
 */
function* waysAt(all: readonly Place[], stretch: number): Generator<Way> {
  const middle = (at(all, 0).atMm + at(all, all.length - 1).atMm) / 2;
  const byGaps = wholeGaps(all, stretch);
  const gapsMiddle = at(byGaps, byGaps.length - 1) / 2;
  for (const half of [0, 0.5]) {
    const about = Math.round(middle / RULER_MM - half) + half;
    const exact = all.map(({ atMm }) => about + (stretch * (atMm - middle)) / RULER_MM);
    yield { wanted: exact, exact };
    const start = Math.round(about - gapsMiddle);
    yield { wanted: byGaps.map((gap) => start + gap), exact };
  }
}

/** Marks from the first track to each, every gap rounded for itself. */
function wholeGaps(all: readonly Place[], stretch: number): readonly number[] {
  let sum = 0;
  return all.map(({ atMm }, track) => {
    const before = all[track - 1]?.atMm ?? atMm;
    sum += Math.round((stretch * (atMm - before)) / RULER_MM);
    return sum;
  });
}

function againstOf(
  all: readonly Place[],
  marks: readonly number[],
  exact: readonly number[],
): number {
  const off = marks.map((mark, track) => Math.abs(mark - at(exact, track)));
  const mean = off.reduce((sum, each) => sum + each, 0) / off.length;
  return AGAINST.off * mean + AGAINST.unlike * (unlikeGaps(all, marks) / all.length);
}

/** By how many marks gaps differ that are alike in the drawing. */
function unlikeGaps(all: readonly Place[], marks: readonly number[]): number {
  const gaps = all
    .slice(1)
    .map((place, index) => ({
      mm: place.atMm - at(all, index).atMm,
      marks: at(marks, index + 1) - at(marks, index),
    }))
    .sort((one, other) => one.mm - other.mm);
  return gaps.reduce((sum, gap, index) => {
    const before = gaps[index - 1];
    return before && gap.mm - before.mm <= ALIKE_MM
      ? sum + Math.abs(gap.marks - before.marks)
      : sum;
  }, 0);
}

function at<T>(list: readonly T[], index: number): T {
  const found = list[index];
  if (found === undefined) throw new Error(`by hand: no place ${index} of ${list.length}`);
  return found;
}
