// Makes the sheet that is to lie on the table, with what its proof line says.
import { activityOf } from '../../activities/index.ts';
import { accept, type Result } from '../../base/index.ts';
import { difficultyOf, explainDifficulty, sheetDifficulty } from '../../learner/index.ts';
import type { Page } from '../../page/index.ts';
import { type ColourName, mergingPairs } from '../../palette/index.ts';
import { type SvgOptions, svgOf } from '../../press/index.ts';
import {
  adultPages,
  answerPages,
  type Pack,
  printedColours,
  type Sheet,
  sheetPage,
  shortCode,
} from '../../sheets/index.ts';
import type { Entries } from '../recipe/entries.ts';
import { lastChanged } from './changed-texts.ts';
import { fitValues } from './fit-values.ts';
import { packOf } from './pack-of.ts';
import type { Shown, View } from './protocol.ts';

/** At least as many as the sheets that follow on one answer page, so that it looks as it will print. */
const ANSWERED_TOGETHER = 8;

/**
 * The page for a view: that of sheet number `wanted`, or page number `wanted` of the adult's (1 upward; the last one if
 * there are fewer); `options` of its drawing.
 */
export function show(
  entries: Entries,
  view: View,
  wanted: number,
  options: SvgOptions = {},
): Result<Shown> {
  const number = view === 'adult' ? 1 : within(wanted, entries.sheets);
  const needed = Math.max(sheetsOnView(view, number, entries), lastChanged(entries.changed));
  const made = sheetsFor(entries, Math.min(entries.sheets, needed));
  if (!made.ok) return made;
  const pack = made.value;
  const sheet = pack.sheets[number - 1];
  if (sheet === undefined) throw new Error(`pack: expected a sheet ${number}, got none`);
  const { page, place, places } = pageFor(view, pack, sheet, wanted);
  const { spec, tasks, code } = sheet;
  const { widthMm, heightMm, title } = page;
  const activity = activityOf(spec.activity);
  return accept({
    svg: svgOf(page, options),
    widthMm,
    heightMm,
    title,
    place: place ?? number,
    places: places ?? entries.sheets,
    sheets: entries.sheets,
    tasks: tasks.length,
    code,
    activity: spec.activity,
    step: spec.step,
    values: { ...activity.ladder[spec.step - 1]?.values, ...spec.values },
    gaveWay: fitValues(entries).gaveWay,
    hardness: hardnessOf(sheet),
    answers: tasks.map(({ printed, answer }) => activity.words.en.answer(printed, answer)),
    alike: alikeOn(sheet),
    doubts: pack.sheets.flatMap(({ doubts = [] }, index) =>
      doubts.map(({ task, reason }) => ({ sheet: index + 1, task: task + 1, reason })),
    ),
  });
}

/** How hard the sheet is and why, in words. */
export function hardnessOf({ spec, tasks }: Sheet): string {
  const activity = activityOf(spec.activity);
  const difficulties = tasks.map(({ printed }) => difficultyOf(activity, printed));
  return explainDifficulty(sheetDifficulty(difficulties), 'en');
}

/** The last pack made: paging through it must not make it again. */
let kept: { readonly key: string; readonly pack: Pack } | undefined;

function sheetsFor(entries: Entries, count: number): Result<Pack> {
  const key = JSON.stringify(entries);
  if (kept?.key === key && kept.pack.sheets.length >= count) return accept(kept.pack);
  const made = packOf(entries, count);
  if (made.ok) kept = { key, pack: made.value };
  return made;
}

/** How many of the first sheets a view needs. */
function sheetsOnView(view: View, number: number, { sheets }: Entries): number {
  if (view === 'sheet') return number;
  return view === 'answers' ? number + ANSWERED_TOGETHER : sheets;
}

interface PageForView {
  readonly page: Page;
  /** Which page of how many; absent where that is the sheet's own number. */
  readonly place?: number;
  readonly places?: number;
}

function pageFor(view: View, pack: Pack, sheet: Sheet, wanted: number): PageForView {
  if (view === 'sheet') return { page: sheetPage(sheet) };
  const pages = view === 'adult' ? adultPages(pack) : [...answerPages(pack.sheets)];
  const place = within(wanted, pages.length);
  const page =
    view === 'adult' ? pages[place - 1] : pages.find((each) => isPrintedOn(each, sheet.code));
  if (page === undefined) throw new Error(`${view}: expected a page, got none`);
  return view === 'adult' ? { page, place, places: pages.length } : { page };
}

function within(wanted: number, most: number): number {
  return Math.max(1, Math.min(wanted, most));
}

function isPrintedOn({ nodes }: Page, code: string): boolean {
  return JSON.stringify(nodes).includes(`"${shortCode(code)}"`);
}

/** Pairs in one task that full red-green deficiency merges. In grey print marks tell the colours apart. */
function alikeOn({ spec, tasks }: Sheet): readonly (readonly [ColourName, ColourName])[] {
  if (spec.print === 'grey') return [];
  const pairs = tasks
    .flatMap((task) => mergingPairs(printedColours(task)))
    .filter(({ sight }) => sight !== 'tritan');
  return [...new Map(pairs.map(({ a, b }) => [`${a} ${b}`, [a, b] as const])).values()];
}
