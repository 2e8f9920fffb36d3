// Paths on the page: both presses put every point within half a hundredth of a millimetre of its place.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import {
  IDENTITY,
  type Path,
  type PathStep,
  type Transform,
  transformPath,
} from '../base/index.ts';
import { Operators } from './operators.ts';
import { scaleOf, svgPath, writePdfPath } from './placing.ts';

const seed = testSeed('placing');
const ROUNDING = 0.005 + 1e-6;

const lengths = fc.double({ min: -50, max: 50, noNaN: true });
const lines = fc.tuple(lengths, lengths).map(([x, y]): PathStep => ['L', x, y]);
const curves = fc
  .tuple(lengths, lengths, lengths, lengths, lengths, lengths)
  .map((ends): PathStep => ['C', ...ends]);
const closed = fc.constant<PathStep>(['Z']);
const paths = fc
  .tuple(lengths, lengths, fc.array(fc.oneof(lines, curves, closed), { maxLength: 60 }))
  .map(([x, y, steps]): Path => [['M', x, y], ...steps]);

/** Reads SVG path text back into points of the page, as its grammar says. */
function readSvg(text: string): number[][] {
  let [x, y, startX, startY] = [0, 0, 0, 0];
  return [...text.matchAll(/([Mlcz])([^Mlcz]*)/g)].map(([, letter, rest]) => {
    const numbers = (rest?.match(/-?(\d+\.?\d*|\.\d+)/g) ?? []).map(Number);
    const [fromX, fromY] = letter === 'M' ? [0, 0] : [x, y];
    const ends = numbers.map((number, index) => number + (index % 2 === 0 ? fromX : fromY));
    [x, y] = letter === 'z' ? [startX, startY] : [ends.at(-2) ?? x, ends.at(-1) ?? y];
    if (letter === 'M') [startX, startY] = [x, y];
    return ends;
  });
}

function pdfPath(path: Path, transform: Transform): string {
  const operators = new Operators();
  writePdfPath(path, transform, operators);
  return new TextDecoder().decode(operators.written).trimEnd();
}

/** Reads the operators, in hundredths of a millimetre, back into points of the page. */
function readPdf(text: string): number[][] {
  return text
    .split(/[mlch]/)
    .slice(0, -1)
    .map((part) =>
      part
        .split(' ')
        .filter((word) => word !== '')
        .map((word) => Number(word) / 100),
    );
}

test('sixty steps on, roundings have not added up', () => {
  fc.assert(
    fc.property(paths, (path) => {
      for (const read of [readSvg(svgPath(path, IDENTITY)), readPdf(pdfPath(path, IDENTITY))]) {
        expect(read).toHaveLength(path.length);
        path.forEach(([, ...ends], step) => {
          expect(read[step]).toHaveLength(ends.length);
          ends.forEach((end, index) => {
            expect(Math.abs((read[step]?.[index] ?? Number.NaN) - end)).toBeLessThanOrEqual(
              ROUNDING,
            );
          });
        });
      }
    }),
    { seed, numRuns: 40 },
  );
});

test('a transform is applied before rounding', () => {
  const path: Path = [['M', 0.001, 0.002], ['L', 0.5, 0.25], ['Z']];
  expect(svgPath(path, [100, 0, 0, 100, 5, 7])).toBe(
    svgPath(transformPath(path, [100, 0, 0, 100, 5, 7]), IDENTITY),
  );
  expect(svgPath(path, [100, 0, 0, 100, 5, 7])).toBe('M5.1 7.2l49.9 24.8z');
  expect(pdfPath(path, [100, 0, 0, 100, 5, 7])).toBe('510 720 m 5500 3200 l h');
});

test('a line widens with the drawing that it is part of, turned or mirrored', () => {
  expect(scaleOf([2, 0, 0, 2, 9, 9])).toBe(2);
  expect(scaleOf([0, 3, -3, 0, 0, 0])).toBe(3);
  expect(scaleOf([-1, 0, 0, 1, 0, 0])).toBe(1);
});
