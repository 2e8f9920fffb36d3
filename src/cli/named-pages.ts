// The pages of a pack with names for files: in print order when sorted, each sheet with its code.
import type { Page } from '../page/index.ts';
import {
  adultPages,
  answerPages,
  cutPagesOf,
  markingPages,
  type Pack,
  sheetPage,
} from '../sheets/index.ts';

export interface NamedPage {
  readonly name: string;
  readonly page: Page;
}

export interface PageWishes {
  readonly answers: boolean;
  readonly adultPage: boolean;
}

/** `adult-1`, for a group `group-1`, then `sheet-01-CODE` and so on, each before its pages to cut (`sheet-01-CODE_pieces-1`), then `answers-1`; each page is made when it is asked for. */
export function* namedPages(pack: Pack, { answers, adultPage }: PageWishes): Generator<NamedPage> {
  if (adultPage) {
    yield* numbered('adult', adultPages(pack), 1);
    yield* numbered('group', markingPages(pack.sheets), 1);
  }
  const cutPages = cutPagesOf(pack);
  const digits = String(pack.sheets.length).length;
  for (const [index, sheet] of pack.sheets.entries()) {
    const number = String(index + 1).padStart(digits, '0');
    const name = `sheet-${number}-${sheet.code}`;
    yield { name, page: sheetPage(sheet) };
    // An underscore sorts behind the full stop of the sheet's own file.
    for (const { kind, pages } of cutPages(index)) yield* numbered(`${name}_${kind}`, pages, 1);
  }
  if (answers) yield* numbered('answers', answerPages(pack.sheets), digits);
}

function* numbered(name: string, pages: Iterable<Page>, digits: number): Generator<NamedPage> {
  let number = 0;
  for (const page of pages) {
    number += 1;
    yield { name: `${name}-${String(number).padStart(digits, '0')}`, page };
  }
}
