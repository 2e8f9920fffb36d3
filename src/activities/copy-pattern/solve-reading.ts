// Reads printed figures as marks that can be compared, and says what cannot be read.
import { type Told, told } from '../../base/index.ts';
import { type Figure, formOf, plainest, stanceOf } from '../../figures/index.ts';
import type { ColourName } from '../../palette/index.ts';
import type { Cells, Model } from './task.ts';

/** A spot of the frame, in half steps from its top left corner; slope tells the lines of a lattice apart. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly slope: 'cell' | 'level' | 'upright' | 'rising' | 'falling';
}

/** What stands on a spot: `circle red`, `triangle 90 outline black`, `line`; empty text: nothing. */
export type Mark = string;

/** The colour that ink counts as. */
const INK_COLOUR: ColourName = 'black';

/** The spots that `cells` stands for, by their number alone; undefined: neither grid nor lattice. */
export function spotsOf({ rows, columns, cells }: Model): readonly Spot[] | undefined {
  const each = (down: number, across: number, x: number, y: number, slope: Spot['slope']) => {
    const spots: Spot[] = [];
    for (let row = 0; row < down; row++) {
      for (let column = 0; column < across; column++) {
        spots.push({ x: 2 * column + x, y: 2 * row + y, slope });
      }
    }
    return spots;
  };
  const grid = each(rows, columns, 0, 0, 'cell');
  if (cells.length === grid.length) return grid;
  const lattice = [
    ...each(rows, columns - 1, 1, 0, 'level'),
    ...each(rows - 1, columns, 0, 1, 'upright'),
    ...each(rows - 1, columns - 1, 1, 1, 'rising'),
    ...each(rows - 1, columns - 1, 1, 1, 'falling'),
  ];
  return cells.length === lattice.length ? lattice : undefined;
}

/** The marks of a model's cells, or of a box that has as many. */
export function marksOf(cells: Cells, { rows, columns }: Model): readonly Mark[] {
  const isGrid = cells.length === rows * columns;
  return cells.map((figure) => (figure === null ? '' : isGrid ? markOf(figure) : LINE));
}

/** On a lattice the place tells the line. */
const LINE: Mark = 'line';

/** Whether everything given is wanted there; what is free fits anything. */
export function fits(given: readonly Mark[], wanted: readonly Mark[]): boolean {
  return given.every((mark, index) => mark === '' || mark === wanted[index]);
}

function markOf(figure: Figure): Mark {
  const plain = plainest(figure);
  const { turn } = stanceOf(plain);
  const { fill = 'solid', colour = INK_COLOUR } = plain;
  const lies = turn === 0 ? [] : [turn];
  return [formOf(plain), ...lies, ...(fill === 'solid' ? [] : [fill]), colour].join(' ');
}

/** How far each line is turned from the upright before its own turn, in degrees. */
const STARTS: Readonly<Record<string, number>> = { 'sign-upright-line': 0, 'sign-level-line': 90 };

/** The slope of a line that is turned so far from the upright. */
const SLOPES: Readonly<Record<number, Spot['slope']>> = {
  0: 'upright',
  45: 'rising',
  90: 'level',
  135: 'falling',
};

/** The direction in which a straight line lies; undefined for other figures. */
function slopeOf(figure: Figure): Spot['slope'] | undefined {
  const start = STARTS[formOf(figure)];
  if (start === undefined || figure.mirrored) return undefined;
  return SLOPES[(start + (figure.turn ?? 0)) % 180];
}

/** Why the figures cannot stand where they are; `box` is the number of the box, 0 the model. */
export function figureFaults(cells: Cells, spots: readonly Spot[], box: number): readonly Told[] {
  return cells.flatMap((figure, index) => {
    const slope = spots[index]?.slope;
    if (figure === null || slope === undefined) return [];
    const where = { box, place: index + 1 };
    return slope === 'cell' ? cellFaults(figure, where) : lineFaults(figure, slope, where);
  });
}

interface Where {
  readonly box: number;
  readonly place: number;
}

function cellFaults(figure: Figure, where: Where): readonly Told[] {
  const { fill = 'solid', colour } = figure;
  const isInkOutline = fill === 'outline' && colour === undefined;
  return isPlain({ ...figure, turn: 0, fill: isInkOutline ? 'solid' : fill })
    ? []
    : [told('copy-pattern', 'fault.cell', { ...where })];
}

function lineFaults(figure: Figure, slope: Spot['slope'], where: Where): readonly Told[] {
  const own = slopeOf(figure);
  if (own === undefined) {
    const got = { figure: { form: formOf(figure) } };
    return [told('copy-pattern', 'fault.no-line', { ...where, figure: got })];
  }
  if (own !== slope) return [told('copy-pattern', 'fault.slope', { ...where, slope, own })];
  const isOfInk = figure.colour === undefined || figure.colour === INK_COLOUR;
  return isOfInk && isPlain({ ...figure, turn: 0 })
    ? []
    : [told('copy-pattern', 'fault.plain-line', { ...where })];
}

function isPlain({ size = 1, turn = 0, mirrored = false, fill = 'solid' }: Figure): boolean {
  return size === 1 && turn === 0 && !mirrored && fill === 'solid';
}
