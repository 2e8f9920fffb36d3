// Tasks made by a general solver (MiniSat) that is told the rules which our generators keep, to compare with ours.
import Logic, { type Formula } from 'logic-solver';
import type { Random } from '../src/base/index.ts';
import type { Figure } from '../src/figures/index.ts';
import { linesOf, nameOf } from './general-solver.ts';

/** How many figures of each sort an in-every-box task has. */
export interface BoxNumbers {
  readonly boxes: number;
  /** In each box. */
  readonly figures: number;
  readonly shared: number;
  /** Missing from exactly one box, of more than two boxes. */
  readonly nearMisses: number;
}

/**
 * Which of the figures, by number, stand in each box, in order: the first `shared` in all boxes, the next in all but one,
 * all others in some and missing from two or more. No two boxes hold the same where that can be, and shared figures stand
 * in another place than in the box before.
 */
export function boxesBySolver(
  kinds: number,
  { boxes, figures, shared, nearMisses }: BoxNumbers,
  random: Random,
): readonly (readonly number[])[] | undefined {
  const solver = new Logic.Solver();
  const names = random.shuffle(Array.from({ length: kinds }, (_, kind) => kind));
  const stands = (kind: number, box: number) => `${kind} in ${box}`;
  const at = (kind: number, box: number, place: number) => `${kind} in ${box} at ${place}`;
  const [allBoxes, allPlaces] = [numbers(boxes), numbers(figures)];
  for (const box of allBoxes) {
    for (const place of allPlaces) {
      solver.require(Logic.exactlyOne(...names.map((kind) => at(kind, box, place))));
    }
    for (const kind of names) {
      const places = allPlaces.map((place) => at(kind, box, place));
      solver.require(
        Logic.atMostOne(...places),
        Logic.equiv(stands(kind, box), Logic.or(...places)),
      );
    }
  }
  for (const kind of names) {
    const count = Logic.sum(...allBoxes.map((box) => stands(kind, box)));
    if (kind < shared) {
      solver.require(Logic.equalBits(count, Logic.constantBits(boxes)));
      for (const box of allBoxes.slice(1)) {
        for (const place of allPlaces) {
          solver.forbid(Logic.and(at(kind, box, place), at(kind, box - 1, place)));
        }
      }
    } else if (kind < shared + nearMisses) {
      solver.require(Logic.equalBits(count, Logic.constantBits(boxes - 1)));
    } else {
      solver.require(Logic.lessThanOrEqual(Logic.constantBits(1), count));
      solver.require(Logic.lessThanOrEqual(count, Logic.constantBits(boxes - 2)));
    }
  }
  const apart = allBoxes.flatMap((box) =>
    allBoxes
      .slice(box + 1)
      .map((other) =>
        Logic.or(...names.map((kind) => Logic.xor(stands(kind, box), stands(kind, other)))),
      ),
  );
  const strict = solver.solveAssuming(Logic.and(...apart));
  const solution = strict ?? solver.solve();
  if (!solution) return undefined;
  const found = new Set(solution.getTrueVars());
  return allBoxes.map((box) =>
    allPlaces.map((place) => names.find((kind) => found.has(at(kind, box, place))) ?? 0),
  );
}

/**
 * A grid with one completion: a whole one is found, and cells are emptied one after the other as long as there is no
 * second completion, up to `empty` of them. Figures by number.
 */
export function squareBySolver(
  figures: readonly Figure[],
  boxes: boolean,
  empty: number,
  random: Random,
): readonly (readonly (Figure | null)[])[] {
  const order = figures.length;
  const all = numbers(order ** 2);
  const solver = new Logic.Solver();
  const holds = (cell: number, figure: number) => `${cell} ${figure}`;
  for (const cell of all) {
    solver.require(Logic.exactlyOne(...figures.map((_, figure) => holds(cell, figure))));
  }
  for (const line of linesOf(order, boxes)) {
    for (const figure of figures.keys()) {
      solver.require(Logic.exactlyOne(...line.map((cell) => holds(cell, figure))));
    }
  }
  const firstRow = random.shuffle(numbers(order)).map((figure, cell) => holds(cell, figure));
  const solution = solver.solveAssuming(Logic.and(...firstRow));
  const found = new Set(solution?.getTrueVars());
  const heldBy = all.map((cell) =>
    figures.findIndex((_, figure) => found.has(holds(cell, figure))),
  );
  solver.forbid(Logic.and(...heldBy.map((figure, cell) => holds(cell, figure))));
  const given = new Set(all);
  for (const cell of random.shuffle(all)) {
    if (given.size === all.length - empty) break;
    given.delete(cell);
    const others = [...given].map((one) => holds(one, heldBy[one] ?? 0));
    if (solver.solveAssuming(Logic.and(...others))) given.add(cell);
  }
  return numbers(order).map((row) =>
    numbers(order).map((column) => {
      const cell = row * order + column;
      return given.has(cell) ? (figures[heldBy[cell] ?? 0] ?? null) : null;
    }),
  );
}

