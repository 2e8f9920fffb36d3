// Where the things to tap lie over a picture: at their figures, and big enough for a finger where there is room.

/** Sides along the axes of the page, from its upper left corner; all of one picture in the same unit. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * The least width and height of what is touched, in CSS pixels: 24 by WCAG 2.2, success criterion 2.5.8, and a little
 * more, since browsers place things at whole parts of a pixel.
 */
export const LEAST_PX = 24.5;

/** How much bigger than the whole page a picture may be shown, the least first (our own choice). */
const ZOOMS = [1, 1.5, 2, 3];

/** The boxes grown to `least` at least, but none beyond the middle of the gap to a neighbour. */
export function targetsAt(boxes: readonly Box[], least: number): readonly Box[] {
  const grown = boxes.map((box) => grownTo(box, least));
  return boxes.map((box, place) =>
    boxes.reduce(
      (target, other, at) =>
        at !== place && overlap(target, grown[at] ?? other) ? keptFrom(target, box, other) : target,
      grownTo(box, least),
    ),
  );
}

/** How many times bigger than the whole page the picture must be for every target to be big enough. */
export function zoomFor(boxes: readonly Box[], pxPerUnit: number): number {
  const isEnough = (zoom: number) => {
    const least = LEAST_PX / (pxPerUnit * zoom);
    // A thousandth for what is lost in reckoning.
    return targetsAt(boxes, least).every(
      ({ width, height }) => Math.min(width, height) > 0.999 * least,
    );
  };
  return ZOOMS.find(isEnough) ?? ZOOMS.at(-1) ?? 1;
}

/** The least box around all. */
export function around(boxes: readonly Box[]): Box {
  return between(
    Math.min(...boxes.map(({ x }) => x)),
    Math.min(...boxes.map(({ y }) => y)),
    Math.max(...boxes.map(({ x, width }) => x + width)),
    Math.max(...boxes.map(({ y, height }) => y + height)),
  );
}

/** The part of the box that lies in the other; all of it where there is no other. */
export function within(box: Box, other: Box | undefined): Box {
  if (other === undefined) return box;
  return between(
    Math.max(box.x, other.x),
    Math.max(box.y, other.y),
    Math.min(box.x + box.width, other.x + other.width),
    Math.min(box.y + box.height, other.y + other.height),
  );
}

function between(x: number, y: number, toX: number, toY: number): Box {
  return { x, y, width: Math.max(0, toX - x), height: Math.max(0, toY - y) };
}

function grownTo({ x, y, width, height }: Box, least: number): Box {
  const [wider, higher] = [Math.max(0, least - width), Math.max(0, least - height)];
  return { x: x - wider / 2, y: y - higher / 2, width: width + wider, height: height + higher };
}

function overlap(one: Box, other: Box): boolean {
  return gapBetween(one, other) < 0 && gapBetween(turned(one), turned(other)) < 0;
}

/** The target of `own` cut back to the middle of the gap to the other, along the axis on which it is wider. */
function keptFrom(target: Box, own: Box, other: Box): Box {
  const across = gapBetween(own, other);
  const down = gapBetween(turned(own), turned(other));
  if (Math.max(across, down) < 0) return target;
  return across >= down
    ? cutBack(target, own, other, across)
    : turned(cutBack(turned(target), turned(own), turned(other), down));
}

function cutBack(target: Box, own: Box, other: Box, gap: number): Box {
  const end = target.x + target.width;
  if (own.x < other.x) {
    const last = Math.min(end, own.x + own.width + gap / 2);
    return { ...target, width: last - target.x };
  }
  const first = Math.max(target.x, own.x - gap / 2);
  return { ...target, x: first, width: end - first };
}

/** Between two boxes along the x axis; negative where they overlap on it. */
function gapBetween(one: Box, other: Box): number {
  return Math.max(other.x - one.x - one.width, one.x - other.x - other.width);
}

function turned({ x, y, width, height }: Box): Box {
  return { x: y, y: x, width: height, height: width };
}
