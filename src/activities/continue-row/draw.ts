// Draws a row with its empty places and what is offered below it; with the answer, the same filled in.
import { rectanglePath } from '../../base/index.ts';
import { type Figure, sameFigure } from '../../figures/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  box,
  centredIn,
  centreOf,
  columnsOf,
  drawFigure,
  FAINT_INK,
  FINE_MM,
  type Group,
  group,
  insetArea,
  marked,
  type PrintStyle,
  QUIET_INK,
  type SceneNode,
  type Shape,
  STRONG_MM,
  stroked,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { areTextures } from '../drawing-deed.ts';
import { ANSWER_LINE_MM, cardPath, emptyCircle, ringPath, stickerCellMm } from '../placing.ts';
import { printedWords } from '../printed-words.ts';
import { markOfEmpty } from './decisions.ts';
import {
  hasSizes,
  type Measures,
  measuresWithin,
  standsOnCards,
  TRAY_PAD_MM,
  traySize,
} from './measures.ts';
import { type Answer, type Printed, responseTo } from './task.ts';

export { room } from './measures.ts';

/** The frame of an empty place is as large as a figure and stronger than a card's. */
const CORNER_SHARE = 0.14;
/** What stands on a card or in a frame, in their sides; where sizes differ, hardly smaller than in the row. */
const INSIDE_SHARE = 0.86;
const SIZED_INSIDE_SHARE = 0.95;
const TRAY_CORNER_MM = 4;

/** How every place of a task is drawn. */
export interface Ways {
  readonly printed: Printed;
  readonly measures: Measures;
  readonly style: PrintStyle;
  readonly hasCards: boolean;
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const measures = measuresWithin(printed, size);
  const ways = { printed, measures, style, hasCards: standsOnCards(printed) };
  const { places, tray, offered } = areasOf(printed, measures, size);
  const empty = places.filter((_, place) => printed.row[place] === null);
  const row = places.map((place, at) => {
    const figure = printed.row[at] ?? null;
    if (figure) return drawPlaced(figure, place, ways);
    const mark = markOfEmpty(printed, empty.indexOf(place));
    const drawn = printed.offered ? drawEmpty(place, ways) : asPlace(drawEmpty(place, ways));
    return mark === undefined ? drawn : marked(drawn, mark);
  });
  const choices = (printed.offered ?? []).flatMap((figure, at) => {
    const place = offered[at];
    return place ? [marked(drawPlaced(figure, place, ways), at)] : [];
  });
  return group('task', [
    // A row keeps the direction in which it is read. Where it is filled in itself, it is read before the hand is there.
    tray ? asModel(group('row', row)) : group('row', row),
    ...(tray ? [asPlace(group('offered', [drawTray(tray), ...choices]))] : []),
    ...(answer ? [drawAnswer(answer, empty, offered, ways)] : []),
  ]);
}

/** Where the places of the row stand in a task of this size. */
export function placesOf(printed: Printed, measures: Measures, size: Size): readonly Area[] {
  return areasOf(printed, measures, size).places;
}

interface Areas {
  readonly places: readonly Area[];
  readonly tray?: Area;
  readonly offered: readonly Area[];
}

/** The row in the middle of the width, the tray below it, both together in the middle of the height. */
function areasOf({ row, offered }: Printed, measures: Measures, size: Size): Areas {
  const { cellMm, gapMm, offeredGapMm, belowMm } = measures;
  const traySizeMm = traySize(offered?.length ?? 0, measures);
  const heightMm = cellMm + (offered ? belowMm + traySizeMm.heightMm : 0);
  const top = (size.heightMm - heightMm) / 2;
  const widthMm = row.length * (cellMm + gapMm) - gapMm;
  const left = (size.widthMm - widthMm) / 2;
  const places = columnsOf(row.length, { left, top, width: widthMm, height: cellMm }, gapMm);
  if (!offered) return { places, offered: [] };
  const tray = {
    left: (size.widthMm - traySizeMm.widthMm) / 2,
    top: top + cellMm + belowMm,
    width: traySizeMm.widthMm,
    height: traySizeMm.heightMm,
  };
  const inside = insetArea(tray, TRAY_PAD_MM);
  return { places, tray, offered: columnsOf(offered.length, inside, offeredGapMm) };
}

