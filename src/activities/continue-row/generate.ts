// Makes a row with empty places, the figures to choose from, and the key. Never fails for valid values.
import type { Random } from '../../base/index.ts';
import {
  type Attribute,
  attributesOf,
  drawSpace,
  type Figure,
  figureAt,
  mostValues,
  plainest,
  type Space,
  stanceOf,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { certainGaps } from './certain.ts';
import { drawOffered } from './offered.ts';
import type { Answer, Printed, RowValues } from './task.ts';
import { letterCount, letterNumber, repeated } from './units.ts';

export function generate(
  values: RowValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const { response, shown, missing } = values;
  const units = unitsOf(values);
  const space = drawUpright(values, random, style);
  const letters = units.map((unit) => repeated(unit, shown + missing));
  const whole = Array.from({ length: shown + missing }, (_, place) =>
    letters.map((row) => letterNumber(row[place] ?? '')),
  );
  const at = random.pick(certainGaps(units, shown, missing, values.gap));
  const isEmpty = (place: number) => place >= at && place < at + missing;
  const given = whole.filter((_, place) => !isEmpty(place));
  const wanted = whole.filter((_, place) => isEmpty(place));
  const offered = isChosen(values)
    ? drawOffered(axesOf(space), given, wanted, values.choices, random)
    : undefined;
  return {
    printed: {
      row: whole.map((indices, place) => (isEmpty(place) ? null : look(space, indices))),
      ...(offered ? { offered: offered.map((indices) => look(space, indices)) } : {}),
      response,
      ...(response === 'sticker' ? { stickerMm: Number(values.stickerMm) } : {}),
    },
    answer: { figures: wanted.map((indices) => look(space, indices)) },
  };
}

/**
 * Figures of the row. Signs that are another sign turned (a level line is an upright one) are left out: with
 * one of them the directions would make a row of their own, which may go on otherwise than the signs.
 */
function drawUpright(values: RowValues, random: Random, style: PrintStyle): Space {
  const { content } = values;
  const needed = valuesNeeded(values);
  if (content !== 'signs') return drawSpace(content, random, needed, style);
  const { base, axes } = drawSpace(content, random, mostValues(content, 'form', style), style);
  const upright = axes.map(({ attribute, values: signs }) => ({
    attribute,
    values: signs.filter((sign) => stanceOf(plainest(sign)).turn === 0).slice(0, needed[attribute]),
  }));
  return { base, axes: upright };
}

/** What each attribute of the content repeats; a third one changes together with the first. */
export function unitsOf({ content, unit, second }: RowValues): readonly string[] {
  return attributesOf(content).map((_, axis) => (axis === 1 && second !== 'same' ? second : unit));
}

/** Whether figures are offered to choose from. */
export function isChosen({ response }: RowValues): boolean {
  return response === 'point' || response === 'ring';
}

/** How many values each attribute needs: those of its unit, and with one alone enough to choose from. */
export function valuesNeeded(values: RowValues): Readonly<Partial<Record<Attribute, number>>> {
  const attributes = attributesOf(values.content);
  const units = unitsOf(values);
  const offered = attributes.length === 1 && isChosen(values) ? values.choices : 0;
  return Object.fromEntries(
    attributes.map((attribute, axis) => [
      attribute,
      Math.max(letterCount(units[axis] ?? ''), offered),
    ]),
  );
}

function axesOf({ axes }: Space): readonly number[] {
  return axes.map(({ values }) => values.length);
}

function look(space: Space, indices: readonly number[]): Figure {
  return figureAt(space, indices);
}
