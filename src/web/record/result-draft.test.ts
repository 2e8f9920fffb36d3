// What is tapped on the picture of a sheet comes to an outcome, and to choices that are read back as such.
import { describe, expect, test } from 'vitest';
import { ACTIVITY_IDS, type ActivityId } from '../../activities/index.ts';
import { confusionsIn } from '../../learner/index.ts';
import { factsReader, looksOf, standingOn } from '../../plan/index.ts';
import { type Draft, readEntry, stamped, viewOf } from '../../records/index.ts';
import { DEFAULT_PAGE, makeSheet } from '../../sheets/index.ts';
import type { TapTask } from '../planning/cards.ts';
import { tapTasks } from '../planning/tap-tasks.ts';
import {
  allAs,
  emptyDraft,
  isOpen,
  notedIn,
  outcomeOf,
  type ResultDraft,
  resultEntryOf,
  type Tapped,
  tapRight,
  tapWrong,
  taskAs,
  wholeOf,
} from './result-draft.ts';
import { markNames, notedWords } from './tap-names.ts';

const CHILD = '0199c7f2-8e00-7000-8000-000000000001';
const RESULT = '0199c7f2-8e00-7000-8000-000000000002';
const DAY = '2026-09-07';
const NONE: TapTask = { choices: [], about: [] };
const start = emptyDraft(DAY);
const read = factsReader();

function tapsOf(activity: ActivityId, step: number, content?: string) {
  const values = content === undefined ? {} : { content };
  const spec = { activity, step, values, seed: 5, page: DEFAULT_PAGE, print: 'colour' } as const;
  const sheet = makeSheet(spec);
  if (!sheet.ok) throw new Error(JSON.stringify(sheet.refusals));
  const { code } = sheet.value;
  const taps = tapTasks({ code });
  if (!taps.ok) throw new Error(JSON.stringify(taps.refusals));
  return { code, taps: taps.value };
}

/** All that can be tapped as wrong in a task. */
function wrongIn({ choices, about }: TapTask): readonly Tapped[] {
  return [
    ...choices
      .filter(({ isRight }) => !isRight)
      .map(({ mark, name }) => ({ place: mark, label: name })),
    ...about.flatMap(({ mark, wrong }) => wrong.map((label) => ({ place: mark, label }))),
  ];
}

function with_(draft: ResultDraft, part: Partial<ResultDraft>): ResultDraft {
  return { ...draft, ...part };
}

/** The looks that a draft comes to once it is recorded. */
function looksFrom(draft: ResultDraft, code: string, tasks: number) {
  const child: Draft = { kind: 'child', nickname: 'Fern' };
  const result = resultEntryOf(draft, CHILD, code, tasks);
  const entries = [stamped(child, CHILD, 1), stamped(result, RESULT, 2)];
  const results = viewOf(entries).results.get(CHILD) ?? [];
  return looksOf(standingOn('2026-09-08', {}, results, read).given);
}

