// Which wrong choices a task has, in numbers alone: the model has value 0 of each attribute, a wrong choice others.
import type { Random } from '../../base/index.ts';

/** What is wanted of the wrong choices. */
export interface Wanted {
  /** For each attribute, how many values it can take. */
  readonly most: readonly number[];
  readonly wrong: number;
  readonly nearMisses: number;
  readonly mixed: boolean;
  /** The attribute in which at least one near miss differs; absent: any. */
  readonly first?: number | undefined;
}

/** For each attribute the number of a value. */
type Look = readonly number[];

/** Far choices are drawn so often, and the set kept that gives least away. */
const DRAWS = 24;

/** The wrong choices, each a near miss or unlike the model in at least two of two or more attributes. */
export function arrangeWrong(wanted: Wanted, random: Random): readonly Look[] {
  const { most, wrong, nearMisses, mixed } = wanted;
  if (!mixed) {
    const look = uniformLook(wanted, random);
    return Array.from({ length: wrong }, () => look);
  }
  const isSingle = most.length === 1;
  const areAllUnlike = nearMisses === 0 && most.length === 2;
  if (isSingle || areAllUnlike) {
    return Array.from({ length: wrong }, (_, index) => most.map(() => index + 1));
  }
  const dealt = dealNearMisses(wanted, random);
  const near = dealt.flatMap((count, axis) =>
    Array.from({ length: count }, (_, index) => lookWith(most.length, axis, index + 1)),
  );
  return [...near, ...drawFar(near, dealt, wanted, random)];
}

/** Whether there are values enough for so many different near misses and choices that are unlike the model. */
export function isArrangeable({ most, wrong, nearMisses, mixed }: Wanted): boolean {
  if (Math.min(...most) < 2) return false;
  if (!mixed || most.length === 1) return true;
  const others = most.map((values) => values - 1);
  const near = others.reduce((sum, count) => sum + count, 0);
  return nearMisses <= near && wrong - nearMisses <= farLooks(others).length;
}

/** What all wrong choices look like: a near miss in one attribute, or unlike in all. */
function uniformLook({ most, nearMisses, first }: Wanted, random: Random): Look {
  if (nearMisses === 0 || most.length === 1) return most.map(() => 1);
  return lookWith(most.length, first ?? random.int(0, most.length - 1), 1);
}

function lookWith(length: number, axis: number, value: number): Look {
  return Array.from({ length }, (_, index) => (index === axis ? value : 0));
}

/** How many near misses differ in each attribute: as evenly as its values allow. */
function dealNearMisses({ most, nearMisses, first }: Wanted, random: Random): readonly number[] {
  const shuffled = random.shuffle(most.map((_, axis) => axis));
  const order =
    first === undefined ? shuffled : [first, ...shuffled.filter((axis) => axis !== first)];
  const dealt = most.map(() => 0);
  for (let turn = 0, left = nearMisses; left > 0; turn++) {
    const axis = order[turn % order.length] ?? 0;
    const before = dealt[axis] ?? 0;
    if (before + 1 >= (most[axis] ?? 0)) continue;
    dealt[axis] = before + 1;
    left -= 1;
  }
  return dealt;
}

/** Far choices made of values that are on the page already, and of one more of each attribute. */
function drawFar(
  near: readonly Look[],
  dealt: readonly number[],
  { most, wrong }: Wanted,
  random: Random,
): readonly Look[] {
  const needed = wrong - near.length;
  if (needed === 0) return [];
  let reach: readonly number[] = dealt.map((count) => Math.max(1, count));
  while (farLooks(reach).length < needed) reach = widened(reach, most);
  const pool = farLooks(widened(reach, most));
  const draws = Array.from({ length: DRAWS }, () => random.sample(pool, needed));
  const given = draws.map((far) => givenAway([...near, ...far]));
  return draws[given.indexOf(Math.min(...given))] ?? [];
}

/** One value more of each attribute that has one. */
function widened(reach: readonly number[], most: readonly number[]): readonly number[] {
  return reach.map((count, axis) => Math.min(count + 1, (most[axis] ?? 1) - 1));
}

/** Every look up to `reach` that differs from the model in two attributes or more. */
function farLooks(reach: readonly number[]): readonly Look[] {
  const all = reach.reduce<readonly Look[]>(
    (looks, most) =>
      looks.flatMap((look) => Array.from({ length: most + 1 }, (_, value) => [...look, value])),
    [[]],
  );
  return all.filter((look) => look.filter((value) => value !== 0).length >= 2);
}

const VALUE_IS_NOWHERE = 4;
const IS_ODD = 2;

/**
 * How much the choices alone give the match away, the less the better: a value of the model that no wrong
 * choice has, above all where it is the only one that stands alone; and the match having most, or
 * least, in common with the rest more or less often than by chance.
 */
function givenAway(wrong: readonly Look[]): number {
  const all = [(wrong[0] ?? []).map(() => 0), ...wrong];
  const counts = all.map((look) => look.map((value, axis) => countOf(all, axis, value)));
  const odd = (counts[0] ?? []).map((count, axis) => {
    if (count > 1) return 0;
    const others = counts.slice(1).some((other) => other[axis] === 1);
    return others ? VALUE_IS_NOWHERE : VALUE_IS_NOWHERE + IS_ODD;
  });
  const shared = counts.map(sum);
  const most = guessRight(shared, Math.max(...shared));
  const least = guessRight(shared, Math.min(...shared));
  const chance = 1 / all.length;
  return sum(odd) + Math.abs(most - chance) + Math.abs(least - chance);
}

/** How often the match, which stands first, is hit by guessing among those that have so much in common. */
function guessRight(shared: readonly number[], wanted: number): number {
  return shared[0] === wanted ? 1 / shared.filter((count) => count === wanted).length : 0;
}

function countOf(looks: readonly Look[], axis: number, value: number): number {
  return looks.filter((look) => look[axis] === value).length;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
