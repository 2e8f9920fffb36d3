// Backup files of records and what a database of an older version holds: read, and all views of it made.
import fc from 'fast-check';
import {
  factsReader,
  knownOf,
  leftUndone,
  looksOf,
  movesOnTo,
  standingOn,
  standingToday,
} from '../../src/plan/index.ts';
import {
  backupText,
  type Entry,
  keptPictures,
  merged,
  migrated,
  newId,
  readBackup,
  readEntry,
  STEPS,
  viewOf,
} from '../../src/records/index.ts';
import { OWN_PICTURES, someSheets } from './bases.ts';
import { changedTexts, changedValues, jsonText } from './changed-json.ts';
import { hostileValue } from './hostile.ts';
import type { Kind } from './kind.ts';
import { acceptedOrTold } from './must-hold.ts';

const idAt = (n: number) => `0199c7f2-8e00-7000-8000-${n.toString(16).padStart(12, '0')}`;
const CHILD = idAt(1);
const DAY = '2026-03-09';

function someEntries(): readonly Entry[] {
  const codes = someSheets().map(({ code }) => code);
  const [one = '', two = '', three = ''] = codes;
  const all: readonly object[] = [
    {
      kind: 'child',
      child: CHILD,
      nickname: 'Wren',
      birthMonth: '2022-05',
      writingHand: 'left',
      colourVision: 'red-green',
      languages: ['en', 'pt-BR'],
      deeds: [],
    },
    { kind: 'child', child: idAt(2), nickname: 'Moss' },
    {
      kind: 'result',
      child: CHILD,
      code: one,
      day: '2026-03-06',
      tasks: [{ outcome: 'right' }, { outcome: 'not-yet', instead: [{ place: 1, label: 'x' }] }],
      help: 'pointed',
      mood: 'calm',
      minutes: 7,
      note: 'a note',
    },
    {
      kind: 'result',
      child: CHILD,
      code: two,
      day: DAY,
      tasks: [{ outcome: 'with-help' }],
      atOnce: true,
    },
    { kind: 'plan', child: CHILD, day: DAY, sheets: [{ code: three, why: 'nearest' }] },
    {
      kind: 'stock',
      stickers: [{ colour: 'red', diameterMm: 13, count: 20 }],
      crayons: ['red'],
      tools: ['pencil'],
      printer: 'colour',
    },
    { kind: 'picture', ...OWN_PICTURES[0] },
    { kind: 'undone', entry: idAt(4) },
    { kind: 'child-gone', child: idAt(2) },
  ];
  return all.map((entry, index) => ({ id: idAt(index + 1), at: index, ...entry }) as Entry);
}

/** Many entries that differ in their ids alone. */
const MANY = [100, 3000, 30_000];

function manyTexts(entries: readonly Entry[]): fc.Arbitrary<string> {
  return fc.tuple(fc.constantFrom(...entries), fc.constantFrom(...MANY)).map(([entry, times]) =>
    jsonText({
      format: 'samewise.records',
      version: 3,
      entries: [
        entries[0],
        ...Array.from({ length: times }, (_, index) => ({ ...entry, id: idAt(100 + index) })),
      ],
    }),
  );
}

/** Views of one file in so many are followed as far as what is known of the children: it makes their sheets again. */
const FOLLOWED = 8;

const read = factsReader();

function goOn(entries: readonly Entry[], isFollowed: boolean): void {
  const view = viewOf(entries);
  viewOf(entries, 'demo');
  keptPictures(entries);
  acceptedOrTold(backupText(merged(entries, entries)));
  const last = entries.at(-1)?.id;
  if (last !== undefined) newId({ now: 5, random: new Uint8Array(10), last });
  if (!isFollowed) return;
  for (const { id } of view.children.slice(0, 2)) {
    const known = knownOf(view, id);
    if (!known) continue;
    const { given } = standingOn(DAY, known.child, known.results, read);
    looksOf(given, 'en');
    leftUndone(known, DAY);
    movesOnTo(known, DAY, () => DAY)(standingToday(known, DAY, () => DAY)[0]?.code ?? '');
  }
}

export function backupFileKind(): Kind<string> {
  const entries = someEntries();
  const files = [1, 2, 3].map((version) => ({
    format: 'samewise.records',
    version,
    entries: version === 3 ? entries : entries.slice(0, 4),
  }));
  let met = 0;
  return {
    name: 'backup-file',
    ready: () => goOn(entries, true),
    inputs: fc.oneof(
      { weight: 400, arbitrary: changedTexts(files) },
      { weight: 1, arbitrary: manyTexts(entries) },
    ),
    meet: (text) => {
      const read = acceptedOrTold(readBackup(text));
      if (!read) return;
      met += 1;
      goOn(read, met % FOLLOWED === 0 && read.length < 100);
    },
    show: (text) => text,
  };
}

/** Entries as a database of an older version holds them. */
export function storedEntryKind(): Kind<unknown> {
  return {
    name: 'stored-entry',
    inputs: fc.oneof(
      { weight: 9, arbitrary: changedValues(someEntries()) },
      { weight: 1, arbitrary: hostileValue },
    ),
    meet: (value) => {
      for (const version of [1, 2, 3]) {
        const entry = acceptedOrTold(readEntry(migrated(value, version, STEPS), 'records'));
        if (entry) goOn([entry], false);
      }
    },
    show: (value) => jsonText(value),
  };
}
