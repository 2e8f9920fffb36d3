// One figure on the page: its outline filled, textured or drawn, and in grey print the mark of its colour.
import { compose, moveBy, type Path, scaleBy, transformPath } from '../base/index.ts';
import {
  type Figure,
  type Fill,
  type FormId,
  figureName,
  formOf,
  isLetter,
  isNumeral,
  isOwnColoured,
  isPicture,
  isShape,
  type Outline,
  outlineOf,
  paintOf,
  type Texture,
  texturePath,
} from '../figures/index.ts';
import { greyOf, hexOf } from '../palette/index.ts';
import { drawMark, markSpot } from './colour-mark.ts';
import { INK, inkOn, WHITE } from './ink.ts';
import { kept } from './mirror.ts';
import { filled, group, showing, stroked, traced } from './nodes.ts';
import { drawPicture } from './picture-drawing.ts';
import type { PrintStyle } from './print-style.ts';
import type { Group, Paint, SceneNode, Stroke } from './scene.ts';

/** Width in mm of the ink line round a shape. */
export const OUTLINE_MM = 0.6;

/** Width in mm of the ink line round letters and signs, which need the room for their colour. */
export const THIN_OUTLINE_MM = 0.4;

/** Width in mm of the ink line round dots, which must stay apart in a row. */
export const DOT_OUTLINE_MM = 0.3;

/** Width in mm of the coloured band inside a figure that is outlined in a colour. */
const BAND_MM = 1.4;

/**
 * To save ink, the line of a figure in cell sides, and the most of it in mm: widest where it alone shows a colour; in
 * grey print it leaves the room to the mark.
 */
const SAVING = {
  colour: { share: 0.12, mostMm: 2.2 },
  grey: { share: 0.06, mostMm: 1.2 },
  ink: { share: 0.07, mostMm: 1.4 },
};
const SAVING_EDGE_MM = 0.3;

/** The side of a figure is at least so many times as long as the line round it is wide, however small it is printed. */
const LEAST_SIDE_IN_EDGES = 6;

/** Where a figure stands: the middle and the side of its cell, in mm. */
interface Cell {
  readonly x: number;
  readonly y: number;
  readonly side: number;
}

/** What a figure is inked in: its colour and fill, and the line round it. */
interface Look {
  /** Without one, ink. */
  readonly colour: Paint | undefined;
  readonly fill: Fill;
  readonly edge: Stroke;
  /** Of the coloured band of an outline, in mm. */
  readonly bandMm: number;
}

/**
 * A figure in a square cell of side `cellMm` about (`xMm`, `yMm`); all ink lies inside the cell. In grey
 * print a coloured figure is filled with the grey of its colour and carries the colour's mark: inside
 * where the form has room, else in the lower right corner of the cell.
 */
export function drawFigure(
  figure: Figure,
  xMm: number,
  yMm: number,
  cellMm: number,
  style: PrintStyle,
): Group {
  return kept(traced(figure, drawLook(figure, xMm, yMm, cellMm, style)), xMm);
}

function drawLook(
  figure: Figure,
  xMm: number,
  yMm: number,
  cellMm: number,
  style: PrintStyle,
): Group {
  const cell = { x: xMm, y: yMm, side: cellMm };
  const look = lookOf(figure, cellMm, style);
  const drawn = (nodes: readonly SceneNode[]) =>
    showing(group('figure', nodes, figureName(figure, style.language)), figure);
  if (isOwnColoured(figure)) {
    const side = cellMm * (figure.size ?? 1);
    const edge = edgeWithin(look.edge, side);
    return drawn(drawPicture(figure, xMm, yMm, side, edge, style));
  }
  if (style.print === 'colour' || figure.colour === undefined) {
    return drawn(drawBody(figure, cell, look));
  }
  const hasBand = look.fill === 'outline' && look.colour !== undefined;
  const spot = markSpot(figure, cellMm, hasBand ? look.bandMm : look.edge.widthMm);
  const body = {
    x: xMm + spot.bodyShift * cellMm,
    y: yMm + spot.bodyShift * cellMm,
    side: spot.bodyShare * cellMm,
  };
  const ground = spot.inside ? groundOf(look) : WHITE;
  const isOnTexture = spot.inside && look.fill !== 'solid' && look.fill !== 'outline';
  const mark = drawMark(figure.colour, xMm + spot.x, yMm + spot.y, spot.capMm, ground, isOnTexture);
  return drawn([...drawBody(figure, body, look), mark]);
}

function lookOf(figure: Figure, cellMm: number, { print, ink }: PrintStyle): Look {
  const { fill } = paintOf(figure);
  const { colour } = figure;
  const widthMm = edgeMmOf(formOf(figure));
  const printed = colour && (print === 'grey' ? greyOf(colour) : hexOf(colour));
  const look = {
    colour: colour === 'white' ? undefined : printed,
    fill,
    edge: { colour: colour === 'black' && printed ? printed : INK, widthMm },
    bandMm: BAND_MM,
  };
  return ink === 'saving' && fill === 'solid' && hasArea(figure)
    ? savingLook(look, cellMm, print)
    : look;
}

