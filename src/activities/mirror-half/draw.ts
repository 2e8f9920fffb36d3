// Draws a task: the given part, the mirror line, the empty rest, and below it the halves to choose from.
import { type Figure, formOf } from '../../figures/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  box,
  centreOf,
  drawFigure,
  FAINT_INK,
  FINE_MM,
  type Group,
  group,
  INK,
  insetArea,
  kept,
  line,
  OUTLINE_MM,
  type PrintStyle,
  QUIET_INK,
  type SceneNode,
  stroked,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { ANSWER_LINE_MM, drawInCell, emptyCircle, ringPath, stickerCellMm } from '../placing.ts';
import {
  BEYOND_MM,
  cellKind,
  FRAME_MM,
  leastSize,
  type PagePlan,
  planPage,
  TO_LINE_MM,
  USUAL_STICKER_MM,
} from './measures.ts';
import { type Answer, type Cells, type Printed, responseTo } from './task.ts';

/** The mirror line: the thickest line of the page, so that it is no frame. */
const MIRROR_MM = 1.6;
/** What stands in a cell, in its sides. */
const INSIDE_SHARE = 0.84;
const DOT_SHARE = 0.78;
const CORNER_MM = 2.5;

export interface Look {
  readonly printed: Printed;
  readonly plan: PagePlan;
  readonly style: PrintStyle;
}

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size);
  const look = { printed, plan, style };
  const empty: Cells = printed.part.cells.map(() => null);
  const parts = plan.parts.map((area, index) => {
    if (index === plan.given) return asModel(drawPart('given', area, printed.part.cells, look));
    const missing = drawPart('missing', area, empty, look);
    return printed.offered ? missing : asPlace(missing);
  });
  const offered = plan.offered.map((area, index) => {
    const piece = drawPart('offered', area, printed.offered?.[index]?.cells ?? empty, look);
    const half = { ...piece, children: [...piece.children, drawEdge(area, printed)] };
    return asPlace(kept(half, centreOf(withEdge(area, printed)).x));
  });
  const key = answer ? [group('answer', drawAnswer(answer, look))] : [];
  const picture = [...parts, group('mirror', drawLines(plan, printed))];
  // The picture is one figure, whichever way a page is read; halves to choose from are places.
  const keptInMiddle = (each: Group) => kept(each, size.widthMm / 2);
  return group('task', [
    ...picture.map(keptInMiddle),
    ...offered,
    ...(printed.offered ? key : key.map(keptInMiddle)),
  ]);
}

/** The lines run in the middle between the frames and reach beyond them. */
function drawLines({ parts }: PagePlan, { axis }: Printed): readonly SceneNode[] {
  const [first, last] = [parts[0], parts.at(-1)];
  if (!first || !last) return [];
  const stroke = { colour: INK, widthMm: MIRROR_MM };
  const [right, bottom] = [last.left + last.width, last.top + last.height];
  const x = first.left + first.width + TO_LINE_MM;
  const y = first.top + first.height + TO_LINE_MM;
  const upright = line(x, first.top - BEYOND_MM + 1, x, bottom + BEYOND_MM - 1, stroke);
  const level = line(first.left - BEYOND_MM + 1, y, right + BEYOND_MM - 1, y, stroke);
  return [...(axis === 'level' ? [] : [upright]), ...(axis === 'upright' ? [] : [level])];
}

/** The mirror line again, on the side of an offered half that would lie at it. */
function drawEdge({ left, top, width, height }: Area, { axis, given }: Printed): SceneNode {
  const stroke = { colour: INK, widthMm: MIRROR_MM };
  const isBefore = isGivenFirst({ axis, given });
  if (axis === 'level') {
    const y = isBefore ? top - TO_LINE_MM : top + height + TO_LINE_MM;
    return line(left, y, left + width, y, stroke);
  }
  const x = isBefore ? left - TO_LINE_MM : left + width + TO_LINE_MM;
  return line(x, top, x, top + height, stroke);
}

/** Whether the given half lies before the line, so that the other one begins at it. */
function isGivenFirst({ axis, given = 'first' }: Pick<Printed, 'axis' | 'given'>): boolean {
  return axis === 'level' ? given !== 'second' : given === 'first';
}

/** An offered half together with the mirror line at its side. */
function withEdge(area: Area, { axis, given }: Printed): Area {
  const reachMm = TO_LINE_MM + MIRROR_MM / 2;
  const isBefore = isGivenFirst({ axis, given });
  const [left, top] = [area.left - (isBefore ? reachMm : 0), area.top - (isBefore ? reachMm : 0)];
  return axis === 'level'
    ? { ...area, top, height: area.height + reachMm }
    : { ...area, left, width: area.width + reachMm };
}

