// The solver against tables of which the answer is plain, and against pages with one rule broken.
import { describe, expect, test } from 'vitest';
import { said } from '../../../tests/said.ts';
import { testSeed } from '../../../tests/seed.ts';
import type { Figure } from '../../figures/index.ts';
import { crossingTable } from './index.ts';
import { solve as findings } from './solve.ts';
import type { Answer, Printed } from './task.ts';
import { makeTasks, taskOf, valuesAt } from './tasks-to-test.ts';

const solve = (...page: Parameters<typeof findings>) => said(findings(...page));

const [RED, BLUE]: readonly [Figure, Figure] = [{ colour: 'red' }, { colour: 'blue' }];
const [STAR, HEART]: readonly [Figure, Figure] = [{ form: 'star' }, { form: 'heart' }];
const RED_STAR: Figure = { form: 'star', colour: 'red' };
const BLUE_STAR: Figure = { form: 'star', colour: 'blue' };
const RED_HEART: Figure = { form: 'heart', colour: 'red' };
const BLUE_HEART: Figure = { form: 'heart', colour: 'blue' };
const EMPTY = [
  [null, null],
  [null, null],
];
const HEADS = { rowHeads: [STAR, HEART], columnHeads: [RED, BLUE] };

function filledAs(printed: Printed): readonly (readonly string[])[] {
  return solve(printed).answers.map(({ figures }) =>
    figures.map(({ form, colour }) => `${colour} ${form}`),
  );
}

describe('the answers of a page', () => {
  test('R1 are what has both, whichever heads stand where', () => {
    expect(filledAs({ rows: EMPTY, ...HEADS })).toEqual([
      ['red star', 'blue star', 'red heart', 'blue heart'],
    ]);
    expect(filledAs({ rows: EMPTY, rowHeads: [RED, BLUE], columnHeads: [STAR, HEART] })).toEqual([
      ['red star', 'red heart', 'blue star', 'blue heart'],
    ]);
  });

  test('R3 are found from the figures where heads are missing', () => {
    const three = [
      [RED_STAR, BLUE_STAR],
      [RED_HEART, null],
    ];
    expect(filledAs({ rows: three })).toEqual([['blue heart']]);
    const column = [
      [RED_STAR, null],
      [null, BLUE_HEART],
    ];
    expect(filledAs({ rows: column, rowHeads: [STAR, HEART] })).toEqual([
      ['blue star', 'red heart'],
    ]);
  });

  test('R3 are two where rows may be about either thing', () => {
    const slanting = [
      [RED_STAR, null],
      [null, BLUE_HEART],
    ];
    expect(filledAs({ rows: slanting })).toEqual([
      ['blue star', 'red heart'],
      ['red heart', 'blue star'],
    ]);
    // Where nothing but one of both is offered for each place, either order is still possible.
    const loose = [BLUE_STAR, RED_HEART];
    expect(filledAs({ rows: slanting, loose }).length).toBe(2);
  });

  test('R3 are none, and the page unfit, where a row shows nothing', () => {
    const rows = [
      [RED_STAR, BLUE_STAR],
      [null, null],
    ];
    const found = solve({ rows, columnHeads: [RED, BLUE], loose: [RED_HEART, BLUE_HEART] });
    expect(found.answers).toEqual([]);
    expect(found.faults).toContain(
      'what a row or column is about cannot be found from its figures',
    );
  });

  test('R1 are none, and the page unfit, where a figure stands in the wrong place', () => {
    const found = solve({
      rows: [
        [BLUE_STAR, null],
        [null, null],
      ],
      ...HEADS,
    });
    expect(found.answers).toEqual([]);
    expect(found.faults).toHaveLength(1);
  });

  test('R5 leave out what belongs nowhere', () => {
    const rows = [
      [RED_STAR, BLUE_STAR],
      [RED_HEART, null],
    ];
    const loose: readonly Figure[] = [BLUE_HEART, { form: 'heart', colour: 'yellow' }];
    const { answers, faults } = solve({ rows, ...HEADS, loose, response: 'cut' });
    expect(faults).toEqual([]);
    expect(answers).toHaveLength(1);
  });

  test('R7 are not to be had where black is a colour and signs or dots stand in ink', () => {
    const columnHeads: readonly Figure[] = [RED, { colour: 'black' }];
    const inInk: readonly (readonly [Figure, Figure])[] = [
      [{ form: 'sign-plus' }, { form: 'sign-ring' }],
      [
        { form: 'dots', count: 2 },
        { form: 'dots', count: 5 },
      ],
    ];
    for (const rowHeads of inInk) {
      expect(solve({ rows: EMPTY, rowHeads, columnHeads }).faults).toEqual([
        'a head in ink shows no colour, but black is one of the colours',
      ]);
      expect(solve({ rows: EMPTY, rowHeads, columnHeads: [RED, BLUE] }).faults).toEqual([]);
    }
    expect(solve({ rows: EMPTY, rowHeads: [STAR, HEART], columnHeads }).faults).toEqual([]);
  });

  test('R4 are not to be had where figures pass for each other', () => {
    const rowHeads: readonly Figure[] = [{ form: 'small-b' }, { form: 'small-d' }];
    const { faults } = solve({ rows: EMPTY, rowHeads, columnHeads: [RED, BLUE] });
    expect(faults).toContain('hard to tell apart: red small b and red small d');
  });

  test('R4 are not to be had where two rows are about the same', () => {
    const rowHeads = [STAR, STAR, HEART];
    const rows = [...EMPTY, [null, null]];
    expect(solve({ rows, rowHeads, columnHeads: [RED, BLUE] }).faults).not.toEqual([]);
  });
});

