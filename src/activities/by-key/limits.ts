// What cannot be asked for together, and the nearest thing that can.
import { type Refusal, type Told, told } from '../../base/index.ts';
import { type Attribute, MOST_UNMIRRORED_DIRECTIONS } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { shortOfColours } from '../colours-at-hand.ts';
import { mostInSet } from '../figure-sets.ts';
import {
  fewestEntries,
  IDLE_COLOURS,
  isOfDots,
  isRead,
  lookedAt,
  MOST_TEXTURES,
  mostEntries,
  mostOf,
  RESPONSE_COLOURS,
  responsesTo,
  variantsOf,
  variesOf,
} from './contents.ts';
import {
  type Content,
  isOwn,
  PARAMETERS,
  type Parameters,
  type ResponseKind,
  type Vary,
} from './parameters.ts';
import { fitsOnPage } from './room.ts';

/** All refusals for values that are each within their own range; empty where they go together. */
export function limits(values: Parameters, style: PrintStyle): readonly Refusal[] {
  const first = [
    ...responseRefusals(values),
    ...varyRefusals(values, style),
    ...entriesRefusals(values),
    ...coloursRefusals(values, style),
  ];
  if (first.length > 0) return first;
  return [...balancedRefusals(values), ...pageRefusals(values)];
}

function responseRefusals({ content, response }: Parameters): readonly Refusal[] {
  const responses = responsesTo(content);
  const [nearest] = responses;
  if (responses.includes(response) || nearest === undefined) return [];
  const because = RESPONSE_BECAUSE[content] ?? COLOUR_BECAUSE;
  return [{ ...choiceRefusal('response', response, responses, nearest), because }];
}

const COLOUR_BECAUSE = told('by-key', 'no.second-colour');
const RESPONSE_BECAUSE: Readonly<Partial<Record<Content, Told>>> = {
  signs: told('by-key', 'no.second-sign'),
  textures: told('by-key', 'no.second-texture'),
};

function varyRefusals(
  { content, response, vary }: Parameters,
  style: PrintStyle,
): readonly Refusal[] {
  const able = variesOf(content);
  const possible = able.filter((other) => !varyFault(content, response, other, style));
  const fault = able.includes(vary)
    ? varyFault(content, response, vary, style)
    : unableToVary(content);
  if (fault === undefined) return [];
  const nearest = possible.find((other) => other !== 'none') ?? 'none';
  return [{ ...choiceRefusal('vary', vary, possible, nearest), because: fault }];
}

function unableToVary(content: Content): Told {
  const looked = lookedAt(content);
  if (content === 'textures') return told('by-key', 'no.vary-textures');
  if (content === 'sizes') return told('by-key', 'no.vary-sizes');
  if (!looked.includes('size')) return told('by-key', 'no.vary-idle');
  return looked.includes('colour')
    ? told('by-key', 'no.vary-colour-size')
    : told('by-key', 'no.vary-form-size');
}

/** Colours that say nothing must not meet colours, or marks of colours, that do. */
function varyFault(
  content: Content,
  response: ResponseKind,
  vary: Vary,
  { print }: PrintStyle,
): Told | undefined {
  if (vary !== 'colour') return undefined;
  if (response !== 'sign' && response !== 'fill') {
    return told('by-key', 'no.vary-colour');
  }
  if (print === 'grey' && (isRead(content) || isOfDots(content))) {
    return told('by-key', 'no.vary-grey');
  }
  return undefined;
}

function entriesRefusals(values: Parameters): readonly Refusal[] {
  const { min, max, because } = entriesRange(values);
  const got = values.entries;
  if (got >= min && got <= max) return [];
  return [{ code: 'out-of-range', at: 'by-key › entries', got, min, max, because }];
}

/** How many entries a key of this content and response can have, and why no others. */
function entriesRange({ content, response, leftRight }: Parameters): {
  readonly min: number;
  readonly max: number;
  readonly because: Told;
} {
  const min = fewestEntries(content);
  const most = mostEntries(content);
  const textures = isOfDots(content) ? MOST_TEXTURES - 1 : MOST_TEXTURES;
  if (response === 'fill' && textures < most) {
    return { min, max: textures, because: told('by-key', 'no.textures', { count: textures }) };
  }
  if (content === 'directions' && !leftRight) {
    const because = told('by-key', 'no.left-right');
    return { min, max: MOST_UNMIRRORED_DIRECTIONS, because };
  }
  const because =
    min > 2 ? told('by-key', 'no.entries-least', { least: min }) : told('reasons', 'no-more');
  return { min, max: most, because };
}

/** Colours to answer with, to be looked at, or that say nothing. */
function coloursRefusals(values: Parameters, style: PrintStyle): readonly Refusal[] {
  const { response, entries, vary } = values;
  const answers = response === 'sign' || response === 'fill' ? 0 : entries;
  return [
    shortOfColours('by-key', answers, style, RESPONSE_COLOURS),
    hasFigures(values, style) ? undefined : shortOfColours('by-key', entries, style),
    vary === 'colour'
      ? shortOfColours('by-key', variantsOf(values), style, IDLE_COLOURS)
      : undefined,
  ].filter((refusal) => refusal !== undefined);
}

/** Whether the colours to be looked at make figures enough, where there are any. */
function hasFigures({ content, entries, leftRight }: Parameters, style: PrintStyle): boolean {
  if (isOwn(content)) return true;
  const most = (attribute: Attribute) => mostOf(attribute, leftRight, style);
  return !lookedAt(content).includes('colour') || mostInSet({ content, mostOf: most }) >= entries;
}

function balancedRefusals({ balanced, entries, items }: Parameters): readonly Refusal[] {
  const least = entries === 2 ? 8 : entries + 2;
  if (balanced || items >= least) return [];
  const because = told('by-key', 'no.balanced', { entries, least });
  return [{ ...choiceRefusal('balanced', false, ['true'], 'true'), because }];
}

/** What a page has no room for: more entries than fit with the fewest items, else more items. */
function pageRefusals(values: Parameters): readonly Refusal[] {
  const because = told('by-key', 'no.page');
  const fewest = PARAMETERS.items.min;
  for (const name of ['entries', 'items'] as const) {
    const others = name === 'entries' ? { items: fewest } : {};
    const { min } = PARAMETERS[name];
    const got = values[name];
    let max = got;
    while (max > min && !fitsOnPage({ ...values, ...others, [name]: max })) max -= 1;
    if (max < got) {
      return [{ code: 'out-of-range', at: `by-key › ${name}`, got, min, max, because }];
    }
  }
  return [];
}

function choiceRefusal(
  name: string,
  got: string | boolean,
  choices: readonly string[],
  nearest: string,
): Extract<Refusal, { code: 'not-a-choice' }> {
  return { code: 'not-a-choice', at: `by-key › ${name}`, got, choices, nearest };
}
