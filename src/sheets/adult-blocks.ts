// What the adult's page says, as blocks that are measured before they have a place.
import type { Language } from '../activities/index.ts';
import { colourName, PICTURE_CREDIT } from '../figures/index.ts';
import {
  type Block,
  bullets,
  CHECK_LINE_SIZE,
  checkLine,
  heading,
  numbered,
  type PaperName,
  paragraph,
  picture,
  printedPaperOf,
  QUIET_INK,
  together,
} from '../page/index.ts';
import { COLOUR_NAMES, type ColourName } from '../palette/index.ts';
import { hasPiecesOnSheet } from './cut-demands.ts';
import { packMaterials } from './materials.ts';
import type { Pack } from './pack.ts';
import { partNames } from './pack-parts.ts';
import { pageWords } from './page-catalogue.ts';
import { printedColours } from './printed-colours.ts';
import { stickerRows } from './sticker-rows.ts';

/** The em of all that is not a heading, in mm: small and still easy to read. */
export const SMALL_EM_MM = 3.3;
const SECTION_BEFORE_MM = 5;

export function titleBlocks(pack: Pack, language: Language, width: number): Block[] {
  const words = pageWords(language).adult;
  const names = words.packTitle(partNames(pack.sheets, language));
  return [heading(words.title, width), paragraph(names, width, { colour: QUIET_INK })];
}

export function layOutBlock(pack: Pack, language: Language, width: number): Block {
  const words = pageWords(language).adult;
  return section([heading(words.layOut, width, 2), ...layOutBlocks(pack, language, width)]);
}

function layOutBlocks(pack: Pack, language: Language, width: number): Block[] {
  const words = pageWords(language).adult;
  const { stickers, crayons, tools } = packMaterials(pack.sheets, pack.toCut);
  const print = pack.sheets[0]?.spec.print ?? 'colour';
  const sizes = [...new Set(stickers.map(({ diameterMm }) => diameterMm))].sort(
    (one, other) => one - other,
  );
  const colours = crayons.map((colour) => colourName(colour, language));
  const listed = [
    ...(colours.length > 0 ? [words.crayons(colours)] : []),
    ...tools.map((tool) => words.tools[tool]),
  ];
  const others = stickers.length + listed.length === 0 ? [words.nothing] : listed;
  const marks = print === 'grey' ? markedColours(pack) : [];
  return [
    ...sizes.flatMap((size) => [
      paragraph(words.stickers(size), width, { emMm: SMALL_EM_MM }),
      stickerRows(
        stickers.filter(({ diameterMm }) => diameterMm === size),
        print,
        language,
        width,
      ),
    ]),
    ...(others.length > 0 ? [bullets(others, width, SMALL_EM_MM)] : []),
    ...(marks.length > 0 ? [paragraph(words.marks(marks), width, { emMm: SMALL_EM_MM })] : []),
  ];
}

/** The colours whose marks stand on the sheets: the marks are the same in every language, the names are not. */
function markedColours({ sheets }: Pack): readonly ColourName[] {
  const shown = new Set(sheets.flatMap(({ tasks }) => tasks.flatMap(printedColours)));
  return COLOUR_NAMES.filter((name) => shown.has(name));
}

/** How to cut out what the pack has for that. */
export function cutBlock(pack: Pack, language: Language, width: number): Block {
  const { toCut = [], sheets } = pack;
  const { cut } = pageWords(language).adult;
  const isTwice = toCut.includes('pieces') && sheets.some(hasPiecesOnSheet);
  const lines = [
    ...toCut.map((kind) => cut.kinds[kind]),
    ...(isTwice ? [cut.both] : []),
    ...cut.always,
  ];
  return section([heading(cut.title, width, 2), bullets(lines, width, SMALL_EM_MM)]);
}

/** When to stop. */
export function stopBlock(language: Language, width: number): Block {
  const words = pageWords(language).adult;
  return section([heading(words.stop, width, 2), bullets(words.stopAdvice, width, SMALL_EM_MM)]);
}

/** The help that holds for every sheet. */
export function helpBlock(language: Language, width: number): Block {
  const words = pageWords(language).adult;
  return section([heading(words.help, width, 2), numbered(words.ladder, width, SMALL_EM_MM)]);
}

/** The 50 mm line; and where sheets may share a page, how they are cut apart. */
export function sizeBlock(pack: Pack, language: Language, paper: PaperName, width: number): Block {
  const words = pageWords(language).adult;
  const isHalved = pack.sheets.some(
    ({ spec }) => printedPaperOf(spec.page.paper) !== spec.page.paper,
  );
  return section([
    heading(words.size, width, 2),
    picture(checkLine(0, 0, words.checkLine), CHECK_LINE_SIZE),
    paragraph(words.checkAdvice(paper), width, { emMm: SMALL_EM_MM }),
    ...(isHalved ? [paragraph(words.cutAdvice, width, { emMm: SMALL_EM_MM })] : []),
  ]);
}

export function careBlock(language: Language, width: number): Block {
  const words = pageWords(language).adult;
  return section([heading(words.care, width, 2), bullets(words.cautions, width, SMALL_EM_MM)]);
}

export function proofBlock(pack: Pack, language: Language, width: number): Block {
  const tasks = pack.sheets.reduce((sum, sheet) => sum + sheet.tasks.length, 0);
  const doubts = pack.sheets.reduce((sum, sheet) => sum + (sheet.doubts?.length ?? 0), 0);
  const proof = pageWords(language).adult.proof(tasks, doubts);
  const words = hasPictures(pack) ? `${proof} ${PICTURE_CREDIT}.` : proof;
  return paragraph(words, width, { emMm: SMALL_EM_MM, colour: QUIET_INK });
}

/** Whether any sheet shows a picture, whose licence asks to be named. */
function hasPictures({ sheets }: Pack): boolean {
  return sheets.some(({ tasks }) => JSON.stringify(tasks).includes('"form":"picture-'));
}

/** A heading and what belongs to it. */
export function section(blocks: readonly Block[]): Block {
  return together(blocks, SECTION_BEFORE_MM);
}
