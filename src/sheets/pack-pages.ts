// All pages of a pack in print order, each made when it is asked for.
import type { Language } from '../activities/index.ts';
import type { Page, Pages } from '../page/index.ts';
import { adultPages } from './adult-page.ts';
import { answerPages } from './answer-pages.ts';
import { cutPagesOf } from './cut-pages.ts';
import { markingPages } from './marking-table.ts';
import type { Pack } from './pack.ts';
import { partNames } from './pack-parts.ts';
import { pageWords } from './page-catalogue.ts';
import { sheetPage } from './sheet-page.ts';

export interface PackPagesOptions {
  readonly withAdultPage?: boolean;
  readonly withAnswers?: boolean;
  readonly language?: Language;
}

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
  { withAdultPage = true, withAnswers = true, language = 'en' }: PackPagesOptions,
): Generator<Page> {
  if (withAdultPage) {
    yield* adultPages(pack, language);
    yield* markingPages(pack.sheets, language);
  }
  const cutPages = cutPagesOf(pack, language);
  for (const [index, sheet] of pack.sheets.entries()) {
    yield sheetPage(sheet, language);
    for (const { pages } of cutPages(index)) yield* pages;
  }
  if (withAnswers) yield* answerPages(pack.sheets, language);
}
