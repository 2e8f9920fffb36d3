// Codes of sheets that were changed: the same sheet again, older codes as they were, forged ones refused.
import { describe, expect, it } from 'vitest';
import { ACTIVITY_IDS, activityOf } from '../activities/index.ts';
import type { TaskEdit } from '../editing/index.ts';
import { readCode, writeCode } from './code.ts';
import {
  CODE_BASE,
  checkDigitOf,
  digitsOf,
  groupedText,
  LONGEST_CODE,
  LONGEST_PRINTED_CODE,
} from './code-characters.ts';
import { changesRefusal, MOST_DIGITS } from './code-edits.ts';
import { fieldsOf } from './code-fields.ts';
import { alphabetFor } from './code-letters.ts';
import { digitsNeeded } from './code-packing.ts';
import { checkPackText } from './pack-check.ts';
import { openPackText } from './pack-codes.ts';
import { packFileText } from './pack-file.ts';
import { packPages } from './pack-pages.ts';
import { makeSheet, type Sheet } from './sheet.ts';
import { sheetPage } from './sheet-page.ts';
import { DEFAULT_PAGE, type SheetSpec } from './sheet-spec.ts';

const SPEC: SheetSpec = {
  activity: 'in-every-box',
  step: 3,
  values: {},
  seed: 7,
  tasks: 2,
  page: DEFAULT_PAGE,
  print: 'colour',
};
const NONE: TaskEdit = { task: 0, shape: [], figures: [], facts: [] };

function sheetWith(edits: readonly TaskEdit[]): Sheet {
  const made = makeSheet({ ...SPEC, edits });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value;
}

/** Two figures alike in one box: no certain task. */
function doubtful(): Sheet {
  const { tasks } = sheetWith([]);
  const { boxes } = (tasks[1]?.printed ?? { boxes: [] }) as { boxes: { figures: object[] }[] };
  return sheetWith([{ ...NONE, task: 1, figures: [[0, boxes[0]?.figures[1] ?? {}]] }]);
}

describe('a code with changes', () => {
  it('is of version 3, and one without any is what it was', () => {
    expect(sheetWith([]).code).toBe(writeCode(SPEC));
    expect(sheetWith([NONE]).code).toBe(writeCode(SPEC));
    expect(writeCode(SPEC).startsWith('3')).toBe(true);
    expect(sheetWith([{ ...NONE, figures: [[0, { colour: 'pink' }]] }]).code).toMatch(/^6/);
  });

  it('makes the same sheet again, whatever a figure is', () => {
    const figures: TaskEdit['figures'] = [
      [0, { form: 'arrow', turn: 135, mirrored: true, colour: 'white', size: 0.6041 }],
      [1, { form: 'dots', count: 6, layout: 'row', dotSize: 0.912 }],
      [2, { form: 'picture-cat' as const, fill: 'outline' }],
      [3, {}],
    ];
    const sheet = sheetWith([{ ...NONE, seed: 4_294_967_295, figures }]);
    const read = readCode(sheet.code);
    expect(read.ok && makeSheet(read.value)).toEqual({ ok: true, value: sheet });
    expect(JSON.stringify(sheet.tasks)).toContain('"size":0.604');
  });

  it('with one character changed is refused or a sheet of its own, never a crash', () => {
    const read = digitsOf(sheetWith([{ ...NONE, figures: [[0, { colour: 'pink' }]] }]).code);
    const digits = read.ok ? read.value.slice(0, -1) : [];
    for (const [place, digit] of digits.entries()) {
      const forged = digits.with(place, (digit + 5) % CODE_BASE);
      const spec = readCode(groupedText([...forged, checkDigitOf(forged)]));
      if (spec.ok) expect(() => makeSheet(spec.value)).not.toThrow();
    }
  });

  it('that is too long to print makes the same sheet; its foot says where the whole code is', () => {
    const figures = Array.from({ length: 4 }, (_, place) => [place, { colour: 'pink' }] as const);
    const edits = Array.from({ length: 6 }, (_, task) => ({ ...NONE, task, seed: 5, figures }));
    const made = makeSheet({ ...SPEC, activity: 'odd-one-out', step: 2, tasks: 6, edits });
    if (!made.ok) throw new Error(JSON.stringify(made.refusals));
    const { code, spec } = made.value;
    expect(code.length).toBeGreaterThan(LONGEST_PRINTED_CODE);
    expect(readCode(code)).toEqual({ ok: true, value: spec });
    const page = JSON.stringify(sheetPage(made.value));
    expect(page).toContain('it is in the pack file');
    expect(page).not.toContain('"qr"');
    expect(page).not.toContain(code);
    const filed = openPackText(packFileText({ sheets: [made.value] }));
    expect(filed).toMatchObject({ ok: true, value: { sheets: [{ code, isChanged: true }] } });
  });

  it('is never longer than what is read, whatever else the sheet says: letters of a name and the colours at hand, too', () => {
    const page = { ...DEFAULT_PAGE, margin: 'pocket' } as const;
    const extras = { page, colours: ['red'], hand: 'left' } as const;
    for (const id of ACTIVITY_IDS) {
      const { ladder, parameters } = activityOf(id);
      const own = ladder[0]?.values ?? {};
      const { content } = parameters;
      for (const value of content?.kind === 'choice' ? content.values : []) {
        const values = { ...own, content: value };
        const letters = alphabetFor({ activity: id, step: 1, values });
        const named = letters === '' ? {} : { letters };
        const spec = { ...SPEC, activity: id, step: 1, values, ...extras, ...named };
        const fields = fieldsOf(activityOf(id), spec, values);
        const digits = digitsNeeded(fields.map(({ radix }) => radix)) + MOST_DIGITS;
        // The version before them, the check character behind.
        const code = groupedText(Array.from({ length: digits + 2 }, () => 0));
        expect(code.length, `${id}, ${value}`).toBeLessThanOrEqual(LONGEST_CODE);
      }
    }
  });

  it('that has no room for them is refused with what to do, and nothing is lost', () => {
    const figures = Array.from({ length: 64 }, (_, place) => [place, { colour: 'pink' }] as const);
    const edits = [{ ...NONE, figures }];
    const activity = activityOf('mirror-half');
    expect(changesRefusal(activity, edits, undefined)).toMatchObject({
      code: 'does-not-fit',
      got: 64,
    });
  });

  it('is never longer than what is read', () => {
    const figures = Array.from({ length: 6 }, (_, place) => [place, { colour: 'pink' }] as const);
    expect(sheetWith([{ ...NONE, seed: 9, figures }]).code.length).toBeLessThan(LONGEST_CODE);
  });
});

