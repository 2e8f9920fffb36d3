// The page that tells the adult how many stickers go onto each half-made sheet before it is given.
import type { Language } from '../activities/index.ts';
import {
  type Block,
  columnsOf,
  heading,
  type Page,
  pageIn,
  pageSize,
  paragraph,
  printArea,
  QUIET_INK,
  stackBlocks,
  together,
} from '../page/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import { adultPaperOf, DEFAULT_PAGE, type Sheet } from '../sheets/index.ts';
import { byHandWords } from './catalogue.ts';
import { tickRow } from './guide-blocks.ts';
import { halfMade } from './half-made.ts';
import { below, inColumns } from './in-columns.ts';
import type { Sticker } from './stickers.ts';

const COLUMNS = 2;
const GAP_MM = 10;
const SECTION_GAP_MM = 4;

/** At least one page. */
export function stickerListPages(
  sheets: readonly Sheet[],
  language: Language,
  stickerMm?: number,
): readonly Page[] {
  const choice = adultPaperOf(sheets[0]?.spec.page ?? DEFAULT_PAGE);
  const area = printArea(choice.paper, choice.orientation);
  const words = byHandWords(language);
  const head = stackBlocks(
    [
      heading(words.stickFirst, area.width),
      paragraph(words.stickFirstHow, area.width, { colour: QUIET_INK }),
    ],
    area,
  );
  const columns = columnsOf(COLUMNS, below(area, head.heightMm + SECTION_GAP_MM), GAP_MM);
  const width = columns[0]?.width ?? area.width;
  const size = pageSize(choice.paper, choice.orientation);
  let rest: readonly Block[] = sheets.flatMap((sheet, index) =>
    sheetBlocks(sheet, index + 1, width, language, stickerMm),
  );
  const pages: Page[] = [];
  do {
    const filled = inColumns(rest, columns);
    const nodes = [head.group, ...filled.nodes];
    pages.push(pageIn(language, { ...size, title: words.stickFirst, nodes }));
    rest = filled.rest;
  } while (rest.length > 0);
  return pages;
}

function sheetBlocks(
  sheet: Sheet,
  number: number,
  widthMm: number,
  language: Language,
  stickerMm: number | undefined,
): readonly Block[] {
  const words = byHandWords(language);
  const wishes = { language, ...(stickerMm === undefined ? {} : { stickerMm }) };
  const counted = counts(halfMade(sheet, wishes).stickers);
  const rows =
    counted.length > 0
      ? counted.map(({ count, colour, diameterMm }) =>
          tickRow(words.stickers(count, colour, diameterMm), widthMm),
        )
      : [paragraph(words.noStickers, widthMm, { colour: QUIET_INK })];
  const title = heading(words.sheetNumber(number, sheet.code), widthMm, 2);
  return [together([title, ...rows], SECTION_GAP_MM)];
}

function counts(stickers: readonly Sticker[]) {
  return COLOUR_NAMES.flatMap((colour) => {
    const own = stickers.filter((sticker) => sticker.colour === colour);
    const sizes = [...new Set(own.map(({ diameterMm }) => diameterMm))].sort((a, b) => a - b);
    return sizes.map((diameterMm) => ({
      colour,
      diameterMm,
      count: own.filter((sticker) => sticker.diameterMm === diameterMm).length,
    }));
  });
}
