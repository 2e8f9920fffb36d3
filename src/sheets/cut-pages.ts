// The pages to cut of a pack, by sheet: they follow their sheet.
import type { Language } from '../activities/index.ts';
import type { Page } from '../page/index.ts';
import { cardPages } from './card-pages.ts';
import { hasKey, type KeyCard, keyCardPages, keyCardsOf } from './key-cards.ts';
import type { Pack } from './pack.ts';
import { hasPieces, piecePages } from './piece-pages.ts';
import type { Sheet } from './sheet.ts';
import { TO_CUT, type ToCut } from './to-cut.ts';

export interface CutPages {
  readonly kind: ToCut;
  readonly pages: readonly Page[];
}

/** For sheet `index` (from 0) of the pack, the pages of each kind that was chosen and that the sheet can have. */
export type CutPagesOf = (index: number) => readonly CutPages[];

/** Keys are compared over all sheets once; every page is drawn when it is asked for. */
export function cutPagesOf({ sheets, toCut = [] }: Pack, language: Language = 'en'): CutPagesOf {
  const keys = toCut.includes('key-card') ? keyCardsOf(sheets) : [];
  return (index) => {
    const sheet = sheets[index];
    if (!sheet) return [];
    return TO_CUT.filter((kind) => toCut.includes(kind))
      .map((kind) => ({ kind, pages: pagesOf(kind, sheet, keys[index] ?? [], language) }))
      .filter(({ pages }) => pages.length > 0);
  };
}

function pagesOf(
  kind: ToCut,
  sheet: Sheet,
  keys: readonly KeyCard[],
  language: Language,
): readonly Page[] {
  switch (kind) {
    case 'cards':
      return cardPages(sheet, language);
    case 'key-card':
      return keyCardPages(sheet, keys, language);
    case 'pieces':
      return piecePages(sheet, language);
  }
}

/** Those of the pack's choices that no sheet of it can have. */
export function notToBeCut({ sheets, toCut = [] }: Pack): readonly ToCut[] {
  return toCut.filter((kind) => !sheets.some(CAN_HAVE[kind]));
}

const CAN_HAVE: Readonly<Record<ToCut, (sheet: Sheet) => boolean>> = {
  cards: () => true,
  'key-card': hasKey,
  pieces: hasPieces,
};
