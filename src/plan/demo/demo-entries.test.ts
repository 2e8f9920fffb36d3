// What the invented group promises, whatever its last day.
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CAST } from '../../../scripts/demo/cast.ts';
import { lifeOf } from '../../../scripts/demo/life.ts';
import { testSeed } from '../../../tests/seed.ts';
import { figureName } from '../../figures/index.ts';
import { LANGUAGES, type Language, loadAllCatalogues } from '../../languages/index.ts';
import { readEntry, timeOfId, viewOf } from '../../records/index.ts';
import { addDays, dayNumber, dayOf, MS_A_DAY, weekdayOf } from '../days.ts';
import { growthOf } from '../growth.ts';
import { loadDemo } from '../index.ts';
import { WISHES } from '../known-to-test.ts';
import { knownOf, newPlanner } from '../planner.ts';
import { lettersOf, tasksOf } from './rows.ts';

const seed = testSeed('demo');
const demo = await loadDemo();
await loadAllCatalogues();
const FILE = 'src/plan/demo/demo.generated.json';
const MOST_BYTES = 80 * 1024;
/** The first place on earth to have a new day is so far ahead of Greenwich. */
const FIRST_PLACE_MS = 14 * 60 * 60 * 1000;

const planner = newPlanner();
const demoEntries = (last: string, language: Language = 'en') =>
  demo.demoEntries(last, language, planner.read);
/** A Thursday. */
const LAST = '2026-11-26';
const entries = demoEntries(LAST);
const view = viewOf(entries, 'demo');
const results = [...view.results.values()].flat();
const lastDays = fc
  .integer({ min: dayNumber('2026-01-01'), max: dayNumber('2031-12-31') })
  .map(dayOf);

/** What the records say of each child on the evening before `last`. */
function growthBefore(last: string) {
  const view = viewOf(demoEntries(last), 'demo');
  return new Map(
    view.children.flatMap(({ id, nickname }) => {
      const known = knownOf(view, id);
      return known
        ? [[nickname, growthOf(planner, known, addDays(last, -1), WISHES)] as const]
        : [];
    }),
  );
}

test('the four children are in view among the invented and not among the real', () => {
  expect(view.children.map(({ nickname }) => nickname)).toEqual([
    'Wren',
    'Alder',
    'Moss',
    'Clover',
  ]);
  expect(entries.every(({ demo }) => demo === true)).toBe(true);
  expect(viewOf(entries, 'real').children).toEqual([]);
});

test.each(LANGUAGES)('every entry is one that a backup could hold, in %s', (language) => {
  for (const entry of demoEntries(LAST, language)) {
    expect(readEntry(entry, 'entry')).toEqual({ ok: true, value: entry });
  }
});

describe('whatever the last day', () => {
  const onAnyDay = (promise: (last: string) => void) =>
    fc.assert(fc.property(lastDays, promise), { seed, numRuns: 40 });

  test('the same day gives the same entries, their ids of their time and rising', () =>
    onAnyDay((last) => {
      const made = demoEntries(last);
      const ids = made.map(({ id }) => id);
      expect(demoEntries(last)).toEqual(made);
      expect(ids).toEqual([...new Set(ids)].sort());
      for (const { id, at } of made) expect(timeOfId(id)).toBe(at);
    }));

  test('nothing was recorded later than now, wherever on earth it is that day', () =>
    onAnyDay((last) => {
      const start = dayNumber(last) * MS_A_DAY - FIRST_PLACE_MS;
      for (const entry of demoEntries(last)) {
        expect(entry.at).toBeLessThan(start);
        if (entry.kind === 'result') expect(entry.day < last).toBe(true);
      }
    }));

  test('records are of weekdays, of thirteen weeks, up to the last weekday before', () =>
    onAnyDay((last) => {
      const days = demoEntries(last).flatMap((entry) => (entry.kind === 'result' ? entry.day : []));
      const before = [1, 2, 3].map((count) => addDays(last, -count));
      expect(Math.max(...days.map(weekdayOf))).toBeLessThanOrEqual(4);
      expect(days.sort().at(-1)).toBe(before.find((day) => weekdayOf(day) <= 4));
      const span = dayNumber(last) - dayNumber(days[0] ?? last);
      expect(span).toBeGreaterThanOrEqual(13 * 7);
      expect(span).toBeLessThan(14 * 7);
    }));

  test('of what was planned for days gone by a few sheets were left, and days ahead have plans', () =>
    onAnyDay((last) => {
      const { plans, results } = viewOf(demoEntries(last), 'demo');
      const done = new Set([...results.values()].flat().map(({ code }) => code));
      const planned = [...plans.values()].flatMap((days) => [...days.values()]);
      const past = planned.filter(({ day }) => day < last).flatMap(({ sheets }) => sheets);
      const left = past.filter(({ code }) => !done.has(code));
      expect(left.length).toBeGreaterThan(0);
      expect(left.length).toBeLessThan(past.length / 4);
      expect(planned.some(({ day }) => day >= last)).toBe(weekdayOf(last) <= 4);
    }));
});

