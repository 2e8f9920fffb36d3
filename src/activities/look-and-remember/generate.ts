// Makes a task and its key: a frame of figures, and below the fold those and others. Never fails for valid values.
import type { Random } from '../../base/index.ts';
import { attributesOf, figureAt } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { againCount, type Look, type Looks, looksFor, wrongCount } from './generate-looks.ts';
import { drawValues } from './generate-values.ts';
import { STICKER_COLOUR } from './materials.ts';
import type { Answer, Printed, RememberValues } from './task.ts';

export function generate(
  values: RememberValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const { content, set, layout, response } = values;
  const looks = looksFor(content, set, style);
  if (!looks) throw new Error(`look-and-remember › set: ${content} has not ${set} to remember`);
  const wrong = drawWrong(values, looks, random);
  const shown = random.shuffle(looks.set);
  const again = random.sample(looks.set, againCount(values));
  const choices = random.shuffle([...again, ...wrong]);
  const used = looks.counts.map((_, axis) => valuesUsed([...looks.set, ...wrong], axis));
  const space = drawValues(
    values,
    used.map((numbers) => numbers.length),
    random,
    style,
  );
  const figure = (look: Look) =>
    figureAt(
      space,
      look.map((value, axis) => (used[axis] ?? []).indexOf(value)),
    );
  return {
    printed: {
      set: shown.map(figure),
      choices: choices.map(figure),
      layout,
      response,
      ...(response === 'sticker' ? stickerOf(style) : {}),
    },
    answer: choices.flatMap((look, place) => (again.includes(look) ? [place] : [])),
  };
}

/** Any sticker will do, since its place is the answer. */
function stickerOf({ colours = [STICKER_COLOUR] }: PrintStyle): Partial<Printed> {
  return colours.includes(STICKER_COLOUR) ? {} : { stickerColour: colours[0] };
}

/** So many sets of far ones are drawn, and the one kept that repeats itself least. */
const DRAWS = 8;

/** Far ones share as little as can be, so that those that were seen are not the only ones that stand alone. */
function drawWrong(values: RememberValues, looks: Looks, random: Random): readonly Look[] {
  const wrong = wrongCount(values);
  const near = attributesOf(values.content).length === 1 ? 0 : values.nearMisses;
  const draws = Array.from({ length: DRAWS }, () => random.sample(looks.far, wrong - near));
  const kinds = draws.map((far) =>
    looks.counts.reduce((sum, _, axis) => sum + valuesUsed(far, axis).length, 0),
  );
  const far = draws[kinds.indexOf(Math.max(...kinds))] ?? [];
  return [...random.sample(looks.near, near), ...far];
}

/** The numbers of the values of an attribute that some look has, rising. */
function valuesUsed(looks: readonly Look[], axis: number): readonly number[] {
  return [...new Set(looks.map((look) => look[axis] ?? 0))].sort((one, other) => one - other);
}