function drawPart(role: string, area: Area, cells: Cells, look: Look): Group {
  const { left, top, width, height } = area;
  const radiusMm = cellKind(look.printed) === 'dots' ? CORNER_MM : 0;
  const frame = box(left, top, width, height, { radiusMm, widthMm: FRAME_MM });
  return group(role, [frame, ...drawGuides(area, cells, look), ...drawCells(area, cells, look)]);
}

/** Faint circles where dots can go, else the lines between cells. */
export function drawGuides(area: Area, cells: Cells, look: Look): readonly SceneNode[] {
  const { rows, columns } = look.printed.part;
  if (cellKind(look.printed) === 'dots') {
    return cells.flatMap((figure, place) => {
      if (figure) return [];
      return [emptyCircle(centreOf(cellIn(area, place, look)), dotMm(look))];
    });
  }
  const thin = { colour: FAINT_INK, widthMm: FINE_MM };
  const inside = insetArea(area, FRAME_MM);
  const { cellMm } = look.plan;
  const [right, bottom] = [inside.left + inside.width, inside.top + inside.height];
  const upright = Array.from({ length: columns - 1 }, (_, index) => {
    const x = area.left + FRAME_MM / 2 + (index + 1) * cellMm;
    return line(x, inside.top, x, bottom, thin);
  });
  const level = Array.from({ length: rows - 1 }, (_, index) => {
    const y = area.top + FRAME_MM / 2 + (index + 1) * cellMm;
    return line(inside.left, y, right, y, thin);
  });
  return [...upright, ...level];
}

export function drawCells(area: Area, cells: Cells, look: Look): readonly SceneNode[] {
  return cells.flatMap((figure, place) =>
    figure ? drawPlaced(figure, cellIn(area, place, look), look) : [],
  );
}

function drawPlaced(figure: Figure, cell: Area, look: Look): readonly SceneNode[] {
  const [x, y] = [cell.left + cell.width / 2, cell.top + cell.height / 2];
  const side = figureSideMm(figure, look);
  if (cellKind(look.printed) === 'figures') {
    return drawInCell(
      figure,
      { left: x - side / 2, top: y - side / 2, width: side, height: side },
      look.style,
    );
  }
  return [drawFigure(figure, x, y, side, look.style)];
}

/** The side of the cell that a figure is drawn in. */
export function figureSideMm(figure: Figure, look: Look): number {
  const { cellMm } = look.plan;
  const kind = cellKind(look.printed);
  if (kind === 'figures') return INSIDE_SHARE * cellMm;
  const widthMm = kind === 'dots' ? dotMm(look) : cellMm + OUTLINE_MM;
  return stickerCellMm({ form: formOf(figure) }, widthMm);
}

function dotMm({ printed, plan }: Look): number {
  const isTrue = responseTo(printed) === 'sticker';
  return isTrue ? (printed.stickerMm ?? USUAL_STICKER_MM) : DOT_SHARE * plan.cellMm;
}

export function cellIn({ left, top }: Area, place: number, { printed, plan }: Look): Area {
  const { columns } = printed.part;
  const { cellMm, padMm } = plan;
  const edge = padMm + FRAME_MM / 2;
  const [row, column] = [Math.floor(place / columns), place % columns];
  return {
    left: left + edge + column * cellMm,
    top: top + edge + row * cellMm,
    width: cellMm,
    height: cellMm,
  };
}

/** What belongs into the empty parts, or a ring round the half that finishes the picture. */
function drawAnswer(answer: Answer, look: Look): readonly SceneNode[] {
  const { plan, printed } = look;
  if ('choice' in answer) {
    const area = plan.offered[answer.choice];
    const stroke = { colour: QUIET_INK, widthMm: ANSWER_LINE_MM };
    return area ? [stroked(ringPath(withEdge(area, printed)), stroke)] : [];
  }
  return missingParts(answer.cells, look).flatMap(({ area, cells }) =>
    drawCells(area, cells, look),
  );
}

/** Each part that is empty on paper, with what the whole finished picture holds there. */
export function missingParts(
  whole: Cells,
  { plan, printed }: Pick<Look, 'plan' | 'printed'>,
): readonly { readonly area: Area; readonly cells: Cells }[] {
  const { rows, columns } = printed.part;
  const across = printed.axis === 'level' ? 1 : 2;
  return plan.parts.flatMap((area, index) => {
    if (index === plan.given) return [];
    const [down, right] = [Math.floor(index / across), index % across];
    const cells = printed.part.cells.map((_, place) => {
      const row = down * rows + Math.floor(place / columns);
      const column = right * columns + (place % columns);
      return whole[row * across * columns + column] ?? null;
    });
    return [{ area, cells }];
  });
}
