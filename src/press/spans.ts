// Stretches of one level line: which parts of it are covered, and what covers more or less of it.

/** Where each covered stretch begins and ends, in mm, one after the other, rising, none touching another. */
export type Spans = readonly number[];

/** A place where the line enters or leaves an outline, and by how much its winding number changes there. */
export interface Crossing {
  readonly x: number;
  readonly winds: number;
}

export type Rule = 'nonzero' | 'evenodd';

/** What lies inside, of one line, by where it crosses the outlines. */
export function spansInside(crossings: readonly Crossing[], rule: Rule): Spans {
  const spans: number[] = [];
  let winding = 0;
  let isInside = false;
  for (const { x, winds } of [...crossings].sort((one, other) => one.x - other.x)) {
    winding += winds;
    const isNowInside = rule === 'nonzero' ? winding !== 0 : winding % 2 !== 0;
    if (isNowInside === isInside) continue;
    isInside = isNowInside;
    // Where one outline ends as another begins, the stretch goes on.
    if (isInside && spans.at(-1) === x) spans.pop();
    else spans.push(x);
  }
  return spans;
}

/** What is covered by either. */
export function united(one: Spans, other: Spans): Spans {
  return combined(one, other, (inOne, inOther) => inOne || inOther);
}

/** What is covered by both. */
export function shared(one: Spans, other: Spans): Spans {
  return combined(one, other, (inOne, inOther) => inOne && inOther);
}

/** What is covered by the first and not by the second. */
export function without(one: Spans, other: Spans): Spans {
  return combined(one, other, (inOne, inOther) => inOne && !inOther);
}

/** How much is covered, in mm. */
export function lengthOf(spans: Spans): number {
  return spans.reduce((sum, x, place) => sum + (place % 2 === 0 ? -x : x), 0);
}

/** Walks along both: an even number of ends behind means outside, an odd one inside. */
function combined(
  one: Spans,
  other: Spans,
  isCovered: (inOne: boolean, inOther: boolean) => boolean,
): Spans {
  const spans: number[] = [];
  let [at, otherAt] = [0, 0];
  let isInside = false;
  while (at < one.length || otherAt < other.length) {
    const x = Math.min(
      one[at] ?? Number.POSITIVE_INFINITY,
      other[otherAt] ?? Number.POSITIVE_INFINITY,
    );
    while (one[at] === x) at++;
    while (other[otherAt] === x) otherAt++;
    const isNowInside = isCovered(at % 2 === 1, otherAt % 2 === 1);
    if (isNowInside !== isInside) spans.push(x);
    isInside = isNowInside;
  }
  return spans;
}
