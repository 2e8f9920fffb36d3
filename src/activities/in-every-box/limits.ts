// What cannot be asked for together, and why: each refusal names the parameter and its allowed range.
import { type Refusal, type Told, told } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { restOf } from './arrangement.ts';
import { poolSize } from './contents.ts';
import { type BoxValues, type Content, ID, PARAMETERS } from './task.ts';

/** Empty where the values are valid; of numbers that depend on each other the first that fails is named. */
export function limitsOf(values: BoxValues, style: PrintStyle): readonly Refusal[] {
  const response = responseRefusal(values, style);
  const number =
    boxesRefusal(values) ??
    sharedRefusal(values, style) ??
    figuresRefusal(values, style) ??
    nearMissesRefusal(values, style);
  return [response, layoutRefusal(values), number].filter((refusal) => refusal !== undefined);
}

/** Boxes that have room on an upright page: several sizes need wide ones, and two directions stand side by side. */
const MOST_BOXES: Partial<Record<Content, number>> = { sizes: 4, directions: 5 };

function boxesRefusal({ content, boxes }: BoxValues): Refusal | undefined {
  const max = MOST_BOXES[content] ?? PARAMETERS.boxes.max;
  if (boxes <= max) return undefined;
  const because = told('in-every-box', 'no.boxes', { content: { content } });
  return {
    code: 'out-of-range',
    at: at('boxes'),
    got: boxes,
    min: PARAMETERS.boxes.min,
    max,
    because,
  };
}

/** Fewer than this stand lost in a box in which they are strewn. */
const LEAST_LOOSE = 3;

function layoutRefusal({ layout, figures }: BoxValues): Refusal | undefined {
  if (layout !== 'loose' || figures >= LEAST_LOOSE) return undefined;
  const choices = PARAMETERS.layout.values.filter((choice) => choice !== 'loose');
  const because = told('in-every-box', 'no.strewn', { least: LEAST_LOOSE });
  return { code: 'not-a-choice', at: at('layout'), got: layout, choices, nearest: 'grid', because };
}

/** A sticker answers only where its colour is what is looked at, and is seen on the page. */
function responseRefusal({ content, response }: BoxValues, style: PrintStyle): Refusal | undefined {
  if (response !== 'sticker') return undefined;
  const because = stickerFault(content, style);
  if (because === undefined) return undefined;
  const choices = PARAMETERS.response.values.filter((choice) => choice !== 'sticker');
  return {
    code: 'not-a-choice',
    at: at('response'),
    got: response,
    choices,
    nearest: 'ring',
    because,
  };
}

function stickerFault(content: Content, style: PrintStyle): Told | undefined {
  if (content !== 'colours') return told('reasons', 'sticker-colour');
  return style.print === 'grey' ? told('in-every-box', 'no.sticker-grey') : undefined;
}

/** One place of a box at least takes what is not shared, and that takes two different figures at least. */
function sharedRefusal(
  { figures, shared, content }: BoxValues,
  style: PrintStyle,
): Refusal | undefined {
  const most = poolSize(content, style) - 2;
  if (shared < figures && shared <= most) return undefined;
  return {
    code: 'out-of-range',
    at: at('shared'),
    got: shared,
    min: PARAMETERS.shared.min,
    max: Math.min(PARAMETERS.shared.max, figures - 1, most),
    because:
      shared > most
        ? told('in-every-box', 'no.shared-most', { content: { content }, most: most + 2 })
        : told('in-every-box', 'no.shared-all', { count: figures }),
  };
}

function figuresRefusal(values: BoxValues, style: PrintStyle): Refusal | undefined {
  const max = mostFigures(values, style);
  if (values.figures <= max) return undefined;
  const least = leastPool(values);
  return {
    code: 'out-of-range',
    at: at('figures'),
    got: values.figures,
    min: values.shared + 1,
    max,
    because: told('in-every-box', 'no.figures', {
      boxes: values.boxes,
      least,
      most: poolSize(values.content, style),
    }),
  };
}

/** The most figures a box for which some number of near misses works. */
function mostFigures(values: BoxValues, style: PrintStyle): number {
  const { min, max } = PARAMETERS.figures;
  const counts = Array.from({ length: max - min + 1 }, (_, index) => max - index);
  const size = poolSize(values.content, style);
  return counts.find((figures) => leastPool({ ...values, figures }) <= size) ?? min;
}

/** How many different figures are needed when as many as possible stand in all boxes but one. */
function leastPool({ boxes, figures, shared }: BoxValues): number {
  return shared + Math.ceil((boxes * (figures - shared)) / (boxes - 1));
}

function nearMissesRefusal(values: BoxValues, style: PrintStyle): Refusal | undefined {
  const { boxes, figures, shared, nearMisses, content } = values;
  const places = boxes * (figures - shared);
  const max = Math.floor(places / (boxes - 1));
  const counts = Array.from({ length: max + 1 }, (_, index) => index);
  const min = counts.find((count) => isPossible({ ...values, nearMisses: count }, style)) ?? max;
  if (nearMisses >= min && nearMisses <= max) return undefined;
  const because =
    boxes === 2
      ? told('in-every-box', 'no.two-boxes')
      : nearMisses > max
        ? told('in-every-box', 'no.near-most', { boxes, places })
        : told('in-every-box', 'no.near-least', { most: poolSize(content, style) });
  return { code: 'out-of-range', at: at('nearMisses'), got: nearMisses, min, max, because };
}

function isPossible(values: BoxValues, style: PrintStyle): boolean {
  const { fewest, most } = restOf(values, poolSize(values.content, style));
  return fewest <= most;
}

function at(name: keyof BoxValues): string {
  return `${ID} › ${name}`;
}
