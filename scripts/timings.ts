// How long very many things took, in little and fixed space: counts of times that differ by less than two percent.

const LEAST_MS = 0.001;
const FACTOR = 1.02;
/** From a microsecond to an hour. */
const CLASSES = Math.ceil(Math.log(3.6e6 / LEAST_MS) / Math.log(FACTOR));

/** How many times fell into each class. */
export type Timings = Uint32Array;

export function noTimings(): Timings {
  return new Uint32Array(CLASSES);
}

export function count(timings: Timings, ms: number): void {
  const found = Math.floor(Math.log(Math.max(ms, LEAST_MS) / LEAST_MS) / Math.log(FACTOR));
  const place = Math.min(CLASSES - 1, found);
  timings[place] = (timings[place] ?? 0) + 1;
}

export function addTo(timings: Timings, others: Timings): void {
  for (const [place, more] of others.entries()) timings[place] = (timings[place] ?? 0) + more;
}

/** The time in ms below which a share (0 to 1) of all lie, to one percent; NaN where there are none. */
export function quantileMs(timings: Timings, share: number): number {
  const wanted = timings.reduce((sum, each) => sum + each, 0) * share;
  let sum = 0;
  for (const [place, each] of timings.entries()) {
    sum += each;
    if (sum > 0 && sum >= wanted) return LEAST_MS * FACTOR ** (place + 0.5);
  }
  return Number.NaN;
}
