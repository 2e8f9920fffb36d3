// The mark that names a colour on a figure in grey print: where it stands, how big, and in which ink.
import { compose, flattenPath, moveBy, type Path, scaleBy, transformPath } from '../base/index.ts';
import { CAP_HEIGHT_EM, type Figure, formOf, isShape, roomIn } from '../figures/index.ts';
import { COLOUR_NAMES, type ColourName, initialOf } from '../palette/index.ts';
import { inkOn } from './ink.ts';
import { filled, group, stroked } from './nodes.ts';
import type { Group, Paint } from './scene.ts';
import { textWidthMm, wordsPath } from './type.ts';

/** The least height of a capital that is read at arm's length, in mm; common practice, no source. */
const LEAST_CAP_MM = 1.8;
/** The most inside a figure, and the height beside one, in cell sides: the mark must not outshine it. */
const MOST_CAP_SHARE = 0.24;
const BESIDE_CAP_SHARE = 0.17;
/** Clear space round a mark that stands on a texture, in mm. */
const HALO_MM = 0.8;

/** Figures up to this size leave the corner of their cell free for a mark. */
const SMALL_SIZE = 0.62;
/** Thin forms, which take no mark, make way for one: this much smaller and moved up and left by this much. */
const THIN_BODY = { bodyShare: 0.74, bodyShift: -0.13 };
const WHOLE_BODY = { bodyShare: 1, bodyShift: 0 };

/** Where a figure and its mark stand about the middle of the cell. */
export interface MarkSpot {
  readonly inside: boolean;
  /** Of the figure, in cell sides: its cell, and how far that is moved right and down. */
  readonly bodyShare: number;
  readonly bodyShift: number;
  /** Of the mark, in mm: its middle and its height. */
  readonly x: number;
  readonly y: number;
  readonly capMm: number;
}

/**
 * Room for the mark of a coloured figure in a cell of side `cellMm`, `edgeMm` clear of its outline. Inside
 * a shape, unless it is so small that the corner is free; beside all other forms. Sizes of one form keep
 * their ratio: whether a figure makes way depends on its form alone.
 */
export function markSpot(figure: Figure, cellMm: number, edgeMm: number): MarkSpot {
  if (!isShape(formOf(figure))) return { ...THIN_BODY, ...cornerSpot(cellMm) };
  const room = roomIn(figure);
  const capMm = Math.min(MOST_CAP_SHARE * cellMm, capWithin(room.radius * cellMm - edgeMm));
  if (capMm < LEAST_CAP_MM && (figure.size ?? 1) <= SMALL_SIZE) {
    return { ...WHOLE_BODY, ...cornerSpot(cellMm) };
  }
  return { ...WHOLE_BODY, inside: true, x: room.x * cellMm, y: room.y * cellMm, capMm };
}

/** The cap height in mm at which every mark fits a circle. */
function capWithin(radiusMm: number): number {
  return Math.max(0.5, radiusMm / MARKS.reach);
}

function cornerSpot(cellMm: number): Pick<MarkSpot, 'inside' | 'x' | 'y' | 'capMm'> {
  const capMm = BESIDE_CAP_SHARE * cellMm;
  return {
    inside: false,
    x: cellMm / 2 - MARKS.right * capMm,
    y: cellMm / 2 - MARKS.bottom * capMm,
    capMm,
  };
}

/** A mark about its middle, its capital 1 high. */
function markPath(colour: ColourName): Path {
  const mark = initialOf(colour);
  const emMm = 1 / CAP_HEIGHT_EM;
  const start = moveBy(-textWidthMm(mark, emMm, 'bold') / 2, 0.5);
  return transformPath(wordsPath(mark, 'bold'), compose(start, scaleBy(emMm)));
}

/** How far the ink of any mark reaches, so that all stand alike on the same form; in cap heights. */
const MARKS = (() => {
  const points = COLOUR_NAMES.flatMap((colour) => flattenPath(markPath(colour)).flat());
  return {
    right: Math.max(...points.map(({ x }) => x)),
    bottom: Math.max(...points.map(({ y }) => y)),
    reach: Math.sqrt(Math.max(...points.map(({ x, y }) => x * x + y * y))),
  };
})();

/**
 * The colour's mark with its middle at (`xMm`, `yMm`), dark on a light ground and white on a dark one;
 * with `isOnTexture`, the ground shows round it.
 */
export function drawMark(
  colour: ColourName,
  xMm: number,
  yMm: number,
  capMm: number,
  ground: Paint,
  isOnTexture = false,
): Group {
  const path = transformPath(markPath(colour), compose(moveBy(xMm, yMm), scaleBy(capMm)));
  const halo = isOnTexture ? [stroked(path, { colour: ground, widthMm: 2 * HALO_MM })] : [];
  return group('mark', [...halo, filled(path, inkOn(ground))]);
}
