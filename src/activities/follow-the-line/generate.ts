// Makes a task and its key: figures at the starts and ends, and the lines between. Never fails for valid values.
import type { Random } from '../../base/index.ts';
import { drawForms, drawSpace, type Figure, figureAt, isShape } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { type ColourName, coloursOf, drawColours } from '../../palette/index.ts';
import { fieldOf } from './field.ts';
import { endForms, valuesNeeded } from './figures.ts';
import { drawBraid, placesAfter } from './generate-braid.ts';
import { windLines } from './generate-curves.ts';
import { type Answer, type LineValues, type Printed, valuesFor } from './task.ts';

export function generate(
  asked: LineValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const values = valuesFor(asked, style);
  const { lines, crossings, direction, response, stickerMm } = values;
  const field = fieldOf(values);
  const starts = drawStarts(values, random, style);
  const isTold = response === 'point' || response === 'trace';
  const colours = drawLineColours(values, starts, random, style);
  const braid = drawBraid(lines, crossings, field.columns, random);
  return {
    printed: {
      starts,
      ...(isTold ? { ends: drawEnds(values, random) } : {}),
      laneMm: field.laneMm,
      lengthMm: field.columns * field.columnMm,
      lines: windLines(braid, field, random),
      ...(colours ? { colours } : {}),
      direction,
      response,
      ...(response === 'sticker' ? { stickerMm: Number(stickerMm) } : {}),
    },
    answer: placesAfter(braid),
  };
}

/** Each start has a value of its own of whatever tells them apart; the rest takes turns. */
function drawStarts(
  { content, lines }: LineValues,
  random: Random,
  style: PrintStyle,
): readonly Figure[] {
  const space = drawSpace(content, random, valuesNeeded(content, lines), style);
  return Array.from({ length: lines }, (_, start) =>
    figureAt(
      space,
      space.axes.map(({ values }) => start % values.length),
    ),
  );
}

/** Pictures in their own colours, all else in ink, shapes in outline. */
function drawEnds({ content, lines }: LineValues, random: Random): readonly Figure[] {
  return drawForms(random, endForms(content), lines).map((form) =>
    isShape(form) ? { form, fill: 'outline' } : { form },
  );
}

/** Where lines have colours, those of their starts, or any where starts have none. */
function drawLineColours(
  { lines, lineColours }: LineValues,
  starts: readonly Figure[],
  random: Random,
  style: PrintStyle,
): readonly ColourName[] | undefined {
  if (lineColours === 'ink') return undefined;
  const own = starts.flatMap(({ colour }) => (colour ? [colour] : []));
  return own.length === lines ? own : drawColours(random, lines, style.print, coloursOf(style));
}
