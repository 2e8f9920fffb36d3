// Draws one figure with the room for its response, and the response itself where it is known.
import { type Figure, formOf, isSign, roomIn } from '../../figures/index.ts';
import {
  type Area,
  box,
  centredIn,
  centreOf,
  drawFigure,
  FINE_MM,
  line,
  type PrintStyle,
  type SceneNode,
} from '../../page/index.ts';
import { drawInSpace, drawRing, stickerPlace } from './draw-response.ts';
import { CARD_PAD_MM, type Plan } from './room.ts';
import type { Response } from './task.ts';

/** How all units of a task are drawn. */
export interface Ways {
  readonly plan: Plan;
  readonly figureMm: number;
  readonly style: PrintStyle;
}

/** A sign inside an outline, as a share of the radius of the widest circle in it. */
const SIGN_IN_ROOM = 1.5;

/** Side of a tile, and of the cell of the figure on it, as shares of the figure's size. */
const TILE_SHARE = 0.78;
const TILED_SHARE = 0.72;
const CARD_LINE_MM = 0.5;

/** The unit in its place; without a response, as the child finds it. */
export function drawUnit(
  figure: Figure,
  place: Area,
  ways: Ways,
  response?: Response,
): readonly SceneNode[] {
  if (ways.plan.stand === 'inside') return drawInside(figure, place, ways, response);
  if (ways.plan.stand === 'around') return drawAround(figure, place, ways, response);
  return drawCard(figure, place, ways, response);
}

function drawInside(
  figure: Figure,
  place: Area,
  { figureMm, style }: Ways,
  response?: Response,
): readonly SceneNode[] {
  const { x, y } = centreOf(place);
  const whole = (look: Figure) => drawFigure(look, x, y, figureMm, style);
  switch (response?.kind) {
    case 'colour-in':
      return [whole({ ...figure, colour: response.colour, fill: 'solid' })];
    case 'fill':
      return [whole({ ...figure, fill: response.texture })];
    case 'sign': {
      const spot = roomIn(figure);
      const signMm = SIGN_IN_ROOM * spot.radius * figureMm;
      const sign = drawFigure(
        { form: response.sign },
        x + spot.x * figureMm,
        y + spot.y * figureMm,
        signMm,
        style,
      );
      return [whole(figure), sign];
    }
    default:
      return [whole(figure)];
  }
}

function drawAround(
  figure: Figure,
  place: Area,
  { figureMm, style }: Ways,
  response?: Response,
): readonly SceneNode[] {
  const drawn = isLoose(figure)
    ? drawTile(figure, place, figureMm, style)
    : [drawFigure(figure, centreOf(place).x, centreOf(place).y, figureMm, style)];
  return response?.kind === 'ring' ? [...drawn, drawRing(response, place, style)] : drawn;
}

/** Dots and thin lines, which do not hold together by themselves where they stand in the open. */
function isLoose(figure: Figure): boolean {
  const form = formOf(figure);
  return form === 'dots' || isSign(form);
}

/** A loose figure on a plain tile that still has room inside a ring. */
function drawTile(
  figure: Figure,
  place: Area,
  figureMm: number,
  style: PrintStyle,
): readonly SceneNode[] {
  const sideMm = TILE_SHARE * figureMm;
  const { left, top } = centredIn(place, sideMm);
  const { x, y } = centreOf(place);
  return [
    box(left, top, sideMm, sideMm, { radiusMm: 2, widthMm: CARD_LINE_MM }),
    drawFigure(figure, x, y, TILED_SHARE * figureMm, style),
  ];
}

/** A figure above a line, the space for its response below it, both in one frame. */
function drawCard(
  figure: Figure,
  place: Area,
  { figureMm, plan, style }: Ways,
  response?: Response,
): readonly SceneNode[] {
  const topMm = figureMm + 2 * CARD_PAD_MM;
  const x = place.left + place.width / 2;
  const space: Area = { ...place, top: place.top + topMm, height: place.height - topMm };
  const ruleMm = place.top + topMm;
  return [
    box(place.left, place.top, place.width, place.height, { radiusMm: 2, widthMm: CARD_LINE_MM }),
    line(place.left + CARD_LINE_MM, ruleMm, place.left + place.width - CARD_LINE_MM, ruleMm, {
      widthMm: FINE_MM,
      ends: 'square',
    }),
    drawFigure(figure, x, place.top + topMm / 2, figureMm, style),
    ...(plan.response === 'sticker' ? [stickerPlace(space, plan.stickerMm)] : []),
    ...(response ? [drawInSpace(response, space, plan.stickerMm, style)] : []),
  ];
}
