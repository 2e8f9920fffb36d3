// Draws the figures to use, the grid with its empty cells, and pieces to cut out; with the answer, the full grid.
import { rectanglePath } from '../../base/index.ts';
import type { Figure } from '../../figures/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  centredIn,
  centreOf,
  drawFigure,
  FAINT_INK,
  FINE_MM,
  type Group,
  group,
  LINE_MM,
  line,
  type PrintStyle,
  type SceneNode,
  STRONG_MM,
  stroked,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { dashedEdges } from '../dashes.ts';
import { areTextures } from '../drawing-deed.ts';
import { drawInCell, emptyCircle, sideInCard, stickerCellMm } from '../placing.ts';
import { printedWords } from '../printed-words.ts';
import { leastSize, type PagePlan, planPage } from './page-plan.ts';
import type { Answer, Printed } from './task.ts';

const TRAY_CORNER_MM = 4;
const BLOCK_MM = 1.6;
const BLOCK_SIDE = 2;

/** How every figure of a task is drawn. */
interface Ways {
  readonly printed: Printed;
  readonly plan: PagePlan;
  readonly style: PrintStyle;
}

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size);
  const ways = { printed, plan, style };
  const cells = printed.rows.flat();
  const standing = cells.flatMap((figure, place) => {
    const cell = plan.cells[place];
    if (!cell) return [];
    return figure ? [group('given', [drawInGrid(figure, cell, ways)])] : drawEmpty(cell, ways);
  });
  return group('task', [
    asModel(drawTray(ways)),
    asPlace(group('grid', [...standing, ...gridLines(printed, plan)])),
    ...drawPieces(ways),
    ...(answer ? [drawAnswer(answer, ways)] : []),
  ]);
}

/** A faint frame, so that the figures to use are one group and no row of the grid. */
function drawTray({ printed, plan, style }: Ways): Group {
  const { left, top, width, height } = plan.tray;
  const frame = rectanglePath(left, top, width, height, TRAY_CORNER_MM);
  const figures = printed.figures.flatMap((figure, place) => {
    const cell = plan.figures[place];
    if (!cell) return [];
    return drawInCell(figure, centredIn(cell, sideOf(figure, printed, plan)), style);
  });
  return group('tray', [stroked(frame, { colour: FAINT_INK, widthMm: FINE_MM }), ...figures]);
}

/** A dot that takes a sticker comes out at the sticker's diameter. */
function sideOf(figure: Figure, { stickerMm }: Printed, { figureMm }: PagePlan): number {
  return stickerMm === undefined ? figureMm : stickerCellMm(figure, stickerMm);
}

/** Side in mm of a figure that stands in the grid, whose cells are the cards of dots; as large as in the tray. */
export function sideInGrid(figure: Figure, printed: Printed, plan: PagePlan): number {
  return sideInCard(figure, sideOf(figure, printed, plan));
}

function drawInGrid(figure: Figure, cell: Area, { printed, plan, style }: Ways): Group {
  const { x, y } = centreOf(cell);
  return drawFigure(figure, x, y, sideInGrid(figure, printed, plan), style);
}

/** A circle for a sticker or counter, an outline to colour or fill in, else nothing: the cell is the place. */
function drawEmpty(cell: Area, ways: Ways): readonly Group[] {
  const { response, figures, stickerMm } = ways.printed;
  const words = printedWords(ways.style.language);
  if (response === 'sticker' || response === 'counters') {
    const diameter = stickerMm ?? ways.plan.figureMm;
    const circle = emptyCircle(centreOf(cell), diameter);
    return [group('empty', [circle], words.emptyCircle)];
  }
  const isFilledIn = response === 'colour-in' || (response === 'draw' && areTextures(figures));
  const [first] = figures;
  if (!isFilledIn || !first) return [];
  const bare: Figure = { ...first, colour: undefined, fill: 'outline' };
  return [group('empty', [drawInGrid(bare, cell, ways)], words.emptyOutline)];
}

/** Strong lines all round, lighter ones inside; with blocks, thick ones between them. */
function gridLines({ boxes = false, rows }: Printed, { grid }: PagePlan): readonly SceneNode[] {
  const { left, top, width, height } = grid;
  const side = width / rows.length;
  const [right, bottom] = [left + width, top + height];
  const inner = rows.slice(1).flatMap((_, index) => {
    const at = (index + 1) * side;
    const isBlock = boxes && (index + 1) % BLOCK_SIDE === 0;
    const stroke = { widthMm: isBlock ? BLOCK_MM : boxes ? FINE_MM : LINE_MM };
    return [
      line(left + at, top, left + at, bottom, stroke),
      line(left, top + at, right, top + at, stroke),
    ];
  });
  const around = stroked(rectanglePath(left, top, width, height, 0), {
    widthMm: boxes ? BLOCK_MM : STRONG_MM,
  });
  return [...inner, around];
}

function drawPieces(ways: Ways): readonly Group[] {
  const { pieces = [] } = ways.printed;
  return pieces.flatMap((figure, place) => {
    const area = ways.plan.pieces[place];
    if (!area) return [];
    const edge = { colour: FAINT_INK, widthMm: FINE_MM };
    return [
      group('piece', [
        ...dashedEdges(area).map((path) => stroked(path, edge)),
        drawInGrid(figure, area, ways),
      ]),
    ];
  });
}

function drawAnswer({ figures }: Answer, ways: Ways): Group {
  const empty = ways.plan.cells.filter((_, place) => ways.printed.rows.flat()[place] === null);
  const filled = empty.flatMap((cell, place) => {
    const figure = figures[place];
    return figure ? [drawInGrid(figure, cell, ways)] : [];
  });
  return group('answer', filled);
}
