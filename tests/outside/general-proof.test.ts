// The whole proof of three activities by a general solver (MiniSat 2, by the package logic-solver) against ours.
import { describe, expect, test } from 'vitest';
import {
  boxesBySolver,
  numbersOf,
  orderBySolver,
  squareBySolver,
} from '../../bench/general-making.ts';
import { boxAnswersBySolver, type Keyed, keyAnswersBySolver } from '../../bench/general-proof.ts';
import { type Boxes, completionsBySolver, type Grid, nameOf } from '../../bench/general-solver.ts';
import { type ActivityId, activityOf } from '../../src/activities/index.ts';
import { type Random, randomFrom } from '../../src/base/index.ts';
import type { Figure } from '../../src/figures/index.ts';
import { COLOUR_NAMES } from '../../src/palette/index.ts';
import { testSeed } from '../seed.ts';

const TASKS = 36;
const COLOUR = { print: 'colour' } as const;

function pagesOf(id: ActivityId, random: Random): readonly unknown[] {
  const { ladder, generate } = activityOf(id);
  return Array.from({ length: TASKS }, (_, place) => {
    const { values } = ladder[place % ladder.length] ?? { values: {} };
    return generate(values, random.fork(), COLOUR).printed;
  });
}

/** Figures that differ so little that one may be taken for the other. */
function hardly(figure: Figure): Figure {
  return { ...figure, size: (figure.size ?? 1) * 0.97 };
}

describe('in-every-box', () => {
  const random = randomFrom(testSeed('in-every-box against a general solver, all readings'));
  const pages = pagesOf('in-every-box', random) as readonly Boxes[];
  const ours = (page: Boxes) =>
    activityOf('in-every-box')
      .solve(page)
      .answers.map((answer) =>
        (answer as { figures: readonly Figure[] }).figures.map(nameOf).sort(),
      )
      .sort();
  const general = (page: Boxes) =>
    boxAnswersBySolver(page)
      .map((names) => [...names].sort())
      .sort();

  test('both find one answer, the same', () => {
    for (const page of pages) {
      expect(ours(page)).toHaveLength(1);
      expect(general(page)).toEqual(ours(page));
    }
  });

  test('both find the same answers where a figure is hardly another one or lies otherwise', () => {
    let several = 0;
    for (const page of pages) {
      const [at, place] = [random.int(0, page.boxes.length - 1), random.int(0, 1)];
      const change = random.pick([hardly, (figure: Figure) => ({ ...figure, turn: 90 })]);
      const boxes = page.boxes.map(({ figures }, box) => ({
        figures: figures.map((figure, each) =>
          box === at && each === place ? change(figure) : figure,
        ),
      }));
      expect(general({ boxes })).toEqual(ours({ boxes }));
      if (ours({ boxes }).length > 1) several += 1;
    }
    expect(several).toBeGreaterThan(2);
  });

  test('what the general solver makes is proven by ours', () => {
    for (const page of pages) {
      const { kinds, ...numbers } = numbersOf(page.boxes);
      const made = boxesBySolver(kinds.length, numbers, random);
      const boxes = made?.map((box) => ({ figures: box.flatMap((kind) => kinds[kind] ?? []) }));
      const answer = { figures: kinds.slice(0, numbers.shared) };
      expect(activityOf('in-every-box').prove({ printed: { boxes }, answer })).toEqual({
        proven: true,
      });
    }
  });
});

describe('by-key', () => {
  const random = randomFrom(testSeed('by-key against a general solver'));
  const pages = pagesOf('by-key', random) as readonly Keyed[];
  const ours = (page: Keyed) => activityOf('by-key').solve(page).answers.map(String).sort();
  const general = (page: Keyed) => keyAnswersBySolver(page).map(String).sort();

  test('both find one answer, the same', () => {
    for (const page of pages) {
      expect(ours(page)).toHaveLength(1);
      expect(general(page)).toEqual(ours(page));
    }
  });

  test('both find the same answers where colours tell of one entry and forms of another, or of none', () => {
    const found = { none: 0, several: 0 };
    for (const page of pages) {
      const key = page.key.map((entry, at) => ({ ...entry, figure: coloured(entry.figure, at) }));
      const items = page.items.map((_, item) => {
        const entry = item % key.length;
        const mixed = coloured(key[entry]?.figure ?? {}, random.int(0, key.length - 1));
        const other = random.pick<Figure>([mixed, { form: 'picture-cat' }]);
        return random.int(0, 2) === 0 ? other : (key[entry]?.figure ?? {});
      });
      const few = items.slice(0, random.int(1, 4));
      const expected = ours({ key, items: few });
      const others = general({ key, items: few });
      expect(others).toHaveLength(expected.length);
      if (expected.length < 20) expect(others).toEqual(expected);
      if (expected.length === 0) found.none += 1;
      if (expected.length > 1) found.several += 1;
    }
    expect(found.none).toBeGreaterThan(2);
    expect(found.several).toBeGreaterThan(2);
  });

  test('an order that the general solver makes is proven by ours', () => {
    for (const page of pages) {
      const { columns } = page as { columns?: number };
      const answer = orderBySolver(page.key.length, page.items.length, columns, random) ?? [];
      const items = answer.flatMap((entry) => page.key[entry]?.figure ?? []);
      expect(activityOf('by-key').prove({ printed: { ...page, items }, answer })).toEqual({
        proven: true,
      });
    }
  });
});

function coloured(figure: Figure, entry: number): Figure {
  return { ...figure, colour: COLOUR_NAMES[entry] };
}

describe('one-of-each', () => {
  const random = randomFrom(testSeed('one-of-each made by a general solver'));
  const pages = pagesOf('one-of-each', random) as readonly Grid[];

  test('what the general solver makes has one completion for both', () => {
    for (const { figures, boxes = false, rows: before } of pages) {
      const empty = before.flat().filter((figure) => figure === null).length;
      const rows = squareBySolver(figures, boxes, empty, random);
      expect(rows.flat()).toContain(null);
      const completions = completionsBySolver({ rows, figures, boxes }, 20);
      expect(completions).toHaveLength(1);
      const { answers } = activityOf('one-of-each').solve({ rows, figures, boxes });
      const ours = answers.map((answer) => (answer as { figures: readonly Figure[] }).figures);
      expect(ours.map((each) => each.map(nameOf))).toEqual(completions);
    }
  });
});
