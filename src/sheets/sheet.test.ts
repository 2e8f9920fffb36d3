// What making a sheet promises: the same spec the same sheet, all tasks different, in their room, proven.
import { describe, expect, it } from 'vitest';
import { ACTIVITY_IDS, type Activity, activityOf } from '../activities/index.ts';
import { told } from '../base/index.ts';
import { readCode } from './code.ts';
import { printedColours } from './printed-colours.ts';
import { makeSheet, proveTasks, type SheetRequest } from './sheet.ts';
import type { SheetSpec } from './sheet-spec.ts';
import { MOST_TASKS } from './sheet-spec.ts';

const SPEC: SheetRequest = {
  activity: 'in-every-box',
  step: 1,
  values: {},
  seed: 20,
  page: { paper: 'A4', orientation: 'portrait' },
  print: 'colour',
};
const made = (request: SheetRequest) => {
  const sheet = makeSheet(request);
  if (!sheet.ok) throw new Error(JSON.stringify(sheet.refusals));
  return sheet.value;
};

describe('a sheet', () => {
  it.each(ACTIVITY_IDS)('of %s is made at every step, and made again from its code', (activity) => {
    for (const step of activityOf(activity).ladder.keys()) {
      const sheet = made({ ...SPEC, activity, step: step + 1, seed: step });
      const spec = readCode(sheet.code);
      expect(spec).toEqual({ ok: true, value: sheet.spec });
      expect(made(sheet.spec)).toEqual(sheet);
    }
  });

  it('of some colours alone is made again from its code, however they were listed', () => {
    const [one, other] = (
      [
        ['pink', 'red', 'green', 'blue'],
        ['blue', 'green', 'red', 'pink', 'red'],
      ] as const
    ).map((colours) => made({ ...SPEC, colours }));
    expect(one).toEqual(other);
    expect(one?.spec.colours).toEqual(['red', 'green', 'blue', 'pink']);
    const spec = readCode(one?.code ?? '');
    expect(spec).toEqual({ ok: true, value: one?.spec });
    expect(new Set(one?.tasks.flatMap(printedColours))).toEqual(
      new Set(['red', 'green', 'blue', 'pink']),
    );
    expect(makeSheet({ ...SPEC, colours: [] })).toMatchObject({
      refusals: [{ code: 'missing', at: 'in-every-box › colours' }],
    });
  });

  it.each(ACTIVITY_IDS)('of %s has no task twice', (activity) => {
    for (let seed = 0; seed < 5; seed++) {
      const { tasks } = made({ ...SPEC, activity, seed });
      expect(new Set(tasks.map((task) => JSON.stringify(task.printed))).size, `seed ${seed}`).toBe(
        tasks.length,
      );
    }
  });

  it('begins with the same tasks however many are asked for', () => {
    const [one, three] = [made({ ...SPEC, tasks: 1 }), made({ ...SPEC, tasks: 3 })];
    expect(three.tasks[0]).toEqual(one.tasks[0]);
  });

  it('of a step without a number of tasks has the step’s own, where these fit', () => {
    const { tasks, spec } = made(SPEC);
    expect(tasks).toHaveLength(activityOf('in-every-box').ladder[0]?.tasks ?? 0);
    expect(spec.tasks).toBe(tasks.length);
  });

  it.each(ACTIVITY_IDS)('of %s holds as many tasks as it says, and not one more', (activity) => {
    const request = { ...SPEC, activity, step: activityOf(activity).ladder.length };
    const full = makeSheet({ ...request, tasks: MOST_TASKS });
    const refusal = full.ok ? undefined : full.refusals[0];
    const most = refusal?.code === 'does-not-fit' ? refusal.max : MOST_TASKS;
    expect(made({ ...request, tasks: most }).tasks).toHaveLength(most);
    if (most === MOST_TASKS) return;
    expect(makeSheet({ ...request, tasks: most + 1 })).toMatchObject({
      ok: false,
      refusals: [{ code: 'does-not-fit', got: most + 1, max: most }],
    });
  });

  it.each([
    [{ seed: -1 }, { code: 'out-of-range', at: 'in-every-box › seed' }],
    [{ seed: 1.5 }, { code: 'out-of-range', at: 'in-every-box › seed' }],
    [{ seed: Number.NaN }, { code: 'out-of-range', at: 'in-every-box › seed' }],
    [{ tasks: 0 }, { code: 'out-of-range', at: 'in-every-box › tasks' }],
    [{ tasks: 13 }, { code: 'out-of-range', at: 'in-every-box › tasks' }],
    [{ step: 0 }, { code: 'out-of-range', at: 'in-every-box › step' }],
    [{ values: { boxes: 99 } }, { code: 'out-of-range', at: 'in-every-box › boxes' }],
  ])('with %j is refused', (changes, refusal) => {
    expect(makeSheet({ ...SPEC, ...changes })).toMatchObject({ ok: false, refusals: [refusal] });
  });
});

describe('a task that is not proven', () => {
  const liar: Activity = {
    ...activityOf('in-every-box'),
    prove: () => ({
      proven: false,
      reason: 'ambiguous',
      detail: told('faults', 'several-answers', { count: 2 }),
    }),
  };

  it('is a defect that names activity, sheet code and seed', () => {
    const { tasks, code, spec } = made(SPEC);
    const prove = (seed: SheetSpec['seed']) => proveTasks(liar, tasks, code, seed);
    expect(() => prove(spec.seed)).toThrow(
      `in-every-box, sheet ${code}, seed 20, task 1: ambiguous: the page admits 2 answers`,
    );
  });

  it('that cannot even be judged is told in the same way', () => {
    const { tasks, code } = made(SPEC);
    const fallen: Activity = {
      ...liar,
      prove: () => {
        throw new Error('no outline');
      },
    };
    expect(() => proveTasks(fallen, tasks, code, 20)).toThrow(
      /^in-every-box, sheet .*, task 1: no outline$/,
    );
  });
});
