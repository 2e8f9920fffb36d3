// What cannot be asked for together, and why: each refusal names the parameter and what would do.
import { type Refusal, type Told, told } from '../../base/index.ts';
import {
  type Attribute,
  attributesOf,
  type ContentId,
  formsOf,
  isPicture,
  mostValues,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { certainGaps } from './certain.ts';
import { isChosen, unitsOf, valuesNeeded } from './generate.ts';
import { mostPlaces } from './measures.ts';
import { FEWEST_SHOWN, ID, MOST_MISSING, MOST_SHOWN, PARAMETERS, type RowValues } from './task.ts';
import { letterCount, UNITS } from './units.ts';

/** More sizes than three leave the smallest too small in a row. */
const MOST_SIZES = 3;

/** Empty where the values are valid; of numbers that depend on each other the first that fails is named. */
export function limitsOf(values: RowValues, style: PrintStyle): readonly Refusal[] {
  const first = [
    () => responseRefusal(values),
    () => secondRefusal(values),
    () => unitRefusal(values, style),
    () => ringRefusal(values),
    () => choicesRefusal(values, style),
    () => missingRefusal(values),
    () => shownRefusal(values),
  ];
  for (const check of first) {
    const refusal = check();
    if (refusal) return [refusal];
  }
  return [];
}

function responseRefusal({ content, response }: RowValues): Refusal | undefined {
  const because = responseFault(content, response);
  if (because === undefined) return undefined;
  const possible = PARAMETERS.response.values.filter(
    (one) => responseFault(content, one) === undefined,
  );
  const nearest = NEAREST[response].find((one) => possible.includes(one)) ?? 'ring';
  return refusal('response', response, possible, nearest, because);
}

/** What to offer instead, the likest first. */
const NEAREST: Readonly<Record<RowValues['response'], readonly RowValues['response'][]>> = {
  sticker: ['colour-in', 'draw', 'point'],
  'colour-in': ['draw', 'point'],
  draw: ['colour-in', 'ring'],
  point: [],
  ring: [],
};

/** In grey print each dot carries the mark of its colour, which tells its sticker or crayon. */
function responseFault(content: ContentId, response: RowValues['response']): Told | undefined {
  const isOfColours = content === 'colours';
  switch (response) {
    case 'sticker':
      return isOfColours ? undefined : told('reasons', 'sticker-colour');
    case 'colour-in':
      return isOfColours ? undefined : told('reasons', 'outline');
    case 'draw':
      if (isOfColours) return told('reasons', 'only-colour');
      return formsOf(content).some(isPicture) ? told('reasons', 'pictures') : undefined;
    default:
      return undefined;
  }
}

function secondRefusal({ content, second }: RowValues): Refusal | undefined {
  if (second === 'same' || attributesOf(content).length > 1) return undefined;
  const because = told('continue-row', 'no.one-thing');
  return refusal('second', second, ['same'], 'same', because);
}

/** A unit with more different figures than the content has, or than a row of the least length shows twice. */
function unitRefusal(values: RowValues, style: PrintStyle): Refusal | undefined {
  for (const name of ['unit', 'second'] as const) {
    const got = values[name];
    const possible = PARAMETERS[name].values.filter((one) =>
      hasValues({ ...values, choices: 2, [name]: one }, style),
    );
    if (possible.some((one) => one === got)) continue;
    const nearest = nearestUnit(got, possible);
    return refusal(name, got, possible, nearest, told('reasons', 'no-more'));
  }
  return undefined;
}

/** The last that is as long, else the last. */
function nearestUnit(got: string, possible: readonly string[]): string {
  return possible.filter((one) => one.length === got.length).at(-1) ?? possible.at(-1) ?? 'AB';
}

function hasValues(values: RowValues, style: PrintStyle): boolean {
  return Object.entries(valuesNeeded(values)).every(
    ([attribute, count]) => count <= mostOf(values.content, attribute as Attribute, style),
  );
}

function mostOf(content: ContentId, attribute: Attribute, style: PrintStyle): number {
  const most = mostValues(content, attribute, style);
  return attribute === 'size' ? Math.min(most, MOST_SIZES) : most;
}

function choicesRefusal(values: RowValues, style: PrintStyle): Refusal | undefined {
  if (!isChosen(values)) return undefined;
  const { choices: got } = values;
  const { min, max } = PARAMETERS.choices;
  const most =
    counted(min, max)
      .filter((choices) => hasValues({ ...values, choices }, style))
      .at(-1) ?? max;
  if (got > most) {
    const because = told('reasons', 'no-more');
    return { code: 'out-of-range', at: at('choices'), got, min, max: most, because };
  }
  const kinds = mostKinds(values);
  if (got > kinds) return undefined;
  const because = told('continue-row', 'no.wrong-one', { count: kinds });
  return most > kinds
    ? { code: 'out-of-range', at: at('choices'), got, min: kinds + 1, max: most, because }
    : {
        code: 'out-of-range',
        at: at('missing'),
        got: values.missing,
        min: 1,
        max: most - 1,
        because,
      };
}

/** How many different figures can be missing at once at most. */
function mostKinds({ unit, missing, ...rest }: RowValues): number {
  const [first = unit, second = first] = unitsOf({ unit, missing, ...rest });
  return Math.min(missing, second === first ? letterCount(unit) : missing);
}

function ringRefusal({ missing: got, response }: RowValues): Refusal | undefined {
  if (response !== 'ring' || got === 1) return undefined;
  const because = told('continue-row', 'no.ring');
  return { code: 'out-of-range', at: at('missing'), got, min: 1, max: 1, because };
}

/** A row needs places for what is missing besides what is shown. */
function missingRefusal(values: RowValues): Refusal | undefined {
  const { missing: got } = values;
  const possible = counted(1, MOST_MISSING).filter(
    (missing) => shownPossible({ ...values, missing }).length > 0,
  );
  if (possible.includes(got)) return undefined;
  if (possible.length === 0) return unitTooLong(values);
  const because = told('continue-row', 'no.twice', { places: mostPlaces(values) });
  return listed('missing', got, possible, because);
}

function unitTooLong(values: RowValues): Refusal {
  const fitting = UNITS.filter((unit) => shownPossible({ ...values, unit, missing: 1 }).length > 0);
  const because = told('continue-row', 'no.unit', { places: mostPlaces(values) });
  return refusal('unit', values.unit, fitting, fitting.at(-1) ?? 'AB', because);
}

function shownRefusal(values: RowValues): Refusal | undefined {
  const possible = shownPossible(values);
  if (possible.includes(values.shown)) return undefined;
  const because =
    values.shown + values.missing > mostPlaces(values)
      ? told('continue-row', 'no.places', { most: mostPlaces(values) })
      : told('continue-row', 'no.shown');
  return listed('shown', values.shown, possible, because);
}

/** How many figures can be shown for the row to be certain and to stand in one line. */
function shownPossible(values: RowValues): readonly number[] {
  const { missing, gap } = values;
  const units = unitsOf(values);
  return counted(FEWEST_SHOWN, Math.min(MOST_SHOWN, mostPlaces(values) - missing)).filter(
    (shown) => certainGaps(units, shown, missing, gap).length > 0,
  );
}

function counted(min: number, max: number): readonly number[] {
  return Array.from({ length: Math.max(0, max - min + 1) }, (_, index) => min + index);
}

/** A range where the possible numbers are one, else each of them. */
function listed(
  name: keyof RowValues,
  got: number,
  possible: readonly number[],
  because: Told,
): Refusal {
  const [min, max] = [Math.min(...possible), Math.max(...possible)];
  if (max - min + 1 === possible.length) {
    return { code: 'out-of-range', at: at(name), got, min, max, because };
  }
  const distance = (one: number) => Math.abs(one - got);
  const nearest = possible.reduce((best, one) => (distance(one) < distance(best) ? one : best));
  return refusal(name, got, possible.map(String), String(nearest), because);
}

function refusal(
  name: keyof RowValues,
  got: string | number,
  choices: readonly string[],
  nearest: string,
  because: Told,
): Refusal {
  return { code: 'not-a-choice', at: at(name), got, choices, nearest, because };
}

function at(name: keyof RowValues): string {
  return `${ID} › ${name}`;
}
