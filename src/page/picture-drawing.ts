// A picture in its own colours: every part filled, an ink line round the whole.
import { compose, moveBy, type Path, scaleBy, transformPath } from '../base/index.ts';
import { type Figure, outlineOf, partsOf } from '../figures/index.ts';
import { contrastOf, type Hex } from '../palette/index.ts';
import { WHITE } from './ink.ts';
import { filled, stroked } from './nodes.ts';
import type { PrintStyle } from './print-style.ts';
import type { Group, Paint, SceneNode, Stroke } from './scene.ts';

/** To save ink, the line just inside the edge of each part, in sides of the picture. */
const PART_LINE = 0.035;

/**
 * The parts of a picture about (`xMm`, `yMm`) in a cell of side `sideMm` with its line, of which only the
 * outer half shows; in grey print each colour is the grey of its own luminance. To save ink each part is white inside
 * a line of its colour.
 */
export function drawPicture(
  figure: Figure,
  xMm: number,
  yMm: number,
  sideMm: number,
  edge: Stroke,
  { print, ink }: PrintStyle,
): readonly SceneNode[] {
  const upright = { ...figure, size: 1 };
  const place = compose(moveBy(xMm, yMm), scaleBy(sideMm - 2 * edge.widthMm));
  const line = transformPath(outlineOf(upright).path, place);
  const parts = partsOf(upright).map(({ fill, path, rule }): SceneNode => {
    const colour = print === 'grey' ? greyLike(fill) : fill;
    const placed = transformPath(path, place);
    // A clip knows no other rule, and parts with holes are small or thin.
    if (rule !== 'nonzero') return { ...filled(placed, colour), rule };
    return ink === 'saving' ? drawHollow(placed, colour, sideMm) : filled(placed, colour);
  });
  return [stroked(line, { ...edge, widthMm: 2 * edge.widthMm }), ...parts];
}

function drawHollow(path: Path, colour: Paint, sideMm: number): Group {
  const inner = stroked(path, { colour, widthMm: 2 * PART_LINE * sideMm });
  return { kind: 'group', clip: path, children: [filled(path, WHITE), inner] };
}

/** The grey of equal luminance (WCAG 2.2: a contrast to black is (luminance + 0.05) / 0.05). */
function greyLike(colour: Hex): Paint {
  const luminance = 0.05 * contrastOf(colour, '#000000') - 0.05;
  const share = luminance <= 0.0031308 ? 12.92 * luminance : 1.055 * luminance ** (1 / 2.4) - 0.055;
  const channel = Math.round(255 * share)
    .toString(16)
    .padStart(2, '0');
  return `#${channel}${channel}${channel}`;
}
