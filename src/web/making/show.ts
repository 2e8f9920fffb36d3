// Makes the sheet that is to lie on the table, with what its proof line says.
import { activityOf } from '../../activities/index.ts';
import { accept, type Result, refuse } from '../../base/index.ts';
import { type PagesOf, pagesOf } from '../../by-hand/index.ts';
import {
  CONTENT_IDS,
  type ContentId,
  isOfLetters,
  nameNotes,
  shownNotes,
} from '../../figures/index.ts';
import { difficultyFrom, explainDifficulty, sheetDifficulty } from '../../learner/index.ts';
import { isolated, type Page } from '../../page/index.ts';
import { type ColourName, mergingPairs } from '../../palette/index.ts';
import { coverageOf, type SvgOptions, svgOf } from '../../press/index.ts';
import {
  childOnSheet,
  cutPagesOf,
  featuresToDo,
  lettersShown,
  notToBeCut,
  type Pack,
  pagesInInks,
  printedColours,
  type Sheet,
  shortCode,
} from '../../sheets/index.ts';
import type { Entries } from '../recipe/entries.ts';
import { languageNow } from '../speaking/language-now.ts';
import { fitValues } from './fit-values.ts';
import { keptPack, sheetIn } from './kept-pack.ts';
import { faultsAtHand, madeOf } from './made-of.ts';
import { type PackAsked, sheetsOf } from './pack-of.ts';
import type { Inked, Shown, View } from './protocol.ts';
import type { WantedPage } from './wanted-page.ts';

/** At least as many as the sheets that follow on one answer page, so that it looks as it will print. */
const ANSWERED_TOGETHER = 8;

/**
 * The page for a view: that of sheet number `wanted`, or page number `wanted` of the adult's (1 upward; the last one if
 * there are fewer); `options` of its drawing.
 */
export function show(
  asked: PackAsked,
  view: View,
  { wanted, leaf }: WantedPage,
  options: SvgOptions = {},
): Result<Shown> {
  const { entries } = asked;
  const sheets = sheetsOf(asked);
  if (!sheets.ok) return sheets;
  const number = view === 'adult' ? 1 : within(wanted, sheets.value);
  const made = keptPack(asked, sheetsOnView(view, number));
  if (!made.ok) return made;
  const pack = made.value;
  const sheet = sheetIn(pack, number);
  const faults = faultsAtHand({ ...pack, sheets: [sheet] }, entries);
  if (faults.length > 0) return refuse(...faults);
  const pages = pagesOf(pack, madeOf(entries), languageNow());
  const { page, place, places, ...leaves } = pageFor(view, pages, [pack, sheet], {
    wanted,
    leaf,
  });
  const { spec, tasks, code } = sheet;
  const { widthMm, heightMm, title } = page;
  const activity = activityOf(spec.activity);
  return accept({
    svg: svgOf(page, options),
    widthMm,
    heightMm,
    title,
    place: place ?? number,
    places: places ?? sheets.value,
    leaf: leaves.leaf ?? 1,
    leaves: leaves.leaves ?? 1,
    sheet: number,
    sheets: sheets.value,
    ...(view === 'adult' ? {} : childOf(sheet, sheets.value, entries)),
    tasks: tasks.length,
    code,
    nameNotes: notesOfName(sheet, entries),
    activity: spec.activity,
    step: spec.step,
    values: { ...activity.ladder[spec.step - 1]?.values, ...spec.values },
    gaveWay: gaveWayOn(sheet, entries),
    hardness: hardnessOf(sheet, pack),
    answers: tasks.map(({ printed, answer }) =>
      activity.words[languageNow()].answer(printed, answer),
    ),
    alike: alikeOn(sheet),
    toCut: toCutOf(pack, number - 1),
    doubts: pack.sheets.flatMap(({ doubts = [] }, index) =>
      doubts.map(({ task, reason }) => ({ sheet: index + 1, task: task + 1, reason })),
    ),
  });
}

function childOf({ child }: Sheet, all: number, { sheets }: Entries): Pick<Shown, 'child'> {
  if (child === undefined) return {};
  const { number } = child;
  return { child: { name: isolated(childOnSheet(child)), number, children: all / sheets, sheets } };
}