/** A faint frame, so that what is offered is one group and no second row. */
function drawTray({ left, top, width, height }: Area): Shape {
  const path = rectanglePath(left, top, width, height, TRAY_CORNER_MM);
  return stroked(path, { colour: FAINT_INK, widthMm: FINE_MM });
}

function drawPlaced(figure: Figure, place: Area, { hasCards, ...ways }: Ways): Group {
  const { x, y } = centreOf(place);
  const { cellMm } = ways.measures;
  if (hasCards) {
    const card = stroked(cardPath(place), { colour: FAINT_INK, widthMm: FINE_MM });
    return group('place', [card, drawFigure(figure, x, y, INSIDE_SHARE * cellMm, ways.style)]);
  }
  return group('place', [drawFigure(figure, x, y, cellFor(figure, ways), ways.style)]);
}

/** The cell in which a dot that takes a sticker comes out at the sticker's diameter, its line included. */
function cellFor(
  figure: Figure,
  { printed, measures }: Pick<Ways, 'printed' | 'measures'>,
): number {
  const { stickerMm } = printed;
  return stickerMm === undefined ? measures.cellMm : stickerCellMm(figure, stickerMm);
}

/** A circle for a sticker, an outline to colour or fill in, else a frame to draw in or think of. */
function drawEmpty(place: Area, ways: Ways): Group {
  const { printed, measures, style } = ways;
  const { x, y } = centreOf(place);
  const words = printedWords(style.language);
  if (responseTo(printed) === 'sticker') {
    const circle = emptyCircle({ x, y }, printed.stickerMm ?? measures.cellMm);
    return group('empty', [circle], words.emptyForSticker);
  }
  const bare = bareOutline(printed);
  if (bare)
    return group('empty', [drawFigure(bare, x, y, measures.cellMm, style)], words.emptyOutline);
  return group('empty', [emptyFrame(place)], words.emptyPlace);
}

function emptyFrame({ left, top, width, height }: Area): SceneNode {
  return box(left, top, width, height, { radiusMm: CORNER_SHARE * width, widthMm: STRONG_MM });
}

/** The outline that all figures share, where only what is in it is asked for. */
function bareOutline(printed: Printed): Figure | undefined {
  const response = responseTo(printed);
  const figures = printed.row.filter((figure) => figure !== null);
  const isFilledIn = response === 'colour-in' || (response === 'draw' && areTextures(figures));
  const [first] = figures;
  return isFilledIn && first ? { ...first, colour: undefined, fill: 'outline' } : undefined;
}

/** What belongs into the empty places; what is to be ringed is ringed too. */
function drawAnswer(
  { figures }: Answer,
  empty: readonly Area[],
  offered: readonly Area[],
  ways: Ways,
): Group {
  const filled = empty.flatMap((place, at) => {
    const figure = figures[at];
    return figure ? [drawFilled(figure, place, ways)] : [];
  });
  const rings = offered.flatMap((place, at) => {
    const choice = ways.printed.offered?.[at];
    const isRight = choice && figures.some((figure) => sameFigure(figure, choice));
    return isRight
      ? [stroked(ringPath(place), { colour: QUIET_INK, widthMm: ANSWER_LINE_MM })]
      : [];
  });
  return group('answer', [...filled, ...rings]);
}

/** The cell of what belongs into an empty place; in a frame a figure stands clear of its line. */
export function filledSideMm(figure: Figure, ways: Ways): number {
  const isFramed = responseTo(ways.printed) !== 'sticker' && !bareOutline(ways.printed);
  const share = hasSizes(ways.printed) ? SIZED_INSIDE_SHARE : INSIDE_SHARE;
  return isFramed ? share * ways.measures.cellMm : cellFor(figure, ways);
}

/** A sticker or a colour fills the whole place. */
function drawFilled(figure: Figure, place: Area, ways: Ways): Group {
  const sideMm = filledSideMm(figure, ways);
  const { x, y } = centreOf(centredIn(place, sideMm));
  return drawFigure(figure, x, y, sideMm, ways.style);
}
