// What checking a pack file promises: every task judged from what is printed, every hostile file refused by path.
import { describe, expect, it } from 'vitest';
import { BASE_LOGITS } from '../learner/index.ts';
import { makePack } from './make-pack.ts';
import type { SeededRecipe } from './pack.ts';
import { checkPackText } from './pack-check.ts';
import { packFileText } from './pack-file.ts';

const RECIPE: SeededRecipe = {
  seed: 5,
  page: { paper: 'A4', orientation: 'portrait' },
  print: 'colour',
  parts: [
    { activity: 'in-every-box', step: 2, values: {}, tasks: 2, sheets: 2 },
    { activity: 'by-key', step: 3, values: {}, sheets: 2 },
    { activity: 'copy-pattern', step: 3, values: {}, sheets: 2 },
  ],
};
const pack = makePack(RECIPE);
const TEXT = pack.ok ? packFileText(pack.value) : '';

const figure = (colour: string) => ({ form: 'circle', colour });
const box = (...colours: readonly string[]) => ({ figures: colours.map(figure) });
/** A file as a person might write it, with these tasks of in-every-box. */
const fileWith = (...tasks: readonly unknown[]) => ({
  format: 'samewise.pack',
  version: 1,
  sheets: [
    {
      code: 'by hand',
      activity: 'in-every-box',
      step: 1,
      page: { paper: 'A4', orientation: 'portrait' },
      tasks,
    },
  ],
});
const TASK = {
  boxes: [box('red', 'blue'), box('yellow', 'red'), box('red', 'green')],
  answer: { figures: [figure('red')] },
};
const check = (file: unknown) => checkPackText(JSON.stringify(file));
const refusalsOf = (file: unknown) => {
  const checked = check(file);
  return checked.ok ? [] : checked.refusals;
};

describe('a pack file that we wrote', () => {
  it('is proven whole, and its codes make its tasks', () => {
    expect(checkPackText(TEXT)).toMatchObject({
      ok: true,
      value: { sheets: 6, faults: [], notes: [] },
    });
  });

  it('of which a task was exchanged against another is still proven, and the code is noted', () => {
    const file: { sheets: { tasks: unknown[] }[] } = JSON.parse(TEXT);
    file.sheets[0]?.tasks.reverse();
    expect(check(file)).toMatchObject({
      ok: true,
      value: { faults: [], notes: [{ at: 'sheets[0]', note: 'code-makes-other-tasks' }] },
    });
  });
});

describe('the difficulty of a task in a file', () => {
  const withDifficulty = (difficulty: unknown) => fileWith({ ...TASK, difficulty });

  it('stands in every file that we write, and comes to its parts and the base', () => {
    const {
      sheets,
    }: {
      sheets: { tasks: { difficulty: { logits: number; parts: Record<string, number> } }[] }[];
    } = JSON.parse(TEXT);
    for (const { difficulty } of sheets.flatMap(({ tasks }) => tasks)) {
      const sum = Object.values(difficulty.parts).reduce(
        (total, part) => total + part,
        BASE_LOGITS,
      );
      expect(difficulty.logits).toBeCloseTo(sum, 6);
    }
  });

  it('that is not what the page comes to is noted', () => {
    const checked = check(withDifficulty({ logits: 9, parts: {} }));
    expect(checked).toMatchObject({
      ok: true,
      value: {
        faults: [],
        notes: [
          { note: 'code-unreadable' },
          { at: 'sheets[0].tasks[0]', note: 'difficulty-differs' },
        ],
      },
    });
  });

  it('that is no difficulty is refused by path', () => {
    const [refusal] = refusalsOf(withDifficulty({ logits: 'hard', parts: {} }));
    expect(refusal?.at).toContain('sheets[0].tasks[0].difficulty');
  });
});

describe('a task in a file', () => {
  it('written by hand with the required fields alone is proven', () => {
    expect(check(fileWith(TASK))).toMatchObject({
      ok: true,
      value: { tasks: 1, faults: [], notes: [{ note: 'code-unreadable' }] },
    });
  });

  it('with the wrong answer is told by path, code and reason', () => {
    const wrong = { ...TASK, answer: { figures: [figure('blue')] } };
    expect(check(fileWith(TASK, wrong))).toMatchObject({
      ok: true,
      value: { faults: [{ at: 'sheets[0].tasks[1]', code: 'by hand', reason: 'wrong' }] },
    });
  });

  it('that a page cannot be certain of is told', () => {
    const twice = {
      ...TASK,
      boxes: [box('red', 'red'), box('yellow', 'red'), box('red', 'green')],
    };
    const checked = check(fileWith(twice));
    expect(checked.ok && checked.value.faults).toHaveLength(1);
  });
});

