// How the sheets of a pack are used in wipe-clean pockets, where that is what they are for.
import { activityOf, type Language } from '../activities/index.ts';
import { bullets, heading } from '../page/index.ts';
import { SMALL_EM_MM, section } from './adult-blocks.ts';
import type { Piece } from './adult-flow.ts';
import { cutsPieces, hasPiecesOnSheet, materialsToDo } from './cut-demands.ts';
import type { Pack } from './pack.ts';
import { pageWords } from './page-catalogue.ts';
import { POCKET_ADVICE, type PocketAdvice } from './page-words.ts';
import type { Sheet } from './sheet.ts';

/** None where no sheet is for a pocket. */
export function pocketPieces(pack: Pack, language: Language): readonly Piece[] {
  const sheets = pack.sheets.filter(({ spec }) => spec.page.margin === 'pocket');
  if (sheets.length === 0) return [];
  const { title, advice } = pageWords(language).adult.pocket;
  const isSaid = saidOf(sheets, pack, language);
  const lines = POCKET_ADVICE.filter((name) => isSaid[name]).map((name) => advice[name]);
  return [(width) => section([heading(title, width, 2), bullets(lines, width, SMALL_EM_MM)])];
}

function saidOf(
  sheets: readonly Sheet[],
  { toCut }: Pack,
  language: Language,
): Readonly<Record<PocketAdvice, boolean>> {
  const kinds = new Set(
    sheets.flatMap((sheet) => materialsToDo(sheet, toCut)).map(({ kind }) => kind),
  );
  return {
    write: true,
    stickers: kinds.has('sticker'),
    pieces: sheets.some((sheet) => cutsPieces(sheet, toCut)),
    cut: toCut?.includes('pieces') !== true && sheets.some(hasPiecesOnSheet),
    fold: sheets.some(({ spec }) => activityOf(spec.activity).words[language].guide !== undefined),
  };
}