/** Letters, numerals and signs are lines already; a quantity keeps the area of its dots. */
function hasArea(figure: Figure): boolean {
  const form = formOf(figure);
  return isShape(form) || isPicture(form);
}

/** Only the line of a filled figure: its colour between a fine edge and the white inside, or ink. */
function savingLook(look: Look, cellMm: number, print: PrintStyle['print']): Look {
  const isInk = look.colour === undefined;
  const { share, mostMm } = SAVING[isInk ? 'ink' : print];
  const lineMm = Math.min(mostMm, share * cellMm);
  const edge = { ...look.edge, widthMm: isInk ? lineMm : SAVING_EDGE_MM };
  return { ...look, fill: 'outline', edge, bandMm: lineMm };
}

function edgeMmOf(form: FormId): number {
  if (form === 'dots') return DOT_OUTLINE_MM;
  return isShape(form) ? OUTLINE_MM : THIN_OUTLINE_MM;
}

/** The outline at `size` of the cell, the line round it included. */
function drawBody(figure: Figure, cell: Cell, look: Look): readonly SceneNode[] {
  const outline = outlineOf({ ...figure, size: 1 });
  const side = cell.side * (figure.size ?? 1);
  if (outline.drawn) {
    return drawLine(placed(outline, cell, side), outline.drawn.widthShare * side, look);
  }
  const isBare = look.fill === 'solid' && look.colour === undefined;
  if (isBare) return [filled(placed(outline, cell, side), INK)];
  const edge = edgeWithin(look.edge, side);
  const form = formOf(figure);
  return isLetter(form) || isNumeral(form) || isPicture(form)
    ? drawUnderlaid(placed(outline, cell, side - 2 * edge.widthMm), cell, look, edge)
    : drawEdged(placed(outline, cell, side - edge.widthMm), cell, look, edge);
}

function edgeWithin(edge: Stroke, sideMm: number): Stroke {
  return { ...edge, widthMm: Math.min(edge.widthMm, sideMm / LEAST_SIDE_IN_EDGES) };
}

/** The outline about the middle of the cell, its own cell `sideMm` long. */
function placed(outline: Outline, { x, y }: Cell, sideMm: number): Path {
  return transformPath(outline.path, compose(moveBy(x, y), scaleBy(sideMm)));
}

/** A line in ink, or in a colour between two thin ink lines. */
function drawLine(path: Path, widthMm: number, { colour, edge }: Look): readonly SceneNode[] {
  const ink = stroked(path, { colour: edge.colour, widthMm });
  if (colour === undefined) return [ink];
  return [
    ink,
    stroked(path, { colour, widthMm: Math.max(widthMm - 2 * edge.widthMm, widthMm / 3) }),
  ];
}

/** An area with its line on top, half inside and half outside its path. */
function drawEdged(path: Path, cell: Cell, look: Look, edge: Stroke): readonly SceneNode[] {
  return [...drawInside(path, cell, look), stroked(path, edge)];
}

/**
 * An area with its line underneath and twice as wide, so that only the outer half shows and the
 * overlapping parts that some letters are made of leave no line inside.
 */
function drawUnderlaid(path: Path, cell: Cell, look: Look, edge: Stroke): readonly SceneNode[] {
  const under = stroked(path, { ...edge, widthMm: 2 * edge.widthMm });
  return [under, ...drawInside(path, cell, look)];
}

function drawInside(path: Path, cell: Cell, look: Look): readonly SceneNode[] {
  const ground = filled(path, groundOf(look));
  if (look.fill === 'solid') return [ground];
  const { colour, fill } = look;
  const children =
    fill === 'outline' ? drawBand(path, colour, look.bandMm) : drawTexture(fill, cell, colour);
  return children.length > 0 ? [ground, { kind: 'group', clip: path, children }] : [ground];
}

function groundOf({ fill, colour }: Look): Paint {
  return fill === 'outline' ? WHITE : (colour ?? WHITE);
}

/** The inner half of a thick line along the outline; the outer half is clipped away. */
function drawBand(path: Path, colour: Paint | undefined, bandMm: number): readonly SceneNode[] {
  return colour === undefined ? [] : [stroked(path, { colour, widthMm: 2 * bandMm })];
}

/** Over the whole cell and upright, however the figure is turned: white marks on dark grounds, else ink. */
function drawTexture(
  texture: Texture,
  { x, y, side }: Cell,
  colour: Paint = WHITE,
): readonly SceneNode[] {
  const ink = inkOn(colour);
  const marks = texturePath(texture, side, side);
  const path = transformPath(marks.path, moveBy(x - side / 2, y - side / 2));
  if ('filled' in marks) return [filled(path, ink)];
  return [stroked(path, { colour: ink, widthMm: marks.widthMm })];
}
