// Entries for tests of the records: few ids, so that they meet, undo and contradict each other often.
import fc from 'fast-check';
import { DEEDS } from '../src/activities/index.ts';
import { PAPER_NAMES } from '../src/page/index.ts';
import { COLOUR_NAMES } from '../src/palette/index.ts';
import {
  type ChildEntry,
  type Entry,
  HELP_LEVELS,
  MOODS,
  OUTCOMES,
  type PlanEntry,
  PRINTERS,
  type ResultEntry,
  TOOLS,
  WHYS,
  WRITING_HANDS,
} from '../src/records/index.ts';

/** The id number `n`; a greater number is a later id. */
export function idAt(n: number): string {
  return `0199c7f2-8e00-7000-8000-${String(n).padStart(12, '0')}`;
}

export function childEntry(n: number, child: number, facts: Partial<ChildEntry>): ChildEntry {
  return { id: idAt(n), at: n, kind: 'child', child: idAt(child), ...facts };
}

export function resultEntry(n: number, child: number, facts: Partial<ResultEntry> = {}): Entry {
  return {
    id: idAt(n),
    at: n,
    kind: 'result',
    child: idAt(child),
    code: '3CFR-YRT7-FF2W-DU',
    day: '2026-03-09',
    tasks: [{ outcome: 'right' }],
    ...facts,
  };
}

export function planEntry(n: number, child: number, facts: Partial<PlanEntry> = {}): PlanEntry {
  return {
    id: idAt(n),
    at: n,
    kind: 'plan',
    child: idAt(child),
    day: '2026-03-09',
    sheets: [{ code: '3CFR-YRT7-FF2W-DU', why: 'nearest' }],
    ...facts,
  };
}

const id = fc.integer({ min: 1, max: 9 }).map(idAt);
const child = fc.integer({ min: 1, max: 3 }).map(idAt);
const base = { id, at: fc.nat(2_000_000_000) };
const nothing = { requiredKeys: [] };
const isDemo = fc.oneof(
  { weight: 3, arbitrary: fc.constant({}) },
  { weight: 1, arbitrary: fc.constant({ demo: true as const }) },
);
const line = (maxLength: number) =>
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: maxLength / 8 });

const childFacts = fc.record(
  {
    nickname: line(40).filter((name) => /\S/u.test(name)),
    birthMonth: fc.constantFrom('2021-12', '2022-05', null),
    writingHand: fc.constantFrom(...WRITING_HANDS, null),
    colourVision: fc.constantFrom('normal', 'red-green', null),
    languages: fc.constantFrom(['en'], ['pt-BR', 'de'], null),
    deeds: fc.option(fc.subarray([...DEEDS])),
  },
  nothing,
);

const instead = fc.record({ place: fc.nat(999), label: line(80) }, nothing);
const task = fc.record(
  { outcome: fc.constantFrom(...OUTCOMES), instead: fc.array(instead, { maxLength: 3 }) },
  { requiredKeys: ['outcome'] },
);
const resultFacts = fc.record(
  {
    atOnce: fc.constant(true as const),
    help: fc.constantFrom(...HELP_LEVELS),
    mood: fc.constantFrom(...MOODS),
    minutes: fc.nat(240),
    note: line(2000),
  },
  nothing,
);
const given = fc.record({
  code: fc.constantFrom('3CFR-YRT7-FF2W-DU', '3CFR-YRT7-FF2W-DUA'),
  day: fc.constantFrom('2026-03-09', '2026-03-10'),
  tasks: fc.array(task, { minLength: 1, maxLength: 4 }),
});

const childEntries = fc
  .tuple(fc.record({ ...base, kind: fc.constant('child' as const), child }), childFacts, isDemo)
  .map(([entry, facts, demo]) => ({ ...entry, ...facts, ...demo }));
const resultEntries = fc
  .tuple(
    fc.record({ ...base, kind: fc.constant('result' as const), child }),
    given,
    resultFacts,
    isDemo,
  )
  .map(([entry, sheet, facts, demo]) => ({ ...entry, ...sheet, ...facts, ...demo }));
const planned = fc.record({
  code: fc.constantFrom('3CFR-YRT7-FF2W-DU', '3CFR-YRT7-FF2W-DUA'),
  why: fc.constantFrom(...WHYS),
});
const planEntries = fc
  .tuple(
    fc.record({
      ...base,
      kind: fc.constant('plan' as const),
      child,
      day: fc.constantFrom('2026-03-09', '2026-03-10'),
      sheets: fc.array(planned, { maxLength: 3 }),
    }),
    isDemo,
  )
  .map(([entry, demo]) => ({ ...entry, ...demo }));
const stickers = fc.record({
  colour: fc.constantFrom(...COLOUR_NAMES),
  diameterMm: fc.integer({ min: 6, max: 30 }),
  count: fc.nat(500),
});
const stockEntries = fc
  .tuple(
    fc.record({
      ...base,
      kind: fc.constant('stock' as const),
      stickers: fc.array(stickers, { maxLength: 3 }),
      crayons: fc.subarray([...COLOUR_NAMES]),
      tools: fc.subarray([...TOOLS]),
    }),
    fc.record(
      { printer: fc.constantFrom(...PRINTERS), papers: fc.subarray([...PAPER_NAMES]) },
      nothing,
    ),
    isDemo,
  )
  .map(([entry, said, demo]) => ({ ...entry, ...said, ...demo }));
const undoneEntries = fc
  .tuple(fc.record({ ...base, kind: fc.constant('undone' as const), entry: id }), isDemo)
  .map(([entry, demo]) => ({ ...entry, ...demo }));
const goneEntries = fc
  .tuple(fc.record({ ...base, kind: fc.constant('child-gone' as const), child }), isDemo)
  .map(([entry, demo]) => ({ ...entry, ...demo }));

export const anyEntry: fc.Arbitrary<Entry> = fc.oneof(
  childEntries,
  resultEntries,
  planEntries,
  stockEntries,
  undoneEntries,
  goneEntries,
);

/** Entries as two devices and a careless hand may leave them: one id may stand for several. */
export const anyEntries: fc.Arbitrary<readonly Entry[]> = fc.array(anyEntry, { maxLength: 12 });
