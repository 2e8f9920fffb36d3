// All pages of a pack that is made by hand, or half-made, in the order in which they are used.
import type { Language } from '../activities/index.ts';
import { accept, type Refusal, type Result, refuse, told } from '../base/index.ts';
import type { Page, Pages } from '../page/index.ts';
import {
  adultPages,
  answerPages,
  type Made,
  markingPages,
  type Pack,
  type PackPagesOptions,
  packPages,
  type Sheet,
  sheetPage,
  sheetPages,
} from '../sheets/index.ts';
import { byHandWords } from './catalogue.ts';
import { makeGuide } from './guide.ts';
import { guidePages } from './guide-pages.ts';
import { halfMade } from './half-made.ts';
import { stickerListPages } from './sticker-list.ts';
import { halfMadeRefusals } from './sticker-refusals.ts';

export interface MadeWishes {
  /** Absent: printed. */
  readonly made?: Made | undefined;
  /** Diameter in mm of the dot stickers at hand; absent: those that are sold. */
  readonly stickerMm?: number | undefined;
}

/** Pages of a pack with what they are: for the adult, a sheet or its guide, the answers. */
export interface PagesOf {
  readonly adult: () => Iterable<Page>;
  readonly marking: () => Iterable<Page>;
  readonly sheet: (sheet: Sheet) => readonly Page[];
  readonly answers: () => Iterable<Page>;
}

/**
 * The pages of a pack in the way it is made. The answers of a guide stand on the guide; half-made sheets of half a page
 * come two on one, as printed ones do. Refuses what `madeFaults` tells.
 */
export function pagesMade(
  pack: Pack,
  wishes: MadeWishes,
  options: PackPagesOptions = {},
): Result<Pages> {
  const { made = 'printed' } = wishes;
  if (made === 'printed') return accept(packPages(pack, options));
  const refusals = madeFaults(pack, wishes);
  if (refusals.length > 0) return refuse(...refusals);
  const { language = 'en' } = options;
  const words = byHandWords(language);
  const count = pack.sheets.length;
  return accept({
    title: made === 'half-made' ? words.halfMadeTitle(count) : words.documentTitle(count),
    language,
    pages: { [Symbol.iterator]: () => allPages(pack, wishes, options) },
  });
}

/** Why the pack cannot be made in that way: it has pages to cut, or some sheet no room for the stickers at hand. */
export function madeFaults(pack: Pack, wishes: MadeWishes): readonly Refusal[] {
  const { made = 'printed', stickerMm } = wishes;
  if (made === 'printed') return [];
  const [kind] = pack.toCut ?? [];
  if (kind) {
    const expected = told('reasons', 'expected.printed');
    return [{ code: 'unreadable', at: kind, got: made, expected }];
  }
  if (stickerMm === undefined) return [];
  return pack.sheets.flatMap((sheet) => {
    if (made === 'half-made') return halfMadeRefusals(sheet, stickerMm);
    const guide = makeGuide(sheet, { stickerMm });
    return guide.ok ? [] : guide.refusals;
  });
}

function* allPages(pack: Pack, wishes: MadeWishes, options: PackPagesOptions): Generator<Page> {
  const { withAdultPage = true, withAnswers = true, isSingle, language = 'en' } = options;
  const of = pagesOf(pack, wishes, language);
  if (withAdultPage) {
    yield* of.adult();
    yield* of.marking();
  }
  if (wishes.made === 'half-made')
    yield* sheetPages(pack, { isSingle, language }, (sheet) =>
      halfMadePage(sheet, wishes, language),
    );
  else for (const sheet of pack.sheets) yield* of.sheet(sheet);
  if (withAnswers) yield* of.answers();
}

/** The pages of a pack by what they are, for whoever names or shows them one by one. */
export function pagesOf(
  pack: Pack,
  { made = 'printed', stickerMm }: MadeWishes,
  language: Language = 'en',
): PagesOf {
  const wishes = { language, ...(stickerMm === undefined ? {} : { stickerMm }) };
  const sheets = pack.sheets;
  const stickerList = () =>
    made === 'half-made' ? stickerListPages(sheets, language, stickerMm) : [];
  return {
    adult: () => [...adultPages(pack, language, made !== 'by-hand'), ...stickerList()],
    marking: () => markingPages(sheets, language),
    sheet: (sheet) => {
      if (made === 'printed') return [sheetPage(sheet, language)];
      if (made === 'half-made') return [halfMadePage(sheet, { stickerMm }, language)];
      const guide = makeGuide(sheet, wishes);
      if (!guide.ok) throw new Error(`sheet ${sheet.code}: its stickers were not checked before`);
      return guidePages(guide.value, language);
    },
    answers: () => (made === 'by-hand' ? [] : answerPages(sheets, language)),
  };
}

function halfMadePage(sheet: Sheet, { stickerMm }: MadeWishes, language: Language): Page {
  return halfMade(sheet, { language, ...(stickerMm === undefined ? {} : { stickerMm }) }).page;
}
