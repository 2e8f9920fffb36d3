// Draws the order of the figures, so that what says nothing makes no pattern that one of them would break.
import type { Random } from '../../base/index.ts';
import type { Figure } from '../../figures/index.ts';

/** Orders that are tried before the one in blocks, which has no pattern. */
const TRIES = 60;
/** A row looks like a pattern if changing so many figures makes it repeat. */
const NEARLY = 1;

/** A figure with all that changes among the others without saying anything, in one order for all. */
export interface Member {
  readonly figure: Figure;
  readonly idle: readonly string[];
}

/** The odd figure among the others, at a place drawn evenly. */
export function drawOrder(
  others: readonly Member[],
  odd: Member,
  random: Random,
): { readonly figures: readonly Figure[]; readonly place: number } {
  const place = random.int(0, others.length);
  const withOdd = (row: readonly Member[]) => [...row.slice(0, place), odd, ...row.slice(place)];
  const figuresOf = (row: readonly Member[]) => row.map(({ figure }) => figure);
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const row = withOdd(random.shuffle(others));
    if (!hasPattern(row, odd)) return { figures: figuresOf(row), place };
  }
  const keyOf = ({ idle }: Member) => idle.join();
  const blocks = [...others].sort((one, other) => (keyOf(one) < keyOf(other) ? -1 : 1));
  return { figures: figuresOf(withOdd(blocks)), place };
}

/** In anything idle, or in all of it together: two or three over and over, with at most one changed. */
function hasPattern(row: readonly Member[], odd: Member): boolean {
  const columns = odd.idle.map((_, index) => ({ lookOf: ({ idle }: Member) => idle[index] ?? '' }));
  return [...columns, { lookOf: ({ idle }: Member) => idle.join() }].some(({ lookOf }) => {
    const others = row.filter((member) => member !== odd).map(lookOf);
    const looks = new Set(others).size;
    const repeats = looks > 1 && looks < others.length;
    return repeats && [2, 3].some((period) => isNearlyPeriodic(row.map(lookOf), period));
  });
}

function isNearlyPeriodic(row: readonly string[], period: number): boolean {
  const classes = Array.from({ length: period }, (_, start) =>
    row.filter((_look, place) => place % period === start),
  );
  const changes = classes.map((looks) => {
    const counts = looks.map((look) => looks.filter((other) => other === look).length);
    return looks.length - Math.max(0, ...counts);
  });
  return changes.reduce((sum, count) => sum + count, 0) <= NEARLY;
}
