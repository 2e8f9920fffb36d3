// Shapes as whole numbers from an origin of their own: alike wherever on a page the same shapes lie.
import type { Path, PathStep, Transform } from '../base/index.ts';
import type { Paint, Shape, Stroke } from '../page/index.ts';
import { hundredthsOf } from './numbers.ts';
import { scaleOf } from './placing.ts';

/** Outlines outside of which nothing shows. */
export interface Clip {
  readonly path: Path;
  readonly transform: Transform;
}

/** A shape with where it lies on the page. */
export interface PlacedShape {
  readonly node: Shape;
  readonly transform: Transform;
  readonly clips: readonly Clip[];
}

/** What the numbers of a drawing begin with: each part, and each step of a path. */
export const PART = { clip: 1, unclip: 2, paint: 3 } as const;
export const STEP = { M: 1, L: 2, C: 3, Z: 4 } as const;
/** How a path is painted, added up. */
export const WITH = { fill: 1, line: 2, evenodd: 4, square: 8 } as const;

const FIRST_NUMBERS = 4096;
/** No page is twenty kilometres wide. */
const MOST = 2 ** 31;

/** One drawing after another, in hundredths of a millimetre, y down. */
export class Drawing {
  /** Where its origin lies on the page. */
  x = 0;
  y = 0;
  numbers = new Int32Array(FIRST_NUMBERS);
  length = 0;
  private xMm = 0;
  private yMm = 0;
  /** The path put last, which is often put again: to fill, to clip and to line one figure. */
  private last: Clip | undefined;
  private lastAt = 0;

  /** Holds the shapes from `from` up to `to` instead of what it held; a defect if a length is not finite. */
  take(shapes: readonly PlacedShape[], from: number, to: number): void {
    this.length = 0;
    this.last = undefined;
    this.startAt(shapes[from] as PlacedShape);
    let open: readonly Clip[] = [];
    for (let at = from; at < to; at++) {
      const shape = shapes[at] as PlacedShape;
      if (shape.clips !== open) {
        this.clipTo(shape.clips, open);
        open = shape.clips;
      }
      const line = at + 1 < to ? lineAlong(shape, shapes[at + 1] as PlacedShape) : undefined;
      if (line) at += 1;
      this.paint(shape, line ?? shape.node.stroke);
    }
    this.clipTo([], open);
  }

  private startAt({ node, transform }: PlacedShape): void {
    const first = node.path[0];
    const x = first?.[1] ?? 0;
    const y = first?.[2] ?? 0;
    this.xMm = transform[0] * x + transform[2] * y + transform[4];
    this.yMm = transform[1] * x + transform[3] * y + transform[5];
    this.x = hundredthsOf(this.xMm);
    this.y = hundredthsOf(this.yMm);
  }

  private clipTo(clips: readonly Clip[], open: readonly Clip[]): void {
    if (open.length > 0) this.put(PART.unclip);
    if (clips.length === 0) return;
    this.put(PART.clip);
    this.put(clips.length);
    for (const { path, transform } of clips) this.putPath(path, transform);
  }

  private paint({ node, transform }: PlacedShape, stroke: Stroke | undefined): void {
    const { path, fill, rule } = node;
    if (!fill && !stroke) return;
    this.put(PART.paint);
    this.put(
      (fill ? WITH.fill : 0) +
        (stroke ? WITH.line : 0) +
        (fill && rule === 'evenodd' ? WITH.evenodd : 0) +
        (stroke?.ends === 'square' ? WITH.square : 0),
    );
    if (fill) this.put(numberOf(fill));
    if (stroke) {
      const scale = scaleOf(transform);
      this.put(numberOf(stroke.colour));
      this.put(hundredthsOf(stroke.widthMm * scale));
      const dash = stroke.dashMm ?? [];
      this.put(dash.length);
      for (const mm of dash) this.put(hundredthsOf(mm * scale));
    }
    this.putPath(path, transform);
  }

  /** How many numbers follow, then they. */
  private putPath(path: Path, transform: Transform): void {
    this.makeRoom(1 + 7 * path.length);
    const start = this.length;
    if (path === this.last?.path && transform === this.last.transform) {
      const end = this.lastAt + 1 + (this.numbers[this.lastAt] as number);
      this.numbers.copyWithin(start, this.lastAt, end);
      this.length += end - this.lastAt;
      return;
    }
    this.putNewPath(path, transform);
    this.numbers[start] = this.length - start - 1;
    this.last = { path, transform };
    this.lastAt = start;
  }

  /** Behind a place for how many there are. No list is made for a point: a pack has a million of them. */
  private putNewPath(path: Path, transform: Transform): void {
    const a = transform[0];
    const b = transform[1];
    const c = transform[2];
    const d = transform[3];
    const x = transform[4] - this.xMm;
    const y = transform[5] - this.yMm;
    const { numbers } = this;
    let at = this.length + 1;
    for (let place = 0; place < path.length; place++) {
      const step = path[place] as PathStep;
      numbers[at++] = STEP[step[0]];
      for (let index = 1; index < step.length; index += 2) {
        const px = step[index] as number;
        const py = step[index + 1] as number;
        numbers[at++] = whole(a * px + c * py + x);
        numbers[at++] = whole(b * px + d * py + y);
      }
    }
    this.length = at;
  }

  private put(value: number): void {
    this.makeRoom(1);
    this.numbers[this.length++] = value;
  }

  private makeRoom(more: number): void {
    if (this.length + more <= this.numbers.length) return;
    const roomier = new Int32Array(2 * (this.length + more));
    roomier.set(this.numbers.subarray(0, this.length));
    this.numbers = roomier;
  }
}

/** In hundredths; what lies in the middle of two goes up, though the last digits differ from place to place. */
function whole(mm: number): number {
  const hundredths = Math.floor(mm * 100 + 0.500_001);
  if (!(Math.abs(hundredths) < MOST)) {
    throw new Error(`press › number: expected a finite one, got ${mm}`);
  }
  return hundredths;
}

/** The line that is drawn along the outline of a shape that was only filled, where it comes right after it. */
function lineAlong(shape: PlacedShape, next: PlacedShape): Stroke | undefined {
  const [area, line] = [shape.node, next.node];
  if (area.path !== line.path || !area.fill || area.stroke || line.fill) return undefined;
  const isPlacedAlike = shape.transform === next.transform && shape.clips === next.clips;
  return isPlacedAlike ? line.stroke : undefined;
}

const known = new Map<Paint, number>();

/** How many numbers follow each step: pairs of x and y. */
const AFTER = [0, 2, 2, 6, 0] as const;

/** Tells the points of a path whose numbers begin at `from`, and where it ends. */
export function eachPoint(
  numbers: Int32Array,
  from: number,
  visit: (x: number, y: number) => void,
): number {
  const end = from + 1 + (numbers[from] as number);
  for (let at = from + 1; at < end; ) {
    const next = at + 1 + (AFTER[numbers[at] as number] as number);
    for (at += 1; at < next; at += 2) visit(numbers[at] as number, numbers[at + 1] as number);
  }
  return end;
}

/** A colour as `0xrrggbb`. */
export function numberOf(paint: Paint): number {
  const found = known.get(paint) ?? Number.parseInt(paint.slice(1), 16);
  known.set(paint, found);
  return found;
}
