// What cannot be asked for together, and why: each refusal names the parameter and the nearest that would do.
import { type Refusal, told } from '../../base/index.ts';
import { attributesOf } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { shortOfColours } from '../colours-at-hand.ts';
import { fieldOf, mostBeside, mostCrossings } from './field.ts';
import { mostStarts } from './figures.ts';
import { ID, type LineValues, PARAMETERS, valuesFor } from './task.ts';

/** Empty where the values are valid; of numbers that depend on each other the first that fails is named. */
export function limitsOf(asked: LineValues, style: PrintStyle): readonly Refusal[] {
  const values = valuesFor(asked, style);
  const number = linesRefusal(values, style) ?? crossingsRefusal(values);
  return [responseRefusal(values), number, coloursRefusal(values, style)].filter(
    (refusal) => refusal !== undefined,
  );
}

function responseRefusal({ content, response }: LineValues): Refusal | undefined {
  const attributes = attributesOf(content);
  const isColour = attributes.length === 1 && attributes[0] === 'colour';
  const allowed = PARAMETERS.response.values.filter(
    (value) =>
      (value !== 'sticker' || isColour) && (value !== 'colour-in' || attributes.includes('colour')),
  );
  if (allowed.includes(response)) return undefined;
  const because =
    response === 'sticker'
      ? told('follow-the-line', 'no.sticker')
      : told('follow-the-line', 'no.colour-in');
  return {
    code: 'not-a-choice',
    at: at('response'),
    got: response,
    choices: allowed,
    nearest: 'point',
    because,
  };
}

function linesRefusal(values: LineValues, style: PrintStyle): Refusal | undefined {
  const { content, lines, direction } = values;
  const { min, max } = PARAMETERS.lines;
  const apart = Math.min(max, mostStarts(content, style));
  const beside = mostBeside(direction, fieldOf(values));
  const most = Math.min(apart, beside);
  if (lines <= most) return undefined;
  const because =
    beside < apart
      ? told('follow-the-line', 'no.beside')
      : told('follow-the-line', 'no.starts', { content: { content } });
  return { code: 'out-of-range', at: at('lines'), got: lines, min, max: most, because };
}

/** Lines that have colours have each its own. */
function coloursRefusal(
  { lines, lineColours }: LineValues,
  style: PrintStyle,
): Refusal | undefined {
  return lineColours === 'ink' ? undefined : shortOfColours(ID, lines, style);
}

function crossingsRefusal(values: LineValues): Refusal | undefined {
  const { lines, crossings } = values;
  const max = mostCrossings(lines, fieldOf(values));
  if (lines === 2 && crossings % 2 === 0 && crossings > 0) {
    const odd = [1, 3].filter((count) => count <= max);
    return {
      code: 'not-a-choice',
      at: at('crossings'),
      got: crossings,
      choices: ['0', ...odd.map(String)],
      nearest: String(Math.max(...odd.filter((count) => count < crossings))),
      because: told('follow-the-line', 'no.even'),
    };
  }
  if (crossings <= max) return undefined;
  const because = told('follow-the-line', 'no.crossings', { lines, most: max });
  return { code: 'out-of-range', at: at('crossings'), got: crossings, min: 0, max, because };
}

function at(name: keyof LineValues): string {
  return `${ID} › ${name}`;
}
