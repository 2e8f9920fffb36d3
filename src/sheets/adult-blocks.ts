// What the adult's page says, as blocks that are measured before they have a place.
import type { Language } from '../activities/index.ts';
import { colourName, PICTURE_CREDIT } from '../figures/index.ts';
import {
  type Block,
  bullets,
  CHECK_LINE_SIZE,
  checkLine,
  heading,
  type LeadRow,
  leadRows,
  type PaperName,
  paragraph,
  picture,
  QUIET_INK,
  together,
} from '../page/index.ts';
import { packMaterials } from './materials.ts';
import type { Pack } from './pack.ts';
import { type PackPart, packParts, partNames } from './pack-parts.ts';
import { pageWords } from './page-catalogue.ts';
import type { AdultWords } from './page-words.ts';
import { stickerRows } from './sticker-rows.ts';

const SMALL_EM_MM = 3.3;
const PART_GAP_MM = 3;
const SECTION_BEFORE_MM = 5;

export function titleBlocks(pack: Pack, language: Language, width: number): Block[] {
  const words = pageWords(language).adult;
  const names = words.packTitle(partNames(pack.sheets, language));
  return [heading(words.title, width), paragraph(names, width, { colour: QUIET_INK })];
}

/** What to lay out, then what to say and to show for each kind of sheet. */
export function mainBlocks(pack: Pack, language: Language, width: number): Block[] {
  const words = pageWords(language).adult;
  const [first, ...others] = packParts(pack.sheets, language).map((part) =>
    partBlock(part, words, width),
  );
  const start = [heading(words.start, width, 2), ...(first ? [first] : [])];
  return [
    together(
      [heading(words.layOut, width, 2), ...layOutBlocks(pack, language, width)],
      SECTION_BEFORE_MM,
    ),
    together(start, SECTION_BEFORE_MM),
    ...others,
  ];
}

function layOutBlocks(pack: Pack, language: Language, width: number): Block[] {
  const words = pageWords(language).adult;
  const { stickers, crayons, pencil, scissors, glue } = packMaterials(pack.sheets);
  const print = pack.sheets[0]?.spec.print ?? 'colour';
  const sizes = [...new Set(stickers.map(({ diameterMm }) => diameterMm))].sort(
    (one, other) => one - other,
  );
  const colours = crayons.map((colour) => colourName(colour, language));
  const listed = [
    ...(colours.length > 0 ? [words.crayons(colours)] : []),
    ...(pencil ? [words.pencil] : []),
    ...(scissors ? [words.scissors] : []),
    ...(glue ? [words.glue] : []),
  ];
  const others = stickers.length + listed.length === 0 ? [words.nothing] : listed;
  return [
    ...sizes.flatMap((size) => [
      paragraph(words.stickers(size), width),
      stickerRows(
        stickers.filter(({ diameterMm }) => diameterMm === size),
        print,
        language,
        width,
      ),
    ]),
    ...(others.length > 0 ? [bullets(others, width)] : []),
  ];
}

function partBlock(part: PackPart, words: AdultWords, width: number): Block {
  const title = words.partHeading(part.name, part.sheetNumbers);
  const rows: readonly LeadRow[] = [
    { lead: words.say, words: `“${part.say.join(' ')}”` },
    { lead: words.show, words: words.showOne(part.show, part.showSheet) },
  ];
  return together(
    [paragraph(title, width, { weight: 'bold' }), leadRows(rows, width)],
    PART_GAP_MM,
  );
}

/** The 50 mm line and the cautions. */
export function sideBlocks(language: Language, paper: PaperName, width: number): Block[] {
  const words = pageWords(language).adult;
  return [
    heading(words.size, width, 2),
    picture(checkLine(0, 0, words.checkLine), CHECK_LINE_SIZE),
    paragraph(words.checkAdvice(paper), width, { emMm: SMALL_EM_MM }),
    heading(words.care, width, 2),
    bullets(words.cautions, width),
  ];
}

export function proofBlock(pack: Pack, language: Language, width: number): Block {
  const tasks = pack.sheets.reduce((sum, sheet) => sum + sheet.tasks.length, 0);
  const proof = pageWords(language).adult.proof(tasks);
  const words = hasPictures(pack) ? `${proof} ${PICTURE_CREDIT}.` : proof;
  return paragraph(words, width, { emMm: SMALL_EM_MM, colour: QUIET_INK });
}

/** Whether any sheet shows a picture, whose licence asks to be named. */
function hasPictures({ sheets }: Pack): boolean {
  return sheets.some(({ tasks }) => JSON.stringify(tasks).includes('"form":"picture-'));
}
