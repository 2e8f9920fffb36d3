// The adult's page of a pack: what to lay out, to say, to show and to help with, true size, cautions, the sheets.
import type { Language } from '../activities/index.ts';
import {
  type Area,
  columnsOf,
  heading,
  type Orientation,
  type Page,
  type PageChoice,
  pageIn,
  pageSize,
  printArea,
  type SceneNode,
  stackBlocks,
} from '../page/index.ts';
import {
  careBlock,
  cutBlock,
  helpBlock,
  layOutBlock,
  proofBlock,
  sizeBlock,
  stopBlock,
  titleBlocks,
} from './adult-blocks.ts';
import { type Column, fillEach, fillLevel, type Piece } from './adult-flow.ts';
import { goalsPieces, partPieces } from './adult-parts.ts';
import { doubtPieces } from './doubt-pieces.ts';
import type { Pack } from './pack.ts';
import { pageWords } from './page-catalogue.ts';
import { pocketPieces } from './pocket-block.ts';
import { placeForList, sheetList } from './sheet-list.ts';
import { adultPaperOf, DEFAULT_PAGE } from './sheet-spec.ts';

const COLUMN_GAP_MM = 10;
const SECTION_GAP_MM = 6;
/** Widths beside the column of the kinds of sheet, which takes what they leave, by eye; 0: no column there. */
const SIDES_MM: Readonly<Record<Orientation, { readonly left: number; readonly right: number }>> = {
  portrait: { left: 0, right: 66 },
  landscape: { left: 62, right: 70 },
};
/** Columns of a further page. */
const FURTHER_COLUMNS: Readonly<Record<Orientation, number>> = { portrait: 2, landscape: 3 };

/**
 * The adult's page. It runs on to further pages where a pack holds more kinds of sheet, or names more goals, than
 * one page can tell; the list of sheets then stands on the last. Of sheets that are made without a printer it does not
 * say how to print at true size.
 */
export function adultPages(
  pack: Pack,
  language: Language = 'en',
  isPrinted = true,
): readonly Page[] {
  const page = adultPaperOf(pack.sheets[0]?.spec.page ?? DEFAULT_PAGE);
  const area = printArea(page.paper, page.orientation);
  const size = pageSize(page.paper, page.orientation);
  const words = pageWords(language).adult;
  const title = stackBlocks(titleBlocks(pack, language, area.width), area);
  const body = below(area, title.heightMm + SECTION_GAP_MM);
  const columns = (above: Area) => firstColumns(pack, language, page, above, isPrinted);
  const { nodes, rest, hasList } = firstPage(pack, language, body, columns);
  const first = { ...size, title: words.title, nodes: [title.group, ...nodes] };
  const further = hasList ? [] : furtherPages(pack, language, page, rest);
  const pages = [first, ...further.map((nodes) => ({ ...size, title: words.continued, nodes }))];
  return pages.map((each) => pageIn(language, each));
}

interface FirstPage {
  readonly nodes: readonly SceneNode[];
  /** What there was no room for. */
  readonly rest: readonly Piece[];
  readonly hasList: boolean;
}

/** Columns, the list of sheets under them or under the one of the kinds, the proof line at the foot. */
function firstPage(
  pack: Pack,
  language: Language,
  body: Area,
  columnsIn: (above: Area) => readonly Column[],
): FirstPage {
  const proof = proofBlock(pack, language, body.width);
  const foot = proof.draw(body.left, body.top + body.height - proof.heightMm);
  const above = { ...body, height: body.height - proof.heightMm - SECTION_GAP_MM };
  const columns = columnsIn(above);
  const { groups, heightsMm, rest } = fillEach(columns);
  if (rest.length > 0) return { nodes: [...groups, foot], rest, hasList: false };
  const underColumns = columns
    .map(({ area }, index) => below(area, (heightsMm[index] ?? 0) + SECTION_GAP_MM))
    .sort((one, other) => other.width - one.width);
  const underAll = below(above, Math.max(...heightsMm) + SECTION_GAP_MM);
  const place = placeForList(pack.sheets, [underAll, ...underColumns], language);
  if (!place) return { nodes: [...groups, foot], rest, hasList: false };
  return {
    nodes: [...groups, sheetList(pack.sheets, place.area, language), foot],
    rest,
    hasList: true,
  };
}

function firstColumns(
  pack: Pack,
  language: Language,
  { paper, orientation }: PageChoice,
  above: Area,
  isPrinted: boolean,
): readonly Column[] {
  const { left, right } = SIDES_MM[orientation];
  const layOut: Piece = (width) => layOutBlock(pack, language, width);
  const stop: Piece = (width) => stopBlock(language, width);
  const size: readonly Piece[] = isPrinted
    ? [(width) => sizeBlock(pack, language, paper, width)]
    : [];
  const help: Piece = (width) => helpBlock(language, width);
  const care: Piece = (width) => careBlock(language, width);
  const cut: readonly Piece[] = pack.toCut ? [(width) => cutBlock(pack, language, width)] : [];
  const kinds = [
    ...cut,
    ...pocketPieces(pack, language),
    ...partPieces(pack, language),
    ...goalsPieces(pack, language),
  ];
  const doubts = doubtPieces(pack, language);
  const rightArea = { ...above, left: above.left + above.width - right, width: right };
  const mainMm = above.width - right - COLUMN_GAP_MM;
  if (left === 0) {
    return [
      { area: { ...above, width: mainMm }, pieces: [...doubts, layOut, stop, ...kinds] },
      { area: rightArea, pieces: [...size, help, care] },
    ];
  }
  const leftArea = { ...above, width: left };
  const start = [layOut, ...size, stop];
  // What the left column has no room for stands above the kinds of sheet.
  const { rest } = fillEach([{ area: leftArea, pieces: start }]);
  const leftMm = left + COLUMN_GAP_MM;
  const middle = { ...above, left: above.left + leftMm, width: mainMm - leftMm };
  return [
    { area: leftArea, pieces: start.slice(0, start.length - rest.length) },
    { area: middle, pieces: [...doubts, ...rest, ...kinds] },
    { area: rightArea, pieces: [help, care] },
  ];
}

/** The pieces on as many pages as they need, the list of sheets below the last of them. */
function furtherPages(
  pack: Pack,
  language: Language,
  { paper, orientation }: PageChoice,
  pieces: readonly Piece[],
): readonly (readonly SceneNode[])[] {
  const area = printArea(paper, orientation);
  const top = heading(pageWords(language).adult.continued, area.width, 2);
  const head = top.draw(area.left, area.top);
  const body = below(area, top.heightMm + SECTION_GAP_MM);
  const columns = columnsOf(FURTHER_COLUMNS[orientation], body, COLUMN_GAP_MM);
  const pages: (readonly SceneNode[])[] = [];
  let rest = pieces;
  let listArea = body;
  while (rest.length > 0) {
    const filled = fillLevel(rest, columns);
    pages.push([head, ...filled.groups]);
    rest = filled.rest;
    listArea = below(body, Math.max(...filled.heightsMm) + SECTION_GAP_MM);
  }
  const place = placeForList(pack.sheets, pages.length > 0 ? [listArea] : [], language);
  const before = place?.showsAll ? (pages.pop() ?? [head]) : [head];
  const list = sheetList(pack.sheets, place?.showsAll ? place.area : body, language);
  return [...pages, [...before, list]];
}

function below(area: Area, downMm: number): Area {
  return { ...area, top: area.top + downMm, height: area.height - downMm };
}