describe('what is tapped', () => {
  const circle = { place: 3, label: 'blue circle' };

  test('as right says so of a task of which nothing was said', () => {
    expect(outcomeOf(with_(start, tapRight(start, 1)), 1)).toBe('right');
    const chosen = with_(start, taskAs(start, 1, 'with-help'));
    expect(tapRight(chosen, 1)).toEqual({});
  });

  test('as wrong is noted and makes the task not yet right; tapped again, all is as before', () => {
    const noted = with_(start, tapWrong(start, 1, circle));
    expect([outcomeOf(noted, 1), notedIn(noted, 1)]).toEqual(['not-yet', [circle]]);
    const again = with_(noted, tapWrong(noted, 1, circle));
    expect([outcomeOf(again, 1), notedIn(again, 1)]).toEqual([undefined, []]);
    expect(isOpen(again, 2)).toBe(true);
  });

  test('as wrong leaves “right with help” as it was chosen', () => {
    const helped = with_(start, taskAs(start, 0, 'with-help'));
    const noted = with_(helped, tapWrong(helped, 0, circle));
    expect([outcomeOf(noted, 0), notedIn(noted, 0)]).toEqual(['with-help', [circle]]);
  });

  test('as wrong after “All right” is the exception, and the rest stays right', () => {
    const right = with_(start, allAs('right', 3));
    const noted = with_(right, tapWrong(right, 1, circle));
    expect([0, 1, 2].map((task) => outcomeOf(noted, task))).toEqual(['right', 'not-yet', 'right']);
    const again = with_(noted, tapWrong(noted, 1, circle));
    expect(wholeOf(again, 3)).toBe('right');
  });

  test('is of one kind at each mark, and goes when the task is opened again', () => {
    const noted = with_(start, tapWrong(start, 0, circle));
    const other = with_(noted, tapWrong(noted, 0, { ...circle, label: 'drop' }));
    expect(notedIn(other, 0)).toEqual([{ place: 3, label: 'drop' }]);
    expect(isOpen(with_(other, taskAs(other, 0, undefined)), 1)).toBe(true);
  });

  test('stands in the entry with what was written, and not where the task was right', () => {
    const noted = with_(start, { ...tapWrong(start, 0, circle), instead: { 0: ' the moon ' } });
    expect(resultEntryOf(noted, CHILD, '3CFR', 1)).toMatchObject({
      tasks: [{ outcome: 'not-yet', instead: [circle, { label: 'the moon' }] }],
    });
    const right = with_(noted, taskAs(noted, 0, 'right'));
    expect(resultEntryOf(right, CHILD, '3CFR', 1)).toMatchObject({ tasks: [{ outcome: 'right' }] });
  });
});

describe('what was noted is read back', () => {
  test.each([
    ['find-the-same', 'colours'],
    ['by-key', 'shapes'],
  ] as const)('as the pair that was mixed up, in %s with %s', (activity, content) => {
    const { code, taps } = tapsOf(activity, 2, content);
    const [wrong] = wrongIn(taps[0] ?? NONE);
    if (wrong === undefined) throw new Error('expected something wrong to tap');
    const looks = looksFrom(with_(start, tapWrong(start, 0, wrong)), code, taps.length);
    const [row, ...others] = confusionsIn(looks).filter(({ times }) => times > 0);
    expect(others).toEqual([]);
    expect(row?.pair.some((name) => wrong.label.includes(name))).toBe(true);
  });

  test.each(
    ACTIVITY_IDS.filter((id) => tapsOf(id, 4).taps.some((task) => wrongIn(task).length > 0)),
  )('of %s, every wrong choice, and the store keeps it', (activity) => {
    const { code, taps } = tapsOf(activity, 4);
    const { tasks = [] } = read(code) ?? {};
    for (const [task, each] of taps.entries()) {
      const tellsOfLooks = tasks[task]?.decisions.some(({ takenFor }) => takenFor) ?? false;
      for (const wrong of wrongIn(each)) {
        const draft = with_(start, tapWrong(start, task, wrong));
        const entry = stamped(resultEntryOf(draft, CHILD, code, taps.length), RESULT, 2);
        expect(readEntry(entry, 'entry').ok).toBe(true);
        const chosen = looksFrom(draft, code, taps.length).filter((look) => 'chosen' in look);
        // Where nothing can be taken for anything else, as along a line, a wrong choice tells of no pair.
        if (!tellsOfLooks) expect(chosen).toEqual([]);
        if (each.choices.length > 0 && tellsOfLooks) expect(chosen).toHaveLength(1);
      }
    }
  });
});

test('figures of one name are told apart by numbers, and what has no name by its place', () => {
  const choices = ['drop', 'star', 'drop'].map((name, mark) => ({ mark, name, isRight: false }));
  const about = [{ mark: 7, name: '', wrong: ['star'] }];
  const task = { choices, about };
  expect([...markNames(task)]).toEqual([
    [0, 'drop 1'],
    [1, 'star'],
    [2, 'drop 2'],
    [7, 'place 1'],
  ]);
  expect(notedWords(task, { place: 2, label: 'drop' })).toBe('chosen instead: drop 2');
  expect(notedWords(task, { place: 7, label: 'star' })).toBe('place 1, chosen instead: star');
  expect(notedWords(undefined, { place: 7, label: 'star' })).toBe('chosen instead: star');
});
