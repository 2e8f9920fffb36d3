// What cannot be asked for together, and why: each refusal names the parameter and what would do.
import { type Refusal, type Told, told } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { isCrossable, mostCrossed, mostLines } from './crossed.ts';
import { fewestGiven } from './givens.ts';
import { FEWEST_LINES, ID, PARAMETERS, type TableValues } from './task.ts';

/** Lines from more figures than these cross each other all over the table. */
const MOST_JOINED = 6;
/** Two rows of loose figures, as many as have room across a page, one that belongs nowhere included. */
const MOST_LOOSE = 12;
const MOST_LOOSE_SIZED = 8;

/** Empty where the values are valid; of values that depend on each other the first that fails is named. */
export function limitsOf(values: TableValues, style: PrintStyle): readonly Refusal[] {
  const first = [
    () => responseRefusal(values),
    () => linesRefusal(values, style),
    () => extraRefusal(values, style),
    () => emptyRefusal(values),
  ];
  for (const check of first) {
    const refusal = check();
    if (refusal) return [refusal];
  }
  return [];
}

function responseRefusal({ content, response }: TableValues): Refusal | undefined {
  if (response !== 'draw' || content !== 'textures') return undefined;
  return {
    code: 'not-a-choice',
    at: at('response'),
    got: response,
    choices: PARAMETERS.response.values.filter((one) => one !== 'draw'),
    nearest: 'cut',
    because: told('crossing-table', 'no.draw'),
  };
}

function linesRefusal(values: TableValues, style: PrintStyle): Refusal | undefined {
  const most = mostCrossed(values.content, style);
  for (const [place, name] of (['rows', 'columns'] as const).entries()) {
    const got = values[name];
    const max = Math.min(PARAMETERS[name].max, mostLines(values.content), most[place] ?? 1);
    if (got <= max) continue;
    const because = told('crossing-table', 'no.lines');
    return { code: 'out-of-range', at: at(name), got, min: FEWEST_LINES, max, because };
  }
  return undefined;
}

/** A figure that belongs nowhere has a value that no row, or no column, has. */
function extraRefusal(values: TableValues, style: PrintStyle): Refusal | undefined {
  const { response, extra: got } = values;
  if (got === 0 || (response !== 'draw' && isCrossable(values, style))) return undefined;
  const because =
    response === 'draw' ? told('crossing-table', 'no.drawn') : told('crossing-table', 'no.extra');
  return { code: 'out-of-range', at: at('extra'), got, min: 0, max: 0, because };
}

function emptyRefusal(values: TableValues): Refusal | undefined {
  const { empty: got } = values;
  const bounds = boundsOf(values);
  const bound = bounds.reduce((least, next) => (next.max < least.max ? next : least));
  if (got <= bound.max) return undefined;
  return { code: 'out-of-range', at: at('empty'), got, min: 1, ...bound };
}

interface Bound {
  readonly max: number;
  readonly because: Told;
}

function boundsOf(values: TableValues): readonly [Bound, ...Bound[]] {
  const { rows, columns, response, content, extra } = values;
  const given = fewestGiven(values);
  const cells: Bound = {
    max: rows * columns - given,
    because:
      given === 0
        ? told('crossing-table', 'no.cells', { count: rows * columns })
        : told('crossing-table', 'no.filled', { least: given }),
  };
  const loose: Bound = {
    max: (content.endsWith('sizes') ? MOST_LOOSE_SIZED : MOST_LOOSE) - extra,
    because: told('crossing-table', 'no.loose'),
  };
  const joined: Bound = {
    max: MOST_JOINED,
    because: told('crossing-table', 'no.joined'),
  };
  return [cells, ...(response === 'draw' ? [] : [loose]), ...(response === 'join' ? [joined] : [])];
}

function at(name: keyof TableValues): string {
  return `${ID} › ${name}`;
}
