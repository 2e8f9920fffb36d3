// All pages of a pack in print order, each made when it is asked for.
import type { Language } from '../activities/index.ts';
import {
  cutAndStack,
  type Page,
  type PageChoice,
  type Pages,
  type PaperName,
  printedPaperOf,
  twoUp,
} from '../page/index.ts';
import { adultPages } from './adult-page.ts';
import { answerPages } from './answer-pages.ts';
import { cutPagesOf } from './cut-pages.ts';
import { markingPages } from './marking-table.ts';
import type { Pack } from './pack.ts';
import { partNames } from './pack-parts.ts';
import { pageWords } from './page-catalogue.ts';
import type { Sheet } from './sheet.ts';
import { sheetPage } from './sheet-page.ts';
import { adultPaperOf } from './sheet-spec.ts';

export interface PackPagesOptions {
  readonly withAdultPage?: boolean;
  /** The table for marking that a group has behind the adult's page; absent: it is there. */
  readonly withMarkingTable?: boolean;
  readonly withAnswers?: boolean;
  /** Sheets of A5 on pages of their own; absent: two on one A4, to be cut apart. */
  readonly isSingle?: boolean;
  readonly language?: Language;
}

interface SheetPagesOptions {
  readonly isSingle: boolean | undefined;
  readonly language?: Language;
}

/** A sheet as one page. */
type DrawSheet = (sheet: Sheet, language: Language) => Page;

/** The adult's page, for a group the table for marking, the sheets, each before its pages to cut, the answer pages. */
export function packPages(pack: Pack, options: PackPagesOptions = {}): Pages {
  const { language = 'en' } = options;
  const names = partNames(pack.sheets, language);
  return {
    title: pageWords(language).documentTitle(names),
    language,
    pages: { [Symbol.iterator]: () => pagesOf(pack, options) },
  };
}

function* pagesOf(
  pack: Pack,
  {
    withAdultPage = true,
    withMarkingTable = true,
    withAnswers = true,
    isSingle,
    language = 'en',
  }: PackPagesOptions,
): Generator<Page> {
  if (withAdultPage) {
    yield* adultPages(pack, language);
    if (withMarkingTable) yield* markingPages(pack.sheets, language);
  }
  yield* sheetPages(pack, { isSingle, language });
  if (withAnswers) yield* answerPages(pack.sheets, language);
}

/** The papers that a pack of sheets with these pages is printed on, those for the adult too, each once. */
export function printedPapers(
  pages: readonly PageChoice[],
  isSingle?: boolean,
): readonly PaperName[] {
  const sheets = pages.map(({ paper }) => (isSingle ? paper : printedPaperOf(paper)));
  return [...new Set([...sheets, ...pages.map((page) => adultPaperOf(page).paper)])];
}

/** Each sheet before its pages to cut; where two share a page, all that lie alike before theirs. */
export function* sheetPages(
  pack: Pack,
  { isSingle, language = 'en' }: SheetPagesOptions,
  draw: DrawSheet = sheetPage,
): Generator<Page> {
  const cutPages = cutPagesOf(pack, language);
  const cutPagesFor = (place: number) => cutPages(place).flatMap(({ pages }) => pages);
  let from = 0;
  for (const run of runsOf(pack.sheets)) {
    const places = run.map((_, index) => from + index);
    from += run.length;
    if (!isSingle && run.some(({ spec }) => isHalf(spec.page.paper))) {
      for (const [first, second] of cutAndStack(run))
        yield twoUp(draw(first, language), second && draw(second, language));
      yield* inPairs(places.flatMap(cutPagesFor));
    } else {
      for (const [index, sheet] of run.entries()) {
        yield draw(sheet, language);
        yield* cutPagesFor(places[index] ?? 0);
      }
    }
  }
}

/** Half pages two by two as they come, where they lie alike. */
function* inPairs(pages: readonly Page[]): Generator<Page> {
  for (let place = 0; place < pages.length; place++) {
    const [page, next] = [pages[place], pages[place + 1]];
    if (!page) return;
    const isPair = next?.widthMm === page.widthMm;
    yield twoUp(page, isPair ? next : undefined);
    if (isPair) place += 1;
  }
}

/** Whether two of the paper are printed on another. */
function isHalf(paper: PaperName): boolean {
  return printedPaperOf(paper) !== paper;
}

/** Sheets in a row whose pages lie alike: only these can share a page. */
function runsOf(sheets: readonly Sheet[]): readonly (readonly Sheet[])[] {
  const runs: Sheet[][] = [];
  for (const sheet of sheets) {
    const last = runs.at(-1);
    if (last?.[0] && liesLike(last[0], sheet)) last.push(sheet);
    else runs.push([sheet]);
  }
  return runs;
}

function liesLike(one: Sheet, other: Sheet): boolean {
  const [{ page }, { page: otherPage }] = [one.spec, other.spec];
  return page.paper === otherPage.paper && page.orientation === otherPage.orientation;
}
