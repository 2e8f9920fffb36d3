// Drawings as operators of a PDF content stream whose unit is a hundredth of a millimetre, y down.
import { type Drawing, eachPoint, PART, STEP, WITH } from './drawing.ts';
import { factorText } from './numbers.ts';
import type { Operators } from './operators.ts';

/** What the graphics state holds, so that nothing is said twice. */
export interface Pen {
  /** Where the origin lies on the page, in hundredths of a millimetre. */
  x: number;
  y: number;
  /** Colours as `0xrrggbb`. */
  fill?: number;
  line?: number;
  width?: number;
  isSquare?: boolean;
  dash?: string;
}

/** Moves the origin there. */
export function moveTo(x: number, y: number, to: Operators, pen: Pen): void {
  if (pen.x === x && pen.y === y) return;
  to.text('1 0 0 1 ');
  to.whole(x - pen.x);
  to.whole(y - pen.y);
  to.text('cm\n');
  pen.x = x;
  pen.y = y;
}

/** Draws about the origin with the pen as it is, and leaves it as it leaves the page. */
export function writeDrawing(drawing: Drawing, to: Operators, pen: Pen): void {
  const { numbers, length } = drawing;
  const grid = gridOf(drawing);
  let held = pen;
  let at = 0;
  while (at < length) {
    const part = numbers[at++] as number;
    if (part === PART.paint) at = writePaint(numbers, at, grid, to, held);
    else if (part === PART.unclip) {
      to.text('Q\n');
      held = pen;
    } else {
      to.text('q\n');
      // What is set inside a clip is thrown away with it.
      held = { ...pen };
      for (let left = numbers[at++] as number; left > 0; left--) {
        at = writePath(numbers, at, 1, to);
        to.text('W n\n');
      }
    }
  }
}

/** Drawings of more numbers than most are looked at for a grid that they lie on. */
const MANY_NUMBERS = 100;

/** The widest grid, in hundredths, on which all points of one filled outline lie, such as the modules of a QR code. */
function gridOf({ numbers, length }: Drawing): number {
  const isFilledAlone = numbers[0] === PART.paint && ((numbers[1] as number) & WITH.line) === 0;
  if (length < MANY_NUMBERS || !isFilledAlone) return 1;
  let grid = 0;
  const narrow = (value: number) => {
    let rest = Math.abs(value);
    while (rest > 0) {
      const over = grid % rest;
      grid = rest;
      rest = over;
    }
  };
  const end = eachPoint(numbers, FILLED_PATH_AT, (x, y) => {
    narrow(x);
    narrow(y);
  });
  return end === length && grid > 1 ? grid : 1;
}

/** Behind what it is, how it is painted, and its colour. */
const FILLED_PATH_AT = 3;

/** Tells where the next part begins. */
function writePaint(
  numbers: Int32Array,
  from: number,
  grid: number,
  to: Operators,
  pen: Pen,
): number {
  let at = from;
  const how = numbers[at++] as number;
  const isFilled = (how & WITH.fill) > 0;
  const isLined = (how & WITH.line) > 0;
  if (isFilled) setFill(numbers[at++] as number, to, pen);
  if (isLined) at = setLine(numbers, at, (how & WITH.square) > 0, to, pen);
  // Small numbers are shorter, and are packed sooner.
  if (grid > 1) to.text(`q ${grid} 0 0 ${grid} 0 0 cm\n`);
  at = writePath(numbers, at, grid, to);
  to.text(isFilled ? (isLined ? 'B' : 'f') : 'S');
  to.text((how & WITH.evenodd) > 0 ? '*\n' : '\n');
  if (grid > 1) to.text('Q\n');
  return at;
}

/** `colour` is `0xrrggbb`. */
export function setFill(colour: number, to: Operators, pen: Pen): void {
  if (pen.fill === colour) return;
  pen.fill = colour;
  to.text(`${inks(colour)} rg\n`);
}

function setLine(
  numbers: Int32Array,
  from: number,
  isSquare: boolean,
  to: Operators,
  pen: Pen,
): number {
  const colour = numbers[from] as number;
  const width = numbers[from + 1] as number;
  const end = from + 3 + (numbers[from + 2] as number);
  const dash = end === from + 3 ? '' : numbers.subarray(from + 3, end).join(' ');
  if (pen.line !== colour) to.text(`${inks(colour)} RG\n`);
  if (pen.width !== width) to.text(`${width} w\n`);
  // Mitres as in SVG, whose limit is 4 where nothing is said (ISO 32000 says 10).
  if (pen.isSquare !== isSquare) to.text(isSquare ? '0 J 0 j 4 M\n' : '1 J 1 j\n');
  if (pen.dash !== dash) to.text(`[${dash}] 0 d\n`);
  pen.line = colour;
  pen.width = width;
  pen.isSquare = isSquare;
  pen.dash = dash;
  return end;
}

/** By the number of a step. */
const OPERATORS = ['', 'm ', 'l ', 'c ', 'h '] as const;

function writePath(numbers: Int32Array, from: number, grid: number, to: Operators): number {
  const end = from + 1 + (numbers[from] as number);
  let at = from + 1;
  while (at < end) {
    const step = numbers[at++] as number;
    const next = at + (step === STEP.Z ? 0 : step === STEP.C ? 6 : 2);
    while (at < next) to.whole((numbers[at++] as number) / grid);
    to.text(OPERATORS[step] as string);
  }
  return end;
}

const known = new Map<number, string>();

/** A colour as three shares of light; there are few of them, each worked out once. */
function inks(colour: number): string {
  const found = known.get(colour);
  if (found !== undefined) return found;
  const shares = [colour >> 16, (colour >> 8) & 255, colour & 255]
    .map((share) => factorText(share / 255))
    .join(' ');
  known.set(colour, shares);
  return shares;
}