type Task = { readonly printed: Printed; readonly answer: Answer };

function withPrinted(task: Task, printed: Partial<Printed>): Task {
  return { ...task, printed: { ...task.printed, ...printed } };
}

function turned<T>(items: readonly T[]): readonly T[] {
  return [...items.slice(1), ...items.slice(0, 1)];
}

/** Each breaks one rule of a sound task with heads, loose figures and some of the cells filled. */
const BREAKS: Readonly<Record<string, (task: Task) => Task>> = {
  'R1 the figures of the key change places': ({ printed, answer }) => ({
    printed,
    answer: { figures: turned(answer.figures) },
  }),
  'R1 the rows change places and their heads do not': (task) =>
    withPrinted(task, { rows: turned(task.printed.rows) }),
  'R1 the heads of the columns change places': (task) =>
    withPrinted(task, { columnHeads: turned(task.printed.columnHeads ?? []) }),
  'R2 heads of rows and columns are about the same': (task) =>
    withPrinted(task, { columnHeads: task.printed.rowHeads }),
  'R3 all heads are missing and nothing is filled': (task) =>
    withPrinted(task, {
      rowHeads: undefined,
      columnHeads: undefined,
      rows: task.printed.rows.map((row) => row.map(() => null)),
    }),
  'R4 two rows have one head': (task) => {
    const heads = task.printed.rowHeads ?? [];
    return withPrinted(task, { rowHeads: [...heads.slice(1), ...heads.slice(1, 2)] });
  },
  'R5 a loose figure is left out': (task) =>
    withPrinted(task, { loose: task.printed.loose?.slice(1) }),
  'R5 a loose figure is offered twice': (task) =>
    withPrinted(task, {
      loose: [...(task.printed.loose ?? []), ...(task.printed.loose ?? []).slice(0, 1)],
    }),
  'R5 a figure of the table is offered': (task) => {
    const given = task.printed.rows.flat().filter((figure) => figure !== null);
    return withPrinted(task, { loose: [...(task.printed.loose ?? []), ...given.slice(0, 1)] });
  },
  'R5 nothing is offered': (task) => withPrinted(task, { loose: undefined }),
  'R5 the child is to draw what is offered': (task) => withPrinted(task, { response: 'draw' }),
  'R8 a row is shorter': (task) =>
    withPrinted(task, {
      rows: task.printed.rows.map((row, place) => row.slice(place === 0 ? 1 : 0)),
    }),
};

describe('a sound task with one rule broken is not proven', () => {
  test.each(Object.keys(BREAKS))('%s', (name) => {
    const seed = testSeed(name);
    for (let run = 0; run < 10; run++) {
      const sound = taskOf(valuesAt(8), seed + run);
      expect(crossingTable.prove(sound)).toEqual({ proven: true });
      const broken = BREAKS[name]?.(sound) ?? sound;
      expect(crossingTable.prove(broken).proven, `seed ${seed + run}`).toBe(false);
    }
  });
});

test('what is described names every loose figure apart and does not fill the cells', () => {
  for (const { printed, answer, name } of makeTasks(40, 5)) {
    const words = crossingTable.words.en.describe(printed);
    expect(words.match(/\bempty\b/g)?.length, name).toBe(answer.figures.length);
    if (!printed.loose) continue;
    const names = words.slice(words.indexOf('Below: ') + 7, -1).split('; ');
    expect(new Set(names).size, words).toBe(printed.loose.length);
  }
});
