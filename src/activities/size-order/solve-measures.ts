// What a child may go by when it says that one figure is bigger, measured from each figure as printed.
import { flattenPath, pathBounds } from '../../base/index.ts';
import {
  COUNT_RATIO_FLOOR,
  type Figure,
  formOf,
  outlineOf,
  SIZE_RATIO_FLOOR,
} from '../../figures/index.ts';

/** Whether the figure at the first place is bigger than that at the second in all that can be gone by. */
export type SurelyBigger = (one: number, other: number) => boolean;

export function surelyBigger(figures: readonly Figure[]): SurelyBigger {
  const measures = measuresOf(figures);
  return (one, other) =>
    measures.every(({ amounts, floor }) => (amounts[one] ?? 0) >= floor * (amounts[other] ?? 0));
}

interface Measure {
  /** Of each figure. */
  readonly amounts: readonly number[];
  /** The bigger has at least so many times as much. */
  readonly floor: number;
}

/** Ink that is the same on all cards, dot sizes being rounded. */
const NO_LESS_INK = 0.99;

/** Of dots the number; but that of more dots there is less ink would be seen first. */
function measuresOf(figures: readonly Figure[]): readonly Measure[] {
  if (figures.every((figure) => formOf(figure) === 'dots')) {
    return [
      { amounts: figures.map(({ count = 1 }) => count), floor: COUNT_RATIO_FLOOR },
      { amounts: figures.map(inkOf), floor: NO_LESS_INK },
    ];
  }
  const measures = isOneForm(figures)
    ? [({ size = 1 }: Figure) => size]
    : [widthOf, heightOf, sideOf];
  return measures.map((measure) => ({ amounts: figures.map(measure), floor: SIZE_RATIO_FLOOR }));
}

/** The area of all dots together, in that of one usual dot. */
function inkOf({ count = 1, dotSize = 1 }: Figure): number {
  return count * dotSize ** 2;
}

/** Whether all are one form that lies one way, so that only one thing can be bigger about them. */
export function isOneForm(figures: readonly Figure[]): boolean {
  const [first = {}] = figures;
  return figures.every(
    (figure) =>
      formOf(figure) === formOf(first) &&
      (figure.turn ?? 0) === (first.turn ?? 0) &&
      (figure.mirrored ?? false) === (first.mirrored ?? false),
  );
}

function widthOf(figure: Figure): number {
  const { left, right } = pathBounds(outlineOf(figure).path);
  return right - left;
}

function heightOf(figure: Figure): number {
  const { top, bottom } = pathBounds(outlineOf(figure).path);
  return bottom - top;
}

/** The side of a square as large as the figure; lines that are drawn have no area of their own. */
function sideOf(figure: Figure): number {
  const twice = flattenPath(outlineOf(figure).path).map((points) =>
    points.reduce((sum, point, index) => {
      const before = points.at(index - 1) ?? point;
      return sum + before.x * point.y - point.x * before.y;
    }, 0),
  );
  return Math.sqrt(Math.abs(twice.reduce((sum, next) => sum + next, 0)) / 2);
}
