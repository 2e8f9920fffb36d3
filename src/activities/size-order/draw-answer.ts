// Draws what the child is to do: a ring, numerals, dots, lines, or the figures stuck in order.
import { circlePath, linePath } from '../../base/index.ts';
import {
  type Area,
  centredIn,
  centreOf,
  filled,
  type Group,
  group,
  kept,
  type PrintStyle,
  QUIET_INK,
  type SceneNode,
  STRONG_MM,
  stroked,
  text,
} from '../../page/index.ts';
import { ANSWER_LINE_MM, drawInCell, ringPath } from '../placing.ts';
import { NUMERAL_EM_MM, type PagePlan, type Place } from './page-plan.ts';
import type { Answer, Printed } from './task.ts';

const DOT_RADIUS_MM = 1.1;
/** Of dots in a box, as shares of its side from its middle. */
const DOTS_APART = 0.28;
/** Of the end of a line in its place. */
const END_RADIUS_MM = 1.5;

/** A figure in a cell of its own, its size in it being the whole; the row is laid out by its ink. */
export function drawPlace(
  { figure, cellMm, x, y, ink }: Place,
  style: PrintStyle,
): readonly SceneNode[] {
  const cell = { left: x - cellMm / 2, top: y - cellMm / 2, width: cellMm, height: cellMm };
  return drawInCell({ ...figure, size: undefined }, cell, style).map((node) =>
    node.kind === 'group' ? kept(node, centreOf(ink).x) : node,
  );
}

export function drawAnswer(
  { asked = 'order', response = 'point' }: Printed,
  plan: PagePlan,
  answer: Answer,
  style: PrintStyle,
): Group {
  const places = answer.flatMap((at) => plan.places[at] ?? []);
  if (asked !== 'order') return group('answer', places.map(ringRound));
  if (response === 'join')
    return group(
      'answer',
      places.flatMap((place, rank) => joined(place, rank, plan)),
    );
  if (response === 'cut') return group('answer', stuck(places, plan, style));
  if (response === 'dots') {
    const boxes = answer.flatMap((at) => plan.boxes[at] ?? []);
    return group(
      'answer',
      boxes.flatMap((area, rank) => dotsIn(area, rank + 1)),
    );
  }
  return group(
    'answer',
    places.map((place, rank) => numeralBelow(place, rank + 1, plan)),
  );
}

function ringRound({ ink }: Place): SceneNode {
  return stroked(ringPath(ink), { colour: QUIET_INK, widthMm: ANSWER_LINE_MM });
}

/** Down from the figure past its neighbours, then straight to the middle of its place. */
function joined({ ink }: Place, rank: number, { boxes, bottomMm }: PagePlan): readonly SceneNode[] {
  const target = boxes[rank];
  if (!target) return [];
  const x = centreOf(ink).x;
  const end = { x: centreOf(target).x, y: target.top + target.height / 2 };
  const points = [{ x, y: ink.top + ink.height }, { x, y: bottomMm + STRONG_MM }, end];
  const stroke = { colour: QUIET_INK, widthMm: ANSWER_LINE_MM };
  return [
    stroked(linePath(points), stroke),
    filled(circlePath(end.x, end.y, END_RADIUS_MM), QUIET_INK),
  ];
}

function dotsIn(area: Area, count: number): readonly SceneNode[] {
  const { x, y } = centreOf(area);
  const step = DOTS_APART * area.width;
  const spots = [
    [[0, 0]],
    [
      [-0.5, 0.5],
      [0.5, -0.5],
    ],
    [
      [-1, 1],
      [0, 0],
      [1, -1],
    ],
    [
      [-1, -1],
      [1, -1],
      [-1, 1],
      [1, 1],
    ],
    [
      [-1, -1],
      [1, -1],
      [0, 0],
      [-1, 1],
      [1, 1],
    ],
  ][count - 1];
  return (spots ?? []).map(([across = 0, down = 0]) =>
    filled(circlePath(x + across * step, y + down * step, DOT_RADIUS_MM), QUIET_INK),
  );
}

function numeralBelow({ ink }: Place, rank: number, { bottomMm }: PagePlan): SceneNode {
  const options = { anchor: 'middle', colour: QUIET_INK, weight: 'bold' } as const;
  const baseline = bottomMm + STRONG_MM + 1 + 0.78 * NUMERAL_EM_MM;
  return text(String(rank), centreOf(ink).x, baseline, NUMERAL_EM_MM, options);
}

/** The figures once more, in order, on the middle line of the frame. */
function stuck(places: readonly Place[], plan: PagePlan, style: PrintStyle): readonly SceneNode[] {
  return inStrip(places, plan).map(({ place, area }) => {
    const target = centredIn(area, place.ink.width, place.ink.height);
    return group('card', drawPlace(movedTo(place, target), style));
  });
}

/** Each figure with its share of the frame: itself, and half of the blank on either side. */
export function inStrip(
  places: readonly Place[],
  { strip }: PagePlan,
): readonly { readonly place: Place; readonly area: Area }[] {
  if (!strip) return [];
  const total = places.reduce((sum, { ink }) => sum + ink.width, 0);
  const gap = (strip.width - total) / (places.length + 1);
  let left = strip.left + gap / 2;
  return places.map((place) => {
    const area = { ...strip, left, width: place.ink.width + gap };
    left += area.width;
    return { place, area };
  });
}

/** The figure with its ink at the top left corner of an area. */
export function movedTo(place: Place, { left, top }: Pick<Area, 'left' | 'top'>): Place {
  const { ink } = place;
  const [x, y] = [place.x + left - ink.left, place.y + top - ink.top];
  return { ...place, x, y, ink: { ...ink, left, top } };
}
