// The window through which a picture is cropped: moved by dragging, pinching, the wheel, keys, or named buttons.
import { type KeyboardEvent, type PointerEvent, useEffect, useId, useRef } from 'react';
import { Button } from 'react-aria-components/Button';
import { GROW, grown, MOVE, moved, type Square } from './cropping.ts';
import type { Crop } from './simplify.ts';
import { words } from './words.ts';

export interface StageProps {
  readonly image: ImageBitmap;
  readonly square: Square;
  readonly crop: Crop;
  /** Moves come faster than the screen is drawn, so each is told as a change of what there is. */
  readonly onChange: (change: (square: Square) => Square) => void;
}

/** Pixels along each side of what is drawn. */
const SIDE = 512;

export function Stage({ image, square, crop, onChange }: StageProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const help = useId();
  useEffect(() => {
    if (canvas.current) drawSquare(canvas.current, image, square);
  }, [image, square]);
  const move = (right: number, down: number) => onChange((now) => moved(now, right, down, image));
  const grow = (times: number) => onChange((now) => grown(now, times, image));
  const press = (event: KeyboardEvent) => {
    const key = KEYS[event.key];
    if (key === undefined) return;
    event.preventDefault();
    if ('times' in key) grow(key.times);
    else move(...key.by);
  };
  const hold = usePointers(move, grow);
  return (
    <div className="crop">
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset takes no focus */}
      <div
        className={`crop-stage ${crop}`}
        role="group"
        aria-labelledby={help}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it is moved with the arrow keys
        tabIndex={0}
        onKeyDown={press}
        onWheel={(event) => grow(event.deltaY < 0 ? GROW : 1 / GROW)}
        {...hold}
      >
        <canvas ref={canvas} width={SIDE} height={SIDE} />
      </div>
      <p id={help} className="help">
        {words.stage}
      </p>
      <div className="crop-moves">
        <Button className="plain" onPress={() => move(-MOVE, 0)}>
          {words.move.left}
        </Button>
        <Button className="plain" onPress={() => move(MOVE, 0)}>
          {words.move.right}
        </Button>
        <Button className="plain" onPress={() => move(0, -MOVE)}>
          {words.move.up}
        </Button>
        <Button className="plain" onPress={() => move(0, MOVE)}>
          {words.move.down}
        </Button>
        <Button className="plain" onPress={() => grow(GROW)}>
          {words.bigger}
        </Button>
        <Button className="plain" onPress={() => grow(1 / GROW)}>
          {words.smaller}
        </Button>
      </div>
    </div>
  );
}

type Deed = { readonly by: readonly [right: number, down: number] } | { readonly times: number };

const KEYS: Readonly<Record<string, Deed>> = {
  ArrowLeft: { by: [-MOVE, 0] },
  ArrowRight: { by: [MOVE, 0] },
  ArrowUp: { by: [0, -MOVE] },
  ArrowDown: { by: [0, MOVE] },
  '+': { times: GROW },
  '=': { times: GROW },
  '-': { times: 1 / GROW },
};

type Point = readonly [x: number, y: number];

/** One finger moves, two also make bigger or smaller; in shares of the stage. */
function usePointers(move: (right: number, down: number) => void, grow: (times: number) => void) {
  const held = useRef(new Map<number, Point>());
  const lift = (event: PointerEvent) => void held.current.delete(event.pointerId);
  return {
    onPointerDown: (event: PointerEvent) => {
      event.currentTarget.setPointerCapture(event.pointerId);
      held.current.set(event.pointerId, [event.clientX, event.clientY]);
    },
    onPointerMove: (event: PointerEvent) => {
      const before = held.current.get(event.pointerId);
      if (before === undefined) return;
      const now: Point = [event.clientX, event.clientY];
      const [other] = [...held.current].filter(([id]) => id !== event.pointerId);
      held.current.set(event.pointerId, now);
      const side = event.currentTarget.clientWidth;
      if (other === undefined) move((now[0] - before[0]) / side, (now[1] - before[1]) / side);
      else grow(distance(now, other[1]) / Math.max(1, distance(before, other[1])));
    },
    onPointerUp: lift,
    onPointerCancel: lift,
  };
}

function distance([x, y]: Point, [otherX, otherY]: Point): number {
  return Math.hypot(x - otherX, y - otherY);
}

/** The square of the image over the whole canvas, on white. */
export function drawSquare(
  canvas: HTMLCanvasElement | OffscreenCanvas,
  image: ImageBitmap,
  { x, y, side }: Square,
): void {
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!(context instanceof CanvasRenderingContext2D || isOffscreen(context))) return;
  context.imageSmoothingQuality = 'high';
  context.fillStyle = '#fff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  const scale = canvas.width / side;
  context.drawImage(
    image,
    canvas.width / 2 - x * scale,
    canvas.height / 2 - y * scale,
    image.width * scale,
    image.height * scale,
  );
}

function isOffscreen(context: unknown): context is OffscreenCanvasRenderingContext2D {
  return (
    typeof OffscreenCanvasRenderingContext2D === 'function' &&
    context instanceof OffscreenCanvasRenderingContext2D
  );
}
