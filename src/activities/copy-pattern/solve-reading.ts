// Reads printed figures as marks that can be compared, and says what cannot be read.
import { type Figure, formOf } from '../../figures/index.ts';
import type { ColourName } from '../../palette/index.ts';
import type { Cells, Model } from './task.ts';

/** A spot of the frame, in half steps from its top left corner; slope tells the lines of a lattice apart. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly slope: 'cell' | 'level' | 'upright' | 'rising' | 'falling';
}

/** What stands on a spot: `circle red`, `square blue`, `line`; empty text: nothing. */
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

export function marksOf(cells: Cells): readonly Mark[] {
  return cells.map((figure) => (figure === null ? '' : markOf(figure)));
}

/** Whether everything given is wanted there; what is free fits anything. */
export function fits(given: readonly Mark[], wanted: readonly Mark[]): boolean {
  return given.every((mark, index) => mark === '' || mark === wanted[index]);
}

function markOf(figure: Figure): Mark {
  const form = formOf(figure);
  return slopeOf(figure) ? 'line' : `${form} ${figure.colour ?? INK_COLOUR}`;
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

/** Why the figures cannot stand where they are; `where` names the model or the box. */
export function figureFaults(
  cells: Cells,
  spots: readonly Spot[],
  where: string,
): readonly string[] {
  return cells.flatMap((figure, index) => {
    const slope = spots[index]?.slope;
    if (figure === null || slope === undefined) return [];
    const fault = slope === 'cell' ? cellFault(figure) : lineFault(figure, slope);
    return fault ? [`${where}, place ${index + 1}: ${fault}`] : [];
  });
}

function cellFault(figure: Figure): string | undefined {
  const form = formOf(figure);
  if (form !== 'circle' && form !== 'square') return `${form} is neither a dot nor a filled cell`;
  return isPlain(figure) ? undefined : 'a figure must be plain: solid, upright and full size';
}

function lineFault(figure: Figure, slope: Spot['slope']): string | undefined {
  const own = slopeOf(figure);
  if (own === undefined) return `expected a line, got ${formOf(figure)}`;
  if (own !== slope) return `expected a line that is ${slope}, got one that is ${own}`;
  const isOfInk = figure.colour === undefined || figure.colour === INK_COLOUR;
  return isOfInk && isPlain({ ...figure, turn: 0 }) ? undefined : 'a line must be plain and of ink';
}

function isPlain({ size = 1, turn = 0, mirrored = false, fill = 'solid' }: Figure): boolean {
  return size === 1 && turn === 0 && !mirrored && fill === 'solid';
}
