// Draws a response by itself: a ring round a figure, or what goes into the space below one.
import {
  circlePath,
  moveBy,
  type Path,
  type Point,
  rectanglePath,
  transformPath,
} from '../../base/index.ts';
import { CAP_HEIGHT_EM, type Texture, texturePath } from '../../figures/index.ts';
import {
  type Area,
  centreOf,
  drawFigure,
  FAINT_INK,
  FINE_MM,
  filled,
  type Group,
  group,
  INK,
  insetArea,
  type Paint,
  type PrintStyle,
  type SceneNode,
  showing,
  stroked,
  text,
  WHITE,
} from '../../page/index.ts';
import { type ColourName, contrastOf, greyOf, hexOf, initialOf } from '../../palette/index.ts';
import { STICKER_SPARE_MM } from './room.ts';
import type { Response } from './task.ts';
import { responseName } from './words.ts';

/** A ring as thick as a crayon's line, edged with ink so that yellow shows on white; widths in mm. */
export const RING_WIDTH_MM = 1.8;
const RING_EDGE_MM = 0.35;
/** Side of a sign as a share of its space. */
const SIGN_SHARE = 0.72;
/** The mark of a colour in grey print: its em in mm, and beside a ring as a share of the ring. By eye. */
const MARK_EM_MM = 5;
const LEAST_MARK_EM_MM = 3.2;
const MARK_SHARE = 0.13;
/** Height of the middle of its capitals above the lowest that any letter reaches, in ems. */
const MARK_MIDDLE_EM = 0.3 + CAP_HEIGHT_EM / 2;
/** A dashed line is the sticker's to cover. */
const DASH_MM = [1.6, 1.4] as const;

/** A ring that just fits the place. */
export function drawRing(
  response: Extract<Response, { kind: 'ring' }>,
  { left, top, width, height }: Area,
  style: PrintStyle,
): Group {
  const { x, y } = centreOf({ left, top, width, height });
  const path = circlePath(x, y, width / 2 - RING_WIDTH_MM / 2);
  const colour = paintOf(response.colour, style);
  const ring = [
    stroked(path, { widthMm: RING_WIDTH_MM }),
    stroked(path, { colour, widthMm: RING_WIDTH_MM - 2 * RING_EDGE_MM }),
  ];
  const emMm = Math.min(MARK_EM_MM, Math.max(LEAST_MARK_EM_MM, MARK_SHARE * width));
  const corner = { x: left + width, y: top + height - MARK_MIDDLE_EM * emMm };
  const mark = drawMark(response.colour, corner, emMm, style, { ground: WHITE, anchor: 'end' });
  return group('response', [...ring, ...mark], responseName(response));
}

/** The dashed circle that a sticker goes into. */
export function stickerPlace(space: Area, stickerMm: number): SceneNode {
  const { x, y } = centreOf(space);
  const path = circlePath(x, y, (stickerMm + STICKER_SPARE_MM - FINE_MM) / 2);
  return stroked(path, { colour: FAINT_INK, widthMm: FINE_MM, dashMm: DASH_MM });
}

/** What a child leaves in the space below a figure. */
export function drawInSpace(
  response: Response,
  space: Area,
  stickerMm: number,
  style: PrintStyle,
): SceneNode {
  const { x, y } = centreOf(space);
  const inner = insetArea(space, 1);
  switch (response.kind) {
    case 'sign': {
      const signMm = SIGN_SHARE * Math.min(space.width, space.height);
      return drawFigure({ form: response.sign }, x, y, signMm, style);
    }
    case 'fill':
      return group('response', [textured(response.texture, inner)], responseName(response));
    case 'sticker':
      return coloured(response, circlePath(x, y, stickerMm / 2), space, style);
    default: {
      const patch = rectanglePath(inner.left, inner.top, inner.width, inner.height, 1);
      return coloured(response, patch, space, style);
    }
  }
}

function coloured(
  response: Extract<Response, { colour: ColourName }>,
  path: Path,
  space: Area,
  style: PrintStyle,
): Group {
  const { x, y } = centreOf(space);
  const paint = paintOf(response.colour, style);
  const patch = filled(path, paint, { colour: INK, widthMm: FINE_MM });
  const place = { ground: paint, anchor: 'middle' } as const;
  const mark = drawMark(response.colour, { x, y }, MARK_EM_MM, style, place);
  const drawn = group('response', [patch, ...mark], responseName(response));
  return response.kind === 'sticker'
    ? showing(drawn, { form: 'circle', colour: response.colour })
    : drawn;
}

function textured(texture: Texture, { left, top, width, height }: Area): Group {
  const marks = texturePath(texture, width, height);
  const path = transformPath(marks.path, moveBy(left, top));
  const drawn = 'filled' in marks ? filled(path, INK) : stroked(path, { widthMm: marks.widthMm });
  return { ...group('texture', [drawn]), clip: rectanglePath(left, top, width, height, 1) };
}

function paintOf(colour: ColourName, { print }: PrintStyle): Paint {
  return print === 'grey' ? greyOf(colour) : hexOf(colour);
}

/** In grey print the letters of a colour, their middle at the height of `at`, dark on light and light on dark. */
function drawMark(
  colour: ColourName,
  at: Point,
  emMm: number,
  { print }: PrintStyle,
  { ground, anchor }: { readonly ground: Paint; readonly anchor: 'middle' | 'end' },
): readonly SceneNode[] {
  if (print === 'colour') return [];
  const ink = contrastOf(ground, WHITE) > contrastOf(ground, INK) ? WHITE : INK;
  const baselineMm = at.y + (CAP_HEIGHT_EM * emMm) / 2;
  return [text(initialOf(colour), at.x, baselineMm, emMm, { weight: 'bold', anchor, colour: ink })];
}
