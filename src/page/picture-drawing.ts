// A picture in its own colours: every part filled, an ink line round the whole.
import { compose, moveBy, scaleBy, transformPath } from '../base/index.ts';
import { type Figure, outlineOf, partsOf } from '../figures/index.ts';
import { contrastOf, type Hex } from '../palette/index.ts';
import { filled, stroked } from './nodes.ts';
import type { PrintStyle } from './print-style.ts';
import type { Paint, SceneNode, Shape, Stroke } from './scene.ts';

/**
 * The parts of a picture about (`xMm`, `yMm`) in a cell of side `sideMm` with its line, of which only the
 * outer half shows; in grey print each colour is the grey of its own luminance.
 */
export function drawPicture(
  figure: Figure,
  xMm: number,
  yMm: number,
  sideMm: number,
  edge: Stroke,
  { print }: PrintStyle,
): readonly SceneNode[] {
  const upright = { ...figure, size: 1 };
  const place = compose(moveBy(xMm, yMm), scaleBy(sideMm - 2 * edge.widthMm));
  const line = transformPath(outlineOf(upright).path, place);
  const parts = partsOf(upright).map(({ fill, path, rule }): Shape => {
    const shape = filled(transformPath(path, place), print === 'grey' ? greyLike(fill) : fill);
    return rule === 'nonzero' ? shape : { ...shape, rule };
  });
  return [stroked(line, { ...edge, widthMm: 2 * edge.widthMm }), ...parts];
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
