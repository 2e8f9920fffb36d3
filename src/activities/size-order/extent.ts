// How far the ink of a figure reaches about the middle of its cell, for placing and for telling lengths.
import { type Bounds, pathBounds } from '../../base/index.ts';
import { type Figure, formOf, outlineOf } from '../../figures/index.ts';

/** Forgotten when this many are known, so that a hostile file cannot fill the memory. */
const MOST_KNOWN = 500;
const known = new Map<string, Bounds>();

/** The ink of a figure at full size, lines that are drawn included; in cell sides. */
export function inkOf(figure: Figure): Bounds {
  if (formOf(figure) === 'dots') return { left: -0.5, top: -0.5, right: 0.5, bottom: 0.5 };
  const { form, turn, mirrored } = figure;
  const key = `${form} ${turn ?? 0} ${mirrored ?? false}`;
  const before = known.get(key);
  if (before) return before;
  const { path, drawn } = outlineOf({ form, turn, mirrored });
  const { left, top, right, bottom } = pathBounds(path);
  const half = (drawn?.widthShare ?? 0) / 2;
  const ink = { left: left - half, top: top - half, right: right + half, bottom: bottom + half };
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(key, ink);
  return ink;
}

/** The longer side of the ink as printed, in sides of the full cell. */
export function lengthOf(figure: Figure): number {
  const { left, top, right, bottom } = inkOf(figure);
  return (figure.size ?? 1) * Math.max(right - left, bottom - top);
}
