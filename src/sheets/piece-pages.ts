// Pages of pieces to cut out and stick into the empty places of a sheet, mixed, those of each task together.
import { activityOf, type Language, type Piece } from '../activities/index.ts';
import { type Random, randomFrom } from '../base/index.ts';
import {
  type Area,
  type Group,
  group,
  type Page,
  printArea,
  QUIET_INK,
  text,
} from '../page/index.ts';
import { CUT_GAP_MM, cutArea, cutLine, cutPage, standing } from './cut-page.ts';
import { pageWords } from './page-catalogue.ts';
import { placedTasks } from './placed-tasks.ts';
import type { Sheet } from './sheet.ts';
import { styleOf } from './sheet-spec.ts';

/** Left of the pieces, for the number of their task, in mm. */
const NUMBER_MM = 5;
const NUMBER_EM_MM = 3.6;

/** The pieces of each task, in the order of the answer, those that belong nowhere last; none: an empty list for it. */
export function piecesOf(sheet: Sheet): readonly (readonly Piece[])[] {
  const { spec } = sheet;
  return placedTasks(sheet).map(({ task, size }) =>
    activityOf(spec.activity).pieces(task, size, styleOf(spec)),
  );
}

/** Whether any figure of the answers goes into an empty place. */
export function hasPieces(sheet: Sheet): boolean {
  return piecesOf(sheet).some((pieces) => pieces.length > 0);
}

/** Always the same pages for a sheet; none where it has no pieces. */
export function piecePages(sheet: Sheet, language: Language = 'en'): readonly Page[] {
  const random = randomFrom(sheet.spec.seed).fork();
  const tasks = piecesOf(sheet).map((pieces) => mixed(pieces, random.fork()));
  const { page } = sheet.spec;
  const pages = pagesOf(rowsOf(tasks, areaFor(sheet)), areaFor(sheet).height);
  const words = pageWords(language).cut;
  return pages.map((rows, index) =>
    cutPage({
      page,
      title: words.piecesTitle(sheet.code),
      foot: [words.pieces(sheet.code), words.page(index + 1, pages.length)],
      nodes: drawRows(rows, sheet),
    }),
  );
}

/** In an order that is not that of the answer, wherever there is another. */
function mixed(pieces: readonly Piece[], random: Random): readonly Piece[] {
  const right = pieces.filter(({ place }) => place !== undefined);
  const shuffled = random.shuffle(pieces);
  const rightMixed = shuffled.filter(({ place }) => place !== undefined);
  if (looks(right) !== looks(rightMixed)) return shuffled;
  const turned = [...rightMixed.slice(1), ...rightMixed.slice(0, 1)];
  return shuffled.map((piece) => (piece.place === undefined ? piece : (turned.shift() ?? piece)));
}

function looks(pieces: readonly Piece[]): string {
  return JSON.stringify(pieces.map(({ figures }) => figures));
}

interface Row {
  /** Of the task, from 1, in the first of its rows. */
  readonly number: number | undefined;
  readonly pieces: readonly Piece[];
  readonly heightMm: number;
}

/** Where pieces may stand; a number of their task stands to the left of them. */
function areaFor({ spec, tasks }: Sheet): Area {
  const area = cutArea(spec.page);
  const aside = tasks.length > 1 ? NUMBER_MM : 0;
  return { ...area, left: area.left + aside, width: area.width - aside };
}

function rowsOf(tasks: readonly (readonly Piece[])[], { width }: Area): readonly Row[] {
  return tasks.flatMap((pieces, index) => {
    const rows: Piece[][] = [];
    let usedMm = 0;
    for (const piece of pieces) {
      const row = rows[rows.length - 1];
      const isFitting = row && usedMm + CUT_GAP_MM + piece.widthMm <= width;
      if (isFitting) row.push(piece);
      else rows.push([piece]);
      usedMm = isFitting ? usedMm + CUT_GAP_MM + piece.widthMm : piece.widthMm;
    }
    return rows.map((row, at) => ({
      number: at === 0 && tasks.length > 1 ? index + 1 : undefined,
      pieces: row,
      heightMm: Math.max(...row.map(({ heightMm }) => heightMm)),
    }));
  });
}

function pagesOf(rows: readonly Row[], heightMm: number): readonly (readonly Row[])[] {
  const pages: Row[][] = [];
  let usedMm = 0;
  for (const row of rows) {
    const page = pages[pages.length - 1];
    const isFitting = page && usedMm + CUT_GAP_MM + row.heightMm <= heightMm;
    if (isFitting) page.push(row);
    else pages.push([row]);
    usedMm = isFitting ? usedMm + CUT_GAP_MM + row.heightMm : row.heightMm;
  }
  return pages;
}

function drawRows(rows: readonly Row[], sheet: Sheet): readonly Group[] {
  const area = areaFor(sheet);
  const edge = printArea(sheet.spec.page.paper, sheet.spec.page.orientation).left;
  let top = area.top;
  return rows.flatMap(({ number, pieces, heightMm }) => {
    let left = area.left;
    const cut = pieces.map((piece) => {
      const place = { left, top, width: piece.widthMm, height: piece.heightMm };
      left += piece.widthMm + CUT_GAP_MM;
      return group('piece', [cutLine(place), standing(piece.drawing, place)]);
    });
    const baseline = top + heightMm / 2 + 0.35 * NUMBER_EM_MM;
    const label =
      number === undefined
        ? []
        : [
            group('piece-number', [
              text(String(number), edge, baseline, NUMBER_EM_MM, { colour: QUIET_INK }),
            ]),
          ];
    top += heightMm + CUT_GAP_MM;
    return [...label, ...cut];
  });
}