test('each code makes a sheet with as many tasks as outcomes', () => {
  for (const { code, tasks } of results)
    expect(planner.read(code)?.tasks.length).toBe(tasks.length);
  for (const plans of view.plans.values()) {
    for (const { sheets } of plans.values()) {
      for (const { code } of sheets) expect(planner.read(code)).toBeDefined();
    }
  }
});

test.each(LANGUAGES)(
  'what is noted as chosen instead is there to choose, and wrong, in %s',
  (language) => {
    const { results } = viewOf(demoEntries(LAST, language), 'demo');
    const noted = [...results.values()]
      .flat()
      .flatMap(({ code, tasks }) =>
        tasks.flatMap(({ outcome, instead = [] }, task) =>
          instead.map((choice) => ({ ...choice, outcome, asked: planner.read(code)?.tasks[task] })),
        ),
      );
    expect(noted.length).toBeGreaterThan(20);
    for (const { place, label, outcome, asked } of noted) {
      const meant = asked?.decisions.flatMap(({ about, options }) =>
        options.filter(
          ({ mark, figure, isRight }) =>
            !isRight && (about ?? mark) === place && figureName(figure, language) === label,
        ),
      );
      expect(meant).not.toEqual([]);
      expect(outcome).not.toBe('right');
    }
  },
);

test('names and notes of each language are its own', () => {
  const saidIn = (language: Language) =>
    demoEntries(LAST, language).flatMap((entry) => {
      if (entry.kind === 'child') return [entry.nickname ?? ''];
      return entry.kind === 'result' && entry.note !== undefined ? [entry.note] : [];
    });
  const english = new Set(saidIn('en'));
  expect(english.size).toBeGreaterThan(30);
  for (const language of LANGUAGES.filter((each) => each !== 'en')) {
    const said = saidIn(language);
    expect(said.length, language).toBe(saidIn('en').length);
    expect(
      said.filter((words) => english.has(words)),
      language,
    ).toEqual([]);
  }
});

describe('what the records say', () => {
  const growth = growthBefore(LAST);
  const skillsOf = (nickname: string) => growth.get(nickname)?.skills ?? [];
  const means = (nickname: string) =>
    skillsOf(nickname).map(({ skill, course }) => ({ skill, mean: course.at(-1)?.mean ?? 0 }));

  test.each([0, 1, 2, 3, 4, 5, 6])(
    'is that Alder mixes up red and orange, and no other child anything, %i days later too',
    (later) => {
      const found = [...growthBefore(addDays(LAST, later))].map(([nickname, { pairs, watch }]) => {
        const confused = pairs.filter(({ isConfused }) => isConfused);
        return [nickname, confused.map(({ pair }) => pair.join(' ')), watch];
      });
      expect(found).toEqual([
        ['Wren', [], []],
        ['Alder', ['orange red'], ['colours']],
        ['Moss', [], []],
        ['Clover', [], []],
      ]);
    },
  );

  test('is that Wren has come on fast in every skill, and that Moss may have come on or not', () => {
    expect(growth.get('Wren')?.trend).toBe('rising');
    expect(growth.get('Moss')?.trend).toBe('unclear');
    for (const { course } of skillsOf('Wren')) {
      expect((course.at(-1)?.mean ?? 0) - (course[0]?.mean ?? 0)).toBeGreaterThan(1);
    }
  });

  test('is that turns are clearly the hardest for Moss', () => {
    const [lowest, next] = means('Moss').sort((one, other) => one.mean - other.mean);
    expect(lowest?.skill).toBe('turns');
    expect((next?.mean ?? 0) - (lowest?.mean ?? 0)).toBeGreaterThan(0.8);
  });

  test('is little about Clover, who came two weeks ago', () => {
    const { from = '', sheets } = growth.get('Clover') ?? {};
    expect(dayNumber(LAST) - dayNumber(from)).toBeGreaterThanOrEqual(14);
    expect(dayNumber(LAST) - dayNumber(from)).toBeLessThan(21);
    expect(sheets).toBeLessThan(30);
  });
});

describe('the file', () => {
  const text = readFileSync(FILE, 'utf8');

  test('is small', () => {
    expect(Buffer.byteLength(text)).toBeLessThan(MOST_BYTES);
  });

  test('is what the script makes, the first child at least', () => {
    const [first] = CAST;
    if (!first) throw new Error('no cast');
    expect(lifeOf(first, newPlanner())).toEqual(JSON.parse(text).children[0]);
  });
});

test('letters of outcomes are read as they were written, and no others', () => {
  const outcomes = ['right', 'with-help', 'not-yet', 'not-tried'] as const;
  const row = { day: 0, code: '', did: lettersOf(outcomes) };
  expect(tasksOf(row).map(({ outcome }) => outcome)).toEqual(outcomes);
  expect(() => tasksOf({ ...row, did: 'rx' })).toThrow('got x');
});