function notesOfName({ spec, tasks }: Sheet, { letters }: Entries): readonly string[] {
  const content =
    spec.values.content ?? activityOf(spec.activity).ladder[spec.step - 1]?.values.content;
  if (letters === undefined || !isOfLetters(String(content), CONTENT_IDS)) return [];
  const own = spec.letters ?? '';
  return [
    ...nameNotes(content as ContentId, letters, languageNow()),
    ...(own === '' ? [] : shownNotes(own, lettersShown(tasks, own), languageNow())),
  ];
}

/** Share of a sheet of the pack that is inked; of its last sheet if there are fewer. */
export function inkedOn(asked: PackAsked, wanted: number): Result<Inked> {
  const sheets = sheetsOf(asked);
  if (!sheets.ok) return sheets;
  const number = within(wanted, sheets.value);
  const made = keptPack(asked, number);
  if (!made.ok) return made;
  const { full, saving } = pagesInInks(sheetIn(made.value, number));
  return accept({ full: coverageOf(full), saving: coverageOf(saving) });
}

/** What the step or the house made other than it was set. */
function gaveWayOn({ spec }: Sheet, entries: Entries): readonly string[] {
  const { changes, gaveWay } = fitValues(entries);
  if (entries.stock === undefined) return gaveWay;
  const names = new Set([...Object.keys(changes), ...Object.keys(spec.values)]);
  const own = activityOf(spec.activity).ladder[spec.step - 1]?.values ?? {};
  const isOther = (name: string) =>
    (spec.values[name] ?? own[name]) !== (changes[name] ?? own[name]);
  return [...new Set([...gaveWay, ...[...names].filter(isOther)])];
}

/** How hard the sheet is and why, in words, with what is cut out of it. */
export function hardnessOf(sheet: Sheet, { toCut }: Pick<Pack, 'toCut'> = {}): string {
  const difficulties = featuresToDo(sheet, toCut).map(difficultyFrom);
  return explainDifficulty(sheetDifficulty(difficulties), languageNow());
}

/** How many of the first sheets a view needs. */
function sheetsOnView(view: View, number: number): number {
  if (view === 'sheet' || view === 'cut') return number;
  return view === 'answers' ? number + ANSWERED_TOGETHER : Infinity;
}

interface PageForView {
  readonly page: Page;
  /** Which page of how many; absent where that is the sheet's own number. */
  readonly place?: number;
  readonly places?: number;
  /** Which page of how many, of a sheet that takes several. */
  readonly leaf?: number;
  readonly leaves?: number;
}

function pageFor(
  view: View,
  pages: PagesOf,
  [pack, sheet]: readonly [Pack, Sheet],
  { wanted, leaf }: WantedPage,
): PageForView {
  if (view === 'sheet') return leafOf(pages.sheet(sheet), leaf);
  if (view === 'cut') return leafOf(cutOrSheet(pages, pack, sheet), leaf);
  const answers = [...pages.answers()];
  // The answers of a sheet that is made by hand stand at the end of its guide.
  if (view === 'answers' && answers.length === 0) return leafOf(pages.sheet(sheet), Infinity);
  const all = view === 'adult' ? [...pages.adult()] : answers;
  const place = within(wanted, all.length);
  const page =
    view === 'adult' ? all[place - 1] : all.find((each) => isPrintedOn(each, sheet.code));
  if (page === undefined) throw new Error(`${view}: expected a page, got none`);
  return view === 'adult' ? { page, place, places: all.length } : { page };
}

function leafOf(all: readonly Page[], wanted: number): PageForView {
  const leaf = within(wanted, all.length);
  const page = all[leaf - 1];
  if (page === undefined) throw new Error('sheet: expected a page, got none');
  return { page, leaf, leaves: all.length };
}

function within(wanted: number, most: number): number {
  return Math.max(1, Math.min(wanted, most));
}

/** The pages that follow the sheet; the sheet itself where none does. */
function cutOrSheet(pages: PagesOf, { toCut = [] }: Pack, sheet: Sheet): readonly Page[] {
  const cut = cutPagesOf(
    { sheets: [sheet], toCut },
    languageNow(),
  )(0).flatMap(({ pages: its }) => its);
  return cut.length > 0 ? cut : pages.sheet(sheet);
}

/** Keys that stand on a card of an earlier sheet are had as well. */
function toCutOf({ toCut = [], sheets }: Pack, index: number): Shown['toCut'] {
  const sheet = sheets[index];
  const lacking = sheet === undefined ? [] : notToBeCut({ sheets: [sheet], toCut });
  return { had: toCut.filter((kind) => !lacking.includes(kind)), lacking };
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
