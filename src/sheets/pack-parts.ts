// The kinds of sheet in a pack: sheets that are given in the same words stand together.
import { type ActivityId, activityOf, type Guide, type Language } from '../activities/index.ts';
import { featuresToDo } from './cut-demands.ts';
import { type PackMaterials, packMaterials } from './materials.ts';
import { minutesFor } from './minutes.ts';
import type { Pack } from './pack.ts';
import type { PartName, WholeRange } from './page-words.ts';
import type { Sheet } from './sheet.ts';

/** Sheets of one activity that are given in the same words, whatever their step. */
export interface PackPart {
  readonly name: PartName;
  /** `1–10, 14`. */
  readonly sheetNumbers: string;
  readonly say: readonly string[];
  /** How to show one on the first of the sheets. */
  readonly show: string;
  /** Number of that sheet, where the others are shown otherwise. */
  readonly showSheet: number | undefined;
  /** What one of the sheets takes at a usual pace, in whole minutes. */
  readonly minutes: WholeRange;
  /** In years, that its steps are a first guess for. */
  readonly ages: WholeRange;
  /** What is laid out for all of its sheets. */
  readonly materials: PackMaterials;
  readonly help: readonly string[];
  readonly easierNow: string;
  readonly harderNow: string;
  readonly lookFor: readonly string[];
  /** How the paper itself is handled, where it is more than laid down. */
  readonly guide: Guide | undefined;
}

/** The parts in the order in which they first come. */
export function packParts({ sheets, toCut }: Pack, language: Language): readonly PackPart[] {
  const kindOf = (sheet: Sheet) => JSON.stringify([sheet.spec.activity, sayOf(sheet, language)]);
  return grouped(sheets, kindOf).map(({ first, numbers, members }) => {
    const show = showOf(first, language);
    const isAlike = members.every((sheet) => showOf(sheet, language) === show);
    return {
      name: nameOf(first.spec.activity, members, language),
      sheetNumbers: rangesText(numbers),
      say: sayOf(first, language),
      show,
      showSheet: isAlike ? undefined : numbers[0],
      minutes: minutesOf(members, toCut),
      ages: agesOf(members),
      materials: packMaterials(members, toCut),
      ...alongOf(first, language),
      guide: guideOf(members, language),
    };
  });
}

/** The activities of a pack, each with its steps and its number of sheets. */
export function partNames(sheets: readonly Sheet[], language: Language): readonly PartName[] {
  return grouped(sheets, ({ spec }) => spec.activity).map(({ first, members }) =>
    nameOf(first.spec.activity, members, language),
  );
}

interface Kind {
  readonly first: Sheet;
  readonly members: Sheet[];
  /** Places in the pack, from 1. */
  readonly numbers: number[];
}

function grouped(sheets: readonly Sheet[], kindOf: (sheet: Sheet) => string): readonly Kind[] {
  const kinds = new Map<string, Kind>();
  for (const [index, sheet] of sheets.entries()) {
    const name = kindOf(sheet);
    const kind = kinds.get(name) ?? { first: sheet, members: [], numbers: [] };
    kind.members.push(sheet);
    kind.numbers.push(index + 1);
    kinds.set(name, kind);
  }
  return [...kinds.values()];
}

function nameOf(id: ActivityId, sheets: readonly Sheet[], language: Language): PartName {
  const steps = [...new Set(sheets.map(({ spec }) => spec.step))].sort((one, other) => one - other);
  return {
    activity: activityOf(id).words[language].name,
    steps: { text: rangesText(steps), count: steps.length },
    sheets: sheets.length,
  };
}

function sayOf({ spec, tasks }: Sheet, language: Language): readonly string[] {
  return activityOf(spec.activity).words[language].say(tasks[0]?.printed);
}

function showOf({ spec, tasks }: Sheet, language: Language): string {
  return activityOf(spec.activity).words[language].show(tasks[0]?.printed);
}

/** What holds for all sheets that are given in the same words. */
function alongOf({ spec, tasks }: Sheet, language: Language) {
  const words = activityOf(spec.activity).words[language];
  const printed = tasks[0]?.printed;
  return {
    help: words.help(printed),
    easierNow: words.easierNow(printed),
    harderNow: words.harderNow(printed),
    lookFor: words.lookFor(printed),
  };
}

/** For the sheet with the most tasks. */
function guideOf(sheets: readonly Sheet[], language: Language): Guide | undefined {
  const [first] = sheets;
  if (!first) return undefined;
  const { guide } = activityOf(first.spec.activity).words[language];
  return guide?.(first.tasks[0]?.printed, Math.max(...sheets.map(({ tasks }) => tasks.length)));
}

function minutesOf(sheets: readonly Sheet[], toCut: Pack['toCut']): WholeRange {
  return rangeOf(sheets.map((sheet) => Math.round(minutesFor(featuresToDo(sheet, toCut)))));
}

function agesOf(sheets: readonly Sheet[]): WholeRange {
  return rangeOf(
    sheets.map(({ spec }) => activityOf(spec.activity).ladder[spec.step - 1]?.age ?? 3),
  );
}

function rangeOf(wholes: readonly number[]): WholeRange {
  return { least: Math.min(...wholes), most: Math.max(...wholes) };
}

/** More ranges than this are cut off: every sheet says itself what it is. */
const MOST_RANGES = 8;

/** Rising numbers as ranges: 1, 2, 3, 7 become `1–3, 7`; a long row of them ends with `…`. */
export function rangesText(numbers: readonly number[]): string {
  const ranges: { from: number; to: number }[] = [];
  for (const number of numbers) {
    const last = ranges[ranges.length - 1];
    if (last && last.to + 1 === number) last.to = number;
    else ranges.push({ from: number, to: number });
  }
  const texts = ranges.map(({ from, to }) => (from === to ? `${from}` : `${from}–${to}`));
  const shown = texts.length > MOST_RANGES ? [...texts.slice(0, MOST_RANGES - 1), '…'] : texts;
  return shown.join(', ');
}
