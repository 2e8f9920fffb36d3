// Means over a normal distribution, on a fixed grid: the same sum each time, with no chance in it.

/** How far the grid reaches to each side, in standard deviations: beyond lies less than 2 in 10⁹. */
const REACH = 6;
/**
 * Grid steps in standard deviations. The trapezoid rule on a smooth function that dies away at both ends errs by
 * about e^(−2πd/step), d the distance of the nearest pole; a logistic's is π/sd off, so below 10⁻¹⁰ for sd up to 1.5
 * with the coarse step. The fine one is for many answers at once, which leave a narrow peak between the nodes.
 */
const COARSE = 0.5;
const FINE = 0.25;

interface Node {
  /** In standard deviations from the mean. */
  readonly at: number;
  /** The weights of all nodes come to 1. */
  readonly weight: number;
}

function nodes(step: number): readonly Node[] {
  const each = Array.from({ length: (2 * REACH) / step + 1 }, (_, index) => {
    const at = index * step - REACH;
    return { at, weight: Math.exp((-at * at) / 2) };
  });
  const total = each.reduce((sum, { weight }) => sum + weight, 0);
  return each.map(({ at, weight }) => ({ at, weight: weight / total }));
}

const COARSE_NODES = nodes(COARSE);
const FINE_NODES = nodes(FINE);

/** The mean of `f` over a normal distribution; `sd` 0 or more. */
export function meanOver(mean: number, sd: number, f: (x: number) => number): number {
  let sum = 0;
  for (const { at, weight } of COARSE_NODES) sum += weight * f(mean + sd * at);
  return sum;
}

/** A normal distribution weighed by a likelihood. */
export interface Tilted {
  /** The mean likelihood: how probable what was seen was beforehand. */
  readonly mass: number;
  readonly mean: number;
  readonly variance: number;
}

/** Mass, mean and variance of a normal distribution times `likelihood` (0 to 1, not 0 everywhere). */
export function tilted(mean: number, sd: number, likelihood: (x: number) => number): Tilted {
  let [mass, first, second] = [0, 0, 0];
  for (const { at, weight } of FINE_NODES) {
    const share = weight * likelihood(mean + sd * at);
    mass += share;
    first += share * at;
    second += share * at * at;
  }
  if (!(mass > 0)) throw new Error('learner › quadrature: expected a likelihood above 0, got 0');
  const shift = first / mass;
  return { mass, mean: mean + sd * shift, variance: sd * sd * (second / mass - shift * shift) };
}
