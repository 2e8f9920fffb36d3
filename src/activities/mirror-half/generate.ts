// Makes a task and its key: the given part, and the picture that it is half or a quarter of.
import type { Random } from '../../base/index.ts';
import { type Figure, formOf, isShape } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { drawKinds } from './generate-kinds.ts';
import { drawWrong, mirrorImage } from './generate-offered.ts';
import { findPattern, gridOf, imagesOf } from './generate-pattern.ts';
import {
  type Answer,
  type Axis,
  type Cells,
  type Given,
  isChosen,
  type MirrorValues,
  type Part,
  type Printed,
} from './task.ts';

export function generate(
  values: MirrorValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const { axis, response } = values;
  const given = givenFor(values, style);
  const part = drawPart(values, random, style);
  const printed: Printed = {
    part,
    axis,
    given,
    response,
    ...(response === 'sticker' ? { stickerMm: Number(values.stickerMm) } : {}),
  };
  if (!isChosen(response)) return { printed, answer: { cells: wholeOf(part, axis, given) } };
  const right = mirrorImage(part, axis === 'level' ? 'level' : 'upright');
  const wrong = random.shuffle(drawWrong(part, right, values, random));
  const choice = random.int(0, wrong.length);
  const offered = [...wrong.slice(0, choice), right, ...wrong.slice(choice)];
  return {
    printed: { ...printed, offered: offered.map((cells) => ({ cells })) },
    answer: { choice },
  };
}

/** Where parts are made, the writing hand lies on nothing that is given: for the left one it stands right of them. */
function givenFor({ axis, given, response }: MirrorValues, { hand }: PrintStyle): Given {
  if (hand !== 'left' || axis === 'level' || isChosen(response)) return given;
  return axis === 'both' ? 'upper-right' : 'second';
}

function drawPart(values: MirrorValues, random: Random, style: PrintStyle): Part {
  const { content, axis, kinds: count } = values;
  const drawn = drawKinds(content, axis, count, random, style);
  const kinds = drawn.map((kind) => asPrinted(kind, values));
  const pattern = findPattern(values, random, imagesOf(kinds));
  if (!pattern) throw new Error('mirror-half › elements: expected a pattern, got none');
  return { ...gridOf(values), cells: pattern.map((kind) => kinds[kind] ?? null) };
}

/** Colours are filled cells where they are coloured in, else dots; shapes to draw are drawn in outline, as a pencil does. */
export function asPrinted(kind: Figure, { content, response }: MirrorValues): Figure {
  if (content === 'colours')
    return { ...kind, form: response === 'colour-in' ? 'square' : 'circle' };
  const isBare = kind.colour === undefined && kind.fill === undefined && isShape(formOf(kind));
  return isBare && response === 'draw' ? { ...kind, fill: 'outline' } : kind;
}

/** The finished picture: the part joined to its mirror image, and with both lines that to its own. */
function wholeOf(part: Part, axis: Axis, given: Given): Cells {
  const [across, down] = [given === 'first', given !== 'second'];
  if (axis !== 'both') return joined(part, axis, axis === 'upright' ? across : down).cells;
  return joined(joined(part, 'upright', across), 'level', down).cells;
}

/** Of two parts that the line lies between, the given one is left or above, or the other way round. */
function joined(part: Part, line: 'upright' | 'level', isFirst: boolean): Part {
  const { rows, columns, cells } = part;
  const image = mirrorImage(part, line);
  const [first, second] = isFirst ? [cells, image] : [image, cells];
  if (line === 'level') return { rows: 2 * rows, columns, cells: [...first, ...second] };
  const lines = Array.from(
    { length: rows },
    (_, row) => [row * columns, (row + 1) * columns] as const,
  );
  return {
    rows,
    columns: 2 * columns,
    cells: lines.flatMap(([from, to]) => [...first.slice(from, to), ...second.slice(from, to)]),
  };
}