describe('a hostile file', () => {
  it.each([
    ['no object', [], { code: 'wrong-type', at: 'pack' }],
    [
      'another format',
      { ...fileWith(TASK), format: 'x' },
      { code: 'not-a-choice', at: 'pack › format' },
    ],
    ['a later version', { ...fileWith(TASK), version: 3 }, { code: 'unknown-version', got: 3 }],
    [
      'an unknown field',
      { ...fileWith(TASK), seed: 1 },
      { code: 'unknown-field', at: 'pack', got: 'seed' },
    ],
    ['no sheets', { ...fileWith(TASK), sheets: [] }, { code: 'unreadable', at: 'pack › sheets' }],
    ['no tasks', fileWith(), { code: 'unreadable', at: 'pack › sheets[0].tasks' }],
    [
      'a task that is a list',
      fileWith([]),
      { code: 'wrong-type', at: 'pack › sheets[0].tasks[0]' },
    ],
    [
      'a task without its answer',
      fileWith({ boxes: TASK.boxes }),
      { code: 'missing', at: 'pack › sheets[0].tasks[0].answer' },
    ],
    [
      'an unknown field in a task',
      fileWith(TASK, { ...TASK, hint: 1 }),
      { code: 'unknown-field', at: 'pack › sheets[0].tasks[1]', got: 'hint' },
    ],
    [
      'a form that there is not',
      fileWith(TASK, TASK, {
        ...TASK,
        boxes: [box('red'), { figures: [figure('red'), { form: 'dragon' }] }],
      }),
      { at: 'pack › sheets[0].tasks[2].boxes[1].figures[1].form', got: 'dragon' },
    ],
    [
      'a count that is huge',
      fileWith({ ...TASK, boxes: [{ figures: [{ form: 'dots', count: 1e300 }] }, box('red')] }),
      { at: 'pack › sheets[0].tasks[0].boxes[0].figures[0].count' },
    ],
    [
      'a turn that is text',
      fileWith({ ...TASK, boxes: [{ figures: [{ form: 'arrow', turn: '90' }] }, box('red')] }),
      { code: 'wrong-type', at: 'pack › sheets[0].tasks[0].boxes[0].figures[0].turn', got: '90' },
    ],
    [
      'ten thousand boxes',
      fileWith({ ...TASK, boxes: Array.from({ length: 10_000 }, () => box('red')) }),
      { at: 'pack › sheets[0].tasks[0].boxes' },
    ],
  ])('with %s is refused with the path of the fault', (_, file, refusal) => {
    expect(refusalsOf(file)[0]).toMatchObject(refusal);
  });

  it('with numbers that JSON cannot hold is refused', () => {
    for (const number of ['NaN', '1e999', '-1e999']) {
      const text = JSON.stringify(fileWith(TASK)).replace('"step":1', `"step":${number}`);
      expect(checkPackText(text).ok, number).toBe(false);
    }
  });

  it('with keys that reach into prototypes is refused and reaches nothing', () => {
    const text = JSON.stringify(fileWith(TASK)).replace(
      '"boxes"',
      '"__proto__":{"answer":1},"boxes"',
    );
    expect(checkPackText(text)).toMatchObject({
      ok: false,
      refusals: [{ code: 'unknown-field', at: 'pack › sheets[0].tasks[0]', got: '__proto__' }],
    });
    for (const key of ['constructor', 'prototype', 'toString', 'hasOwnProperty']) {
      expect(refusalsOf(fileWith({ ...TASK, [key]: {} }))[0], key).toMatchObject({ got: key });
    }
    expect('answer' in {}).toBe(false);
  });

  it('nested without end is refused', () => {
    const deep = `${'{"sheets":['.repeat(50_000)}${']}'.repeat(50_000)}`;
    expect(checkPackText(deep).ok).toBe(false);
  });

  it('of 50 MB is refused before parsing', () => {
    expect(checkPackText(' '.repeat(50_000_000))).toMatchObject({
      ok: false,
      refusals: [{ code: 'too-big', at: 'pack', got: 50_000_000 }],
    });
  });
});
