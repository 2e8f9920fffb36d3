// Pages of pieces to cut out and stick into the empty places of a sheet, mixed, those of each task together.
import { activityOf, type Language, type Piece } from '../activities/index.ts';
import { type Random, randomFrom, scaleBy } from '../base/index.ts';
import { type Area, type Group, group, type Page, QUIET_INK, text } from '../page/index.ts';
import { cutArea, cutLine, cutPage, SPARE_MM, standing } from './cut-page.ts';
import { type PlacedItem, placedInRows } from './cut-rows.ts';
import { pageWords } from './page-catalogue.ts';
import { needFeet, pieceFoot } from './piece-foot.ts';
import { placedTasks } from './placed-tasks.ts';
import type { Sheet } from './sheet.ts';
import { styleOf } from './sheet-spec.ts';

/** Left of the pieces, for the number of their task, in mm. */
const NUMBER_MM = 5;
const NUMBER_EM_MM = 3.6;

/** The pieces of each task, in the order of the answer, those that belong nowhere last; none: an empty list for it. */
export function piecesOf(sheet: Sheet, language: Language = 'en'): readonly (readonly Piece[])[] {
  const { spec } = sheet;
  return placedTasks(sheet, language).map(({ task, size, times }) =>
    activityOf(spec.activity)
      .pieces(task, size, styleOf(spec, language))
      .map((piece) => (times === 1 ? piece : enlarged(piece, times))),
  );
}

/** As much larger as its place on the sheet. */
function enlarged({ place, ...piece }: Piece, times: number): Piece {
  return {
    ...piece,
    widthMm: times * piece.widthMm,
    heightMm: times * piece.heightMm,
    drawing: { ...group('piece-drawing', [piece.drawing]), transform: scaleBy(times) },
    ...(place && {
      place: {
        left: times * place.left,
        top: times * place.top,
        width: times * place.width,
        height: times * place.height,
      },
    }),
  };
}

/** Whether any figure of the answers goes into an empty place. */
export function hasPieces(sheet: Sheet): boolean {
  return piecesOf(sheet).some((pieces) => pieces.length > 0);
}

/** Always the same pages for a sheet; none where it has no pieces. */
export function piecePages(sheet: Sheet, language: Language = 'en'): readonly Page[] {
  const random = randomFrom(sheet.spec.seed).fork();
  const tasks = piecesOf(sheet, language).map((pieces) => mixed(pieces, random.fork()));
  const pages = placedInRows(tasks, areaFor(sheet));
  const words = pageWords(language).cut;
  return pages.map((placed, index) =>
    cutPage({
      language,
      page: sheet.spec.page,
      title: words.piecesTitle(sheet.code),
      foot: [words.pieces(sheet.code), words.page(index + 1, pages.length)],
      nodes: placed.flatMap((each) =>
        drawPiece(each, tasks.length > 1, needFeet(tasks[each.list] ?? [])),
      ),
    }),
  );
}

/** A number stands beside the first piece of each task, where there are several. */
function drawPiece(
  { item, list, isFirst, place }: PlacedItem<Piece>,
  isNumbered: boolean,
  hasFoot: boolean,
): readonly Group[] {
  const piece = group('piece', [
    cutLine(place),
    standing(item.drawing, place),
    ...(hasFoot ? [pieceFoot(place)] : []),
  ]);
  if (!isNumbered || !isFirst) return [piece];
  const baseline = place.top + place.height / 2 + 0.35 * NUMBER_EM_MM;
  const style = { colour: QUIET_INK, anchor: 'end' } as const;
  const number = text(String(list + 1), place.left - SPARE_MM, baseline, NUMBER_EM_MM, style);
  return [group('piece-number', [number]), piece];
}

/** Where pieces may stand; the number of their task stands to the left of them. */
function areaFor({ spec, tasks }: Sheet): Area {
  const area = cutArea(spec.page);
  const aside = tasks.length > 1 ? NUMBER_MM : 0;
  return { ...area, left: area.left + aside, width: area.width - aside };
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
