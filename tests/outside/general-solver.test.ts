// Our solvers against a general one (MiniSat 2, by the package logic-solver) that is told the same rules.
import { describe, expect, test } from 'vitest';
import {
  type Boxes,
  completionsBySolver,
  type Grid,
  nameOf,
  sharedBySolver,
} from '../../bench/general-solver.ts';
import { activityOf } from '../../src/activities/index.ts';
import { type Random, randomFrom } from '../../src/base/index.ts';
import type { Figure } from '../../src/figures/index.ts';
import { testSeed } from '../seed.ts';

const TASKS = 30;
const COLOUR = { print: 'colour' } as const;

interface Answer {
  readonly figures: readonly Figure[];
}

function pagesOf(id: 'in-every-box' | 'one-of-each', random: Random): readonly unknown[] {
  const { ladder, generate } = activityOf(id);
  return Array.from({ length: TASKS }, (_, place) => {
    const { values } = ladder[place % ladder.length] ?? { values: {} };
    return generate(values, random.fork(), COLOUR).printed;
  });
}

function answersTo(id: 'in-every-box' | 'one-of-each', printed: unknown): readonly Answer[] {
  return activityOf(id).solve(printed).answers as readonly Answer[];
}

describe('in-every-box', () => {
  const random = randomFrom(testSeed('in-every-box against a general solver'));
  const pages = pagesOf('in-every-box', random) as readonly Boxes[];
  const ours = (page: Boxes) => (answersTo('in-every-box', page)[0]?.figures ?? []).map(nameOf);

  test('both find the same figures in every box', () => {
    for (const page of pages) {
      expect([...sharedBySolver(page)].sort()).toEqual([...ours(page)].sort());
    }
  });

  test('both find the same with some figures taken out, none included', () => {
    let none = 0;
    for (const page of pages) {
      const place = random.int(0, page.boxes.length - 1);
      const boxes = page.boxes.map(({ figures }, box) => ({
        figures: box === place ? figures.slice(1) : figures,
      }));
      const found = [...sharedBySolver({ boxes })].sort();
      expect(found).toEqual([...ours({ boxes })].sort());
      if (found.length === 0) none += 1;
    }
    expect(none).toBeGreaterThan(1);
  });
});

describe('one-of-each', () => {
  const random = randomFrom(testSeed('one-of-each against a general solver'));
  const pages = pagesOf('one-of-each', random) as readonly Grid[];
  /** More completions than most of these grids have; ours are cut off at 20. */
  const most = 20;
  const ours = (page: Grid) =>
    answersTo('one-of-each', page).map(({ figures }) => figures.map(nameOf).join());
  const general = (page: Grid) => completionsBySolver(page, most).map((names) => names.join());

  test('both find one completion, the same', () => {
    for (const page of pages) {
      expect(ours(page)).toHaveLength(1);
      expect(general(page)).toEqual(ours(page));
    }
  });

  test('both find the same completions with more cells emptied', () => {
    let several = 0;
    for (const page of pages) {
      const rows = page.rows.map((row) =>
        row.map((figure) => (random.int(0, 2) === 0 ? null : figure)),
      );
      const [found, expected] = [ours({ ...page, rows }), general({ ...page, rows })];
      expect(found.length).toBe(expected.length);
      if (expected.length < most) expect([...found].sort()).toEqual([...expected].sort());
      if (expected.length > 1) several += 1;
    }
    expect(several).toBeGreaterThan(3);
  });

  test('both find none where a figure of a row stands there twice', () => {
    for (const page of pages) {
      const rows = page.rows.map((row, place) =>
        place === 0 ? row.map(() => page.figures[0] ?? null) : row,
      );
      expect([ours({ ...page, rows }), general({ ...page, rows })]).toEqual([[], []]);
    }
  });
});
