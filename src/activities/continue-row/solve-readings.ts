// All ways to read a strand: as a unit that repeats, as a row that turns back, and as one that grows.
import { growthsOf } from './solve-growth.ts';
import type { Filling, Strand } from './solve-strands.ts';

/** What the shortest unit that is shown whole at least twice, without a gap in it, leads to. */
export function baseOf(strand: Strand): Filling | undefined {
  for (let period = 1; 2 * period < strand.length; period++) {
    const full = stretchesOf(strand).reduce((sum, length) => sum + Math.floor(length / period), 0);
    const unit = full < 2 ? undefined : unitOf(strand, period);
    if (unit) return emptyPlaces(strand).map((place) => unit.values[place % period] ?? null);
  }
  return undefined;
}

/**
 * What every reading leads to that is borne out by at least one figure standing where another one said it
 * would, and that nothing shown speaks against.
 */
export function readingsOf(strand: Strand): readonly Filling[] {
  return [...repeatsOf(strand), ...mirrorsOf(strand), ...growthsOf(strand)];
}

/** How long each stretch without an empty place is. */
function stretchesOf(strand: Strand): readonly number[] {
  const lengths = [0];
  for (const value of strand) {
    if (value === null) lengths.push(0);
    else lengths.push((lengths.pop() ?? 0) + 1);
  }
  return lengths;
}

function emptyPlaces(strand: Strand): readonly number[] {
  return strand.flatMap((value, place) => (value === null ? [place] : []));
}

/** The unit of a length, unless a figure speaks against it, and whether one is seen again. */
function unitOf(
  strand: Strand,
  period: number,
): { readonly values: Filling; readonly isSeenAgain: boolean } | undefined {
  const values: (number | null)[] = Array.from({ length: period }, () => null);
  let isSeenAgain = false;
  for (const [place, value] of strand.entries()) {
    if (value === null) continue;
    const before = values[place % period] ?? null;
    if (before !== null && before !== value) return undefined;
    if (before !== null) isSeenAgain = true;
    values[place % period] = value;
  }
  return { values, isSeenAgain };
}

/** Units of every length of which one figure at least is seen again. */
function repeatsOf(strand: Strand): readonly Filling[] {
  const fillings: Filling[] = [];
  for (let period = 1; period < strand.length; period++) {
    const unit = unitOf(strand, period);
    if (unit?.isSeenAgain) {
      fillings.push(emptyPlaces(strand).map((place) => unit.values[place % period] ?? null));
    }
  }
  return fillings;
}

/** Turning back on a place or between two: `axis` is the sum of two places that mirror each other. */
function mirrorsOf(strand: Strand): readonly Filling[] {
  const fillings: Filling[] = [];
  for (let axis = 1; axis < 2 * strand.length - 2; axis++) {
    if (isMirror(strand, axis)) {
      fillings.push(emptyPlaces(strand).map((place) => strand[axis - place] ?? null));
    }
  }
  return fillings;
}

function isMirror(strand: Strand, axis: number): boolean {
  let isBorneOut = false;
  for (let place = Math.max(0, axis - strand.length + 1); 2 * place < axis; place++) {
    const [one, other] = [strand[place] ?? null, strand[axis - place] ?? null];
    if (one === null || other === null) continue;
    if (one !== other) return false;
    isBorneOut = true;
  }
  return isBorneOut;
}
