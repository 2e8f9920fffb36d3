// Makes a task and its key: pairs that are the same and pairs that differ in one attribute. Never fails for valid values.
import type { Random } from '../../base/index.ts';
import { type Figure, formOf, isWantedForm, uprightTurnDeg } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { type CheckedAxis, checkedAxes, idleAxes } from './axes.ts';
import { differentRange } from './counts.ts';
import type { Answer, Pair, PairValues, Printed } from './task.ts';

type Value = Partial<Figure>;

export function generate(
  values: PairValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const { response } = values;
  const range = differentRange(values);
  const different = random.int(range.min, range.max);
  const axes = checkedAxes(values, style);
  const bases = drawBases(values, axes, random, style);
  const sets = drawSets(axes, different, random, style.letters);
  const hasEqualInk = random.int(0, 1) === 0;
  const made = bases.map((base, index) => {
    const [left, right] = sets[index] ?? [{}, {}];
    return [left, right].map((value) => printedAs({ ...base, ...value }, hasEqualInk));
  }) as unknown as readonly Pair[];
  const order = random.shuffle(made.map((_, index) => index));
  const pairs = order.flatMap((index) => made.slice(index, index + 1));
  const answer = order.flatMap((index, place) => (index >= different ? [place] : []));
  return { printed: { pairs, response }, answer };
}

/** What both figures of each pair share; no two pairs share all, as far as the values go. */
function drawBases(
  values: PairValues,
  axes: readonly CheckedAxis[],
  random: Random,
  style: PrintStyle,
): readonly Figure[] {
  const { pairs: count, idle } = values;
  const lists = [
    ...axes.map((axis) => dealt(ofTheName(axis.values, style.letters), count, random)),
    ...idleAxes(values, style)
      .filter(({ isNeeded }) => idle || isNeeded)
      .map((axis) => dealt(axis.values, idle ? count : 1, random)),
  ];
  return Array.from({ length: count }, (_, index) =>
    Object.assign({}, ...lists.map((list) => list[index % list.length])),
  );
}

/** For each pair that differs the two values in which it does, the attributes taken in turn. */
function drawSets(
  axes: readonly CheckedAxis[],
  different: number,
  random: Random,
  letters: string | undefined,
): readonly (readonly Value[])[] {
  const order = random.shuffle(axes);
  const lists = order.map(({ candidates }) =>
    dealt(pairsOfTheName(candidates, letters), different, random),
  );
  return Array.from({ length: different }, (_, index) => {
    const list = lists[index % lists.length] ?? [];
    return random.shuffle(list[Math.floor(index / lists.length)] ?? []);
  });
}

/** The letters of a name alone, where there are some; else all values. */
function ofTheName(values: readonly Value[], letters: string | undefined): readonly Value[] {
  const own = values.filter(({ form }) => isWantedForm(form, letters));
  return own.length > 0 ? own : values;
}

/** Pairs of two letters of a name, else with one of them, else all. */
function pairsOfTheName<P extends readonly Value[]>(
  pairs: readonly P[],
  letters: string | undefined,
): readonly P[] {
  const wanted = (pair: P) => pair.filter(({ form }) => isWantedForm(form, letters)).length;
  const most = Math.max(0, ...pairs.map(wanted));
  return most === 0 ? pairs : pairs.filter((pair) => wanted(pair) === most);
}

/** `count` items, none twice before all have come once. */
function dealt<T>(items: readonly T[], count: number, random: Random): readonly T[] {
  const shuffled = random.shuffle(items);
  return Array.from(
    { length: count },
    (_, index) => shuffled.slice(index % items.length)[0],
  ).filter((item) => item !== undefined);
}

/**
 * Numbers of dots either with equal ink or with equal dots; a crescent, which opens to the right where other
 * shapes point up, a quarter turn more, so that left and right are left and right again.
 */
function printedAs({ dotSize, turn, ...rest }: Figure, hasEqualInk: boolean): Figure {
  const more = uprightTurnDeg(formOf(rest));
  return {
    ...rest,
    ...(dotSize === undefined || !hasEqualInk ? {} : { dotSize }),
    ...(turn === undefined ? {} : { turn: (turn + more) % 360 }),
  };
}