/**
 * The entry of each item: all entries equally often, give or take one; none three times running, neither along the rows
 * nor down the columns; no stretch that comes round again, and not the order of the key, nor its reverse.
 */
export function orderBySolver(
  entries: number,
  items: number,
  columns: number | undefined,
  random: Random,
): readonly number[] | undefined {
  const solver = new Logic.Solver();
  const names = random.shuffle(numbers(entries));
  const is = (item: number, entry: number) => `${item} by ${entry}`;
  const all = numbers(items);
  for (const item of all) {
    solver.require(Logic.exactlyOne(...names.map((entry) => is(item, entry))));
  }
  for (const entry of names) {
    const count = Logic.sum(...all.map((item) => is(item, entry)));
    const [least, most] = [Math.floor(items / entries), Math.ceil(items / entries)];
    solver.require(Logic.lessThanOrEqual(Logic.constantBits(least), count));
    solver.require(Logic.lessThanOrEqual(count, Logic.constantBits(most)));
  }
  const ways = columns === undefined ? [all] : [all, downColumns(all, columns)];
  for (const way of ways) {
    for (const formula of foreseen(way, names, is)) solver.forbid(formula);
  }
  const start = Logic.and(is(0, random.pick(names)), is(1, random.pick(names)));
  const solution = solver.solveAssuming(start) ?? solver.solve();
  const found = solution && new Set(solution.getTrueVars());
  return found
    ? all.map((item) => names.find((entry) => found.has(is(item, entry))) ?? 0)
    : undefined;
}

function downColumns(items: readonly number[], columns: number): readonly number[] {
  return numbers(columns).flatMap((column) => items.filter((item) => item % columns === column));
}

/** What an order must not be, read in one way. */
function foreseen(
  way: readonly number[],
  entries: readonly number[],
  is: (item: number, entry: number) => string,
): readonly Formula[] {
  const runs = way
    .slice(2)
    .flatMap((item, at) =>
      entries.map((entry) =>
        Logic.and(...[way[at] ?? item, way[at + 1] ?? item, item].map((one) => is(one, entry))),
      ),
    );
  const byKey = [0, 1].map((side) =>
    Logic.and(
      ...way.map((item, at) => {
        const entry = at % entries.length;
        return is(item, side === 0 ? entry : entries.length - 1 - entry);
      }),
    ),
  );
  const round = numbers(Math.floor(way.length / 2)).map((less) => {
    const period = less + 1;
    const alike = way.slice(period).map((item, at) => {
      const before = way[at] ?? item;
      return Logic.or(...entries.map((entry) => Logic.and(is(item, entry), is(before, entry))));
    });
    return Logic.and(...alike);
  });
  return [...runs, ...byKey, ...round];
}

/** Numbers of the figures that stand in the boxes of a page, as it was made. */
export function numbersOf(boxes: readonly { readonly figures: readonly Figure[] }[]): BoxNumbers & {
  readonly kinds: readonly Figure[];
} {
  const names = boxes.map(({ figures }) => new Set(figures.map(nameOf)));
  const kinds = new Map(boxes.flatMap(({ figures }) => figures.map((one) => [nameOf(one), one])));
  const missing = [...kinds.keys()].map((name) => names.filter((box) => !box.has(name)).length);
  const ranked = [...kinds.values()]
    .map((figure, at) => ({ figure, missing: missing[at] ?? 0 }))
    .sort((one, other) => one.missing - other.missing);
  const having = (count: number) => missing.filter((each) => each === count).length;
  return {
    boxes: boxes.length,
    figures: boxes[0]?.figures.length ?? 0,
    shared: having(0),
    nearMisses: having(1),
    kinds: ranked.map(({ figure }) => figure),
  };
}

function numbers(count: number): readonly number[] {
  return Array.from({ length: count }, (_, number) => number);
}
