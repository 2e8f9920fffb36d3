// Figures of a PDF: every point within a hundredth of a millimetre of its place, alike numbers wherever they lie.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import {
  circlePath,
  IDENTITY,
  moveBy,
  type Path,
  type PathStep,
  rectanglePath,
  transformPath,
} from '../base/index.ts';
import { Drawing, type PlacedShape } from './drawing.ts';
import { Operators } from './operators.ts';
import { moveTo, type Pen, writeDrawing } from './pdf-drawing.ts';

const seed = testSeed('drawing');
/** The origin and the step from it are rounded, each by half a hundredth. */
const ROUNDING = 0.01 + 1e-6;

const lengths = fc.double({ min: -50, max: 50, noNaN: true });
const steps = fc.oneof(
  fc.tuple(lengths, lengths).map(([x, y]): PathStep => ['L', x, y]),
  fc
    .tuple(lengths, lengths, lengths, lengths, lengths, lengths)
    .map((ends): PathStep => ['C', ...ends]),
  fc.constant<PathStep>(['Z']),
);
const paths = fc
  .tuple(lengths, lengths, fc.array(steps, { maxLength: 60 }))
  .map(([x, y, more]): Path => [['M', x, y], ...more]);
/** Multiples of a hundredth, so that nothing is rounded. */
const places = fc.integer({ min: -20_000, max: 20_000 }).map((hundredths) => hundredths / 100);

function shapeOf(path: Path): PlacedShape {
  return { node: { kind: 'shape', path, fill: '#123456' }, transform: IDENTITY, clips: [] };
}

function drawingOf(...shapes: readonly PlacedShape[]): Drawing {
  const drawing = new Drawing();
  drawing.take(shapes, 0, shapes.length);
  return drawing;
}

function numbersOf({ numbers, length }: Drawing): readonly number[] {
  return [...numbers.subarray(0, length)];
}

/** The content of a page on which each drawing is drawn in turn. */
function contentOf(...drawings: readonly Drawing[]): string {
  const content = new Operators();
  const pen: Pen = { x: 0, y: 0 };
  for (const drawing of drawings) {
    moveTo(drawing.x, drawing.y, content, pen);
    writeDrawing(drawing, content, pen);
  }
  return new TextDecoder().decode(content.written);
}

/** Reads operators as ISO 32000 tells, into the points of the page in mm; only such matrices as move or widen evenly. */
function pointsOn(content: string): readonly (readonly [number, number])[] {
  let [scale, x, y] = [1, 0, 0];
  const kept: (readonly [number, number, number])[] = [];
  const points: (readonly [number, number])[] = [];
  let operands: number[] = [];
  for (const word of content.split(/\s+/)) {
    if (/^-?[\d.]+$/.test(word)) {
      operands.push(Number(word));
      continue;
    }
    if (word === 'q') kept.push([scale, x, y]);
    else if (word === 'Q') [scale, x, y] = kept.pop() ?? [1, 0, 0];
    else if (word === 'cm') {
      const [a = 1, , , , e = 0, f = 0] = operands;
      [scale, x, y] = [scale * a, x + scale * e, y + scale * f];
    } else if (/^[mlc]$/.test(word)) {
      for (let at = 0; at < operands.length; at += 2) {
        const [px = 0, py = 0] = operands.slice(at, at + 2);
        points.push([(x + scale * px) / 100, (y + scale * py) / 100]);
      }
    }
    operands = [];
  }
  return points;
}

function pointsOf(path: Path): readonly (readonly [number, number])[] {
  return path.flatMap(([, ...ends]) =>
    ends.flatMap((end, at) => (at % 2 === 0 ? [[end, ends[at + 1] ?? Number.NaN] as const] : [])),
  );
}

test('points lie within a hundredth of a millimetre of their places, however many figures come before', () => {
  fc.assert(
    fc.property(fc.array(paths, { minLength: 1, maxLength: 6 }), (all) => {
      const read = pointsOn(contentOf(...all.map((path) => drawingOf(shapeOf(path)))));
      const wanted = all.flatMap(pointsOf);
      expect(read).toHaveLength(wanted.length);
      wanted.forEach(([x, y], at) => {
        expect(Math.abs((read[at]?.[0] ?? Number.NaN) - x)).toBeLessThanOrEqual(ROUNDING);
        expect(Math.abs((read[at]?.[1] ?? Number.NaN) - y)).toBeLessThanOrEqual(ROUNDING);
      });
    }),
    { seed, numRuns: 60 },
  );
});

test('a figure is the same numbers wherever it lies, halves of a hundredth among them', () => {
  const halves = fc.array(fc.integer({ min: -999, max: 999 }), { minLength: 4, maxLength: 40 });
  fc.assert(
    fc.property(halves, places, places, (values, x, y) => {
      const path = values.slice(1).map((value, at): PathStep => {
        const before = values[at] as number;
        return [at === 0 ? 'M' : 'L', before / 200, value / 200];
      });
      const moved = transformPath(path, moveBy(x, y));
      expect(numbersOf(drawingOf(shapeOf(moved)))).toEqual(numbersOf(drawingOf(shapeOf(path))));
    }),
    { seed, numRuns: 200 },
  );
});

describe('numbers differ where the paint differs', () => {
  const circle = shapeOf(circlePath(10, 10, 4));
  const line = { colour: '#000000', widthMm: 0.3 } as const;
  const other = (node: object): PlacedShape => ({ ...circle, node: { ...circle.node, ...node } });
  const clip = { path: rectanglePath(8, 8, 4, 4), transform: IDENTITY };
  const all = [
    circle,
    other({ fill: '#123457' }),
    other({ rule: 'evenodd' }),
    other({ stroke: line }),
    other({ stroke: { ...line, widthMm: 0.4 } }),
    other({ stroke: { ...line, colour: '#000001' } }),
    other({ stroke: { ...line, ends: 'square' } }),
    other({ stroke: { ...line, dashMm: [1, 2] } }),
    other({ fill: undefined, stroke: line }),
    { ...circle, clips: [clip] },
    { ...circle, clips: [{ ...clip, transform: moveBy(1, 0) }] },
  ].map((shape) => numbersOf(drawingOf(shape)).join(' '));

  test('in colour, rule, line, width, ends, dashes or clip', () => {
    expect(new Set(all).size).toBe(all.length);
  });
});

test('an outline on a grid is written in steps of the grid, and lies where it did', () => {
  const path = Array.from({ length: 40 }, (_, at) =>
    rectanglePath(at * 0.9, at * 0.45, 0.45, 0.45),
  );
  const content = contentOf(drawingOf(shapeOf(path.flat())));
  expect(content).toContain('q 45 0 0 45 0 0 cm\n0 0 m 1 0 l 1 1 l 0 1 l h 2 1 m ');
  const wanted = pointsOf(path.flat());
  pointsOn(content).forEach(([x, y], at) => {
    expect(x).toBeCloseTo(wanted[at]?.[0] ?? Number.NaN, 6);
    expect(y).toBeCloseTo(wanted[at]?.[1] ?? Number.NaN, 6);
  });
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, 1e12])('a point at %s is a defect', (x) => {
  const far: Path = [
    ['M', 0, 0],
    ['L', x, 0],
  ];
  expect(() => drawingOf(shapeOf(far))).toThrow('expected a finite one');
});
