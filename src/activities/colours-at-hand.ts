// Refusals where a sheet has few colours: which values would do with them, and which colours are wanting.
import { type Refusal, type Told, told } from '../base/index.ts';
import type { PrintStyle } from '../page/index.ts';
import {
  COLOUR_NAMES,
  type ColourName,
  coloursOf,
  FIGURE_COLOURS,
  mostFairColours,
} from '../palette/index.ts';
import type { Parameter, ParameterSpecs, Value, Values } from './parameters.ts';

/** What an activity refuses of values that are each within their own range. */
export type Limits = (values: Values, style: PrintStyle) => readonly Refusal[];

/**
 * A refusal where a task would need `needed` colours of `among` and the sheet has fewer that every child can
 * tell apart; none where a sheet may have all colours. `refusalsWithColours` says what would do instead.
 */
export function shortOfColours(
  id: string,
  needed: number,
  style: PrintStyle,
  among: readonly ColourName[] = FIGURE_COLOURS,
): Refusal | undefined {
  if (style.colours === undefined || needed <= fairAmong(style, among)) return undefined;
  const got = style.colours.length;
  return {
    code: 'out-of-range',
    at: `${id} › colours`,
    got,
    min: needed,
    max: COLOUR_NAMES.length,
  };
}

function fairAmong(style: PrintStyle, among: readonly ColourName[]): number {
  return mostFairColours('colour', coloursOf(style, among));
}

/**
 * What an activity refuses. Where it is the few colours that keep the values from being had, the refusal
 * names a single value that can be changed so that they suffice, and says what there is.
 */
export function refusalsWithColours(
  id: string,
  specs: ParameterSpecs,
  limits: Limits,
  values: Values,
  style: PrintStyle,
): readonly Refusal[] {
  const { print, colours } = style;
  const refusals = limits(values, style);
  if (refusals.length === 0 || colours === undefined) return refusals;
  const anyway = limits(values, { print });
  if (anyway.length > 0) return anyway;
  const because = becauseOf(style);
  const wouldDo = (name: string, value: Value) =>
    limits({ ...values, [name]: value }, style).length === 0;
  const named = refusals.map(({ at }) => at.slice(`${id} › `.length));
  const inOrder = [...new Set([...named, ...BLAMED_FIRST, ...Object.keys(specs)])];
  for (const name of inOrder) {
    const spec = specs[name];
    const possible = spec ? valuesOf(spec).filter((value) => wouldDo(name, value)) : [];
    if (possible.length > 0) return [refusalOf(id, name, values, possible, because)];
  }
  return [refusalOf(id, 'content', values, contentsFor(specs, limits, values, style), because)];
}

/** Where more than one value must change: contents that go with one change more, else those without colours, else others. */
function contentsFor(
  specs: ParameterSpecs,
  limits: Limits,
  values: Values,
  style: PrintStyle,
): readonly Value[] {
  const contents = specs.content ? valuesOf(specs.content) : [];
  const changes = Object.entries(specs).flatMap(([name, spec]) =>
    valuesOf(spec).map((value) => ({ [name]: value })),
  );
  const near = contents.filter((content) =>
    changes.some((change) => limits({ ...values, ...change, content }, style).length === 0),
  );
  if (near.length > 0) return near;
  const facts = (content: Value, printed: PrintStyle) =>
    JSON.stringify(limits({ ...values, content }, printed));
  const colourless = contents.filter(
    (content) => facts(content, style) === facts(content, { print: style.print }),
  );
  if (colourless.length > 0) return colourless;
  return contents.filter((content) => content !== values.content);
}

/** What a person changes most readily; the content, which the task is about, comes late. */
const BLAMED_FIRST = ['response', 'content'] as const;

function valuesOf(parameter: Parameter): readonly Value[] {
  switch (parameter.kind) {
    case 'whole':
      return Array.from(
        { length: parameter.max - parameter.min + 1 },
        (_, index) => parameter.min + index,
      );
    case 'choice':
      return parameter.values;
    case 'yes-no':
      return [false, true];
  }
}

function refusalOf(
  id: string,
  name: string,
  values: Values,
  possible: readonly Value[],
  because: Told,
): Refusal {
  const at = `${id} › ${name}`;
  const got = values[name] ?? null;
  const numbers = possible.filter((value) => typeof value === 'number');
  const [min, max] = [Math.min(...numbers), Math.max(...numbers)];
  if (numbers.length > 0 && max - min + 1 === numbers.length) {
    return { code: 'out-of-range', at, got, min, max, because };
  }
  const apart = (value: number) => Math.abs(value - Number(got));
  const [nearest = possible[0]] = [...numbers].sort((one, other) => apart(one) - apart(other));
  const choices = possible.map(String);
  return { code: 'not-a-choice', at, got, choices, nearest: String(nearest), because };
}

/** What there is, and how much of it can be told apart as it is printed. */
function becauseOf(style: PrintStyle): Told {
  const count = new Set(style.colours).size;
  const fair = mostFairColours(style.print, coloursOf(style));
  if (fair === 0) return told('reasons', 'colours.none', { count });
  if (fair === count) return told('reasons', 'colours.few', { count });
  return style.print === 'grey'
    ? told('reasons', 'colours.fair.grey', { count, fair })
    : told('reasons', 'colours.fair', { count, fair });
}
