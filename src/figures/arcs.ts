// Arcs of circles and mirrored outlines: what the curved shapes are put together from.
import type { PathStep, Point } from '../base/index.ts';

/** The point of a circle at an angle in degrees clockwise from three o'clock (y down). */
export function onCircle(x: number, y: number, radius: number, angleDeg: number): Point {
  const radians = (angleDeg * Math.PI) / 180;
  return { x: x + radius * Math.cos(radians), y: y + radius * Math.sin(radians) };
}

/**
 * Curves along a circle from `startDeg` over `sweepDeg` (clockwise, or counter-clockwise if negative),
 * in pieces of at most a quarter; control distance 4/3 · tan(sweep / 4), exact at the middle of a piece.
 */
export function arcSteps(
  x: number,
  y: number,
  radius: number,
  startDeg: number,
  sweepDeg: number,
): PathStep[] {
  const pieces = Math.ceil(Math.abs(sweepDeg) / 90);
  const pieceDeg = sweepDeg / pieces;
  const reach = (4 / 3) * Math.tan((pieceDeg * Math.PI) / 720) * radius;
  return Array.from({ length: pieces }, (_, index): PathStep => {
    const [fromDeg, toDeg] = [startDeg + index * pieceDeg, startDeg + (index + 1) * pieceDeg];
    const [from, to] = [onCircle(x, y, radius, fromDeg), onCircle(x, y, radius, toDeg)];
    const leave = onCircle(from.x, from.y, reach, fromDeg + 90);
    const arrive = onCircle(to.x, to.y, -reach, toDeg + 90);
    return ['C', leave.x, leave.y, arrive.x, arrive.y, to.x, to.y];
  });
}