describe('a sheet that is not certain', () => {
  it('says so on the adult page, in words that name the task', () => {
    const sheet = doubtful();
    expect(sheet.doubts).toHaveLength(1);
    const pages = [...packPages({ sheets: [sheet] }).pages];
    const words = JSON.stringify(pages[0]?.nodes);
    expect(words).toContain('Changed, and not certain');
    expect(words).toContain('task 2');
    expect(words).toContain('1 of the 2 tasks');
  });

  it('is a note and no fault of its pack file; a wrong key stays a fault', () => {
    const text = packFileText({ sheets: [doubtful()] });
    expect(text).toContain('"edited":true');
    const check = checkPackText(text);
    expect(check).toMatchObject({ ok: true, value: { faults: [] } });
    expect(check.ok && check.value.notes.map(({ note }) => note)).toEqual([
      'changed-and-not-certain',
    ]);
    const unmarked = checkPackText(text.replace('"edited":true,', ''));
    expect(unmarked.ok && unmarked.value.faults).toHaveLength(1);
    const certain = sheetWith([{ ...NONE, seed: 9 }]);
    const wrong = packFileText({
      sheets: [
        { ...certain, tasks: certain.tasks.map((task) => ({ ...task, answer: { figures: [] } })) },
      ],
    });
    expect(checkPackText(wrong)).toMatchObject({ ok: true, value: { faults: [{}, {}] } });
  });
});

it.each([
  ['a task that there is not', [{ ...NONE, task: 5, seed: 1 }]],
  ['a place that there is not', [{ ...NONE, figures: [[400, { colour: 'red' }] as const] }]],
  ['a figure that is none', [{ ...NONE, figures: [[0, { form: 'dots' }] as const] }]],
  [
    'two changes of one task',
    [
      { ...NONE, seed: 1 },
      { ...NONE, seed: 2 },
    ],
  ],
  [
    'a list that there is not',
    [{ ...NONE, shape: [{ kind: 'take', list: 60, at: 0, together: false } as const] }],
  ],
] as const)('%s is refused', (_, edits) => {
  expect(makeSheet({ ...SPEC, edits: edits as readonly TaskEdit[] }).ok).toBe(false);
});
