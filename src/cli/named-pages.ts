// The pages of a pack with names for files: in print order when sorted, each sheet with its code.
import { type MadeWishes, pagesOf } from '../by-hand/index.ts';
import type { Language } from '../languages/index.ts';
import type { Page } from '../page/index.ts';
import { cutPagesOf, type Pack } from '../sheets/index.ts';

export interface NamedPage {
  readonly name: string;
  readonly page: Page;
}

export interface PageWishes {
  readonly answers: boolean;
  readonly adultPage: boolean;
  readonly wishes: MadeWishes;
}

/**
 * `adult-1`, for a group `group-1`, then `sheet-01-CODE` and so on (of a guide `sheet-01-CODE-1`), each printed sheet
 * before its pages to cut (`sheet-01-CODE_pieces-1`), then `answers-1`; each page is made when it is asked for.
 */
export function* namedPages(
  pack: Pack,
  { answers, adultPage, wishes }: PageWishes,
  language: Language,
): Generator<NamedPage> {
  const of = pagesOf(pack, wishes, language);
  if (adultPage) {
    yield* numbered('adult', of.adult(), 1);
    yield* numbered('group', of.marking(), 1);
  }
  const cutPages = cutPagesOf(pack, language);
  const isByHand = (wishes.made ?? 'printed') !== 'printed';
  const digits = String(pack.sheets.length).length;
  for (const [index, sheet] of pack.sheets.entries()) {
    const number = String(index + 1).padStart(digits, '0');
    const name = `sheet-${number}-${sheet.code}`;
    const [page, ...more] = of.sheet(sheet);
    if (page && more.length === 0) yield { name, page };
    else if (page) yield* numbered(name, [page, ...more], 1);
    if (isByHand) continue;
    // An underscore sorts behind the full stop of the sheet's own file.
    for (const { kind, pages } of cutPages(index)) yield* numbered(`${name}_${kind}`, pages, 1);
  }
  if (answers) yield* numbered('answers', of.answers(), digits);
}

function* numbered(name: string, pages: Iterable<Page>, digits: number): Generator<NamedPage> {
  let number = 0;
  for (const page of pages) {
    number += 1;
    yield { name: `${name}-${String(number).padStart(digits, '0')}`, page };
  }
}
