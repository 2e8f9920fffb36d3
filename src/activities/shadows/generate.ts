// Makes a task and its key: figures, the shadow of each, and shadows of none. Never fails for valid values.
import type { Random } from '../../base/index.ts';
import { type Figure, formsOf, isPicture, isSign } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { type ColourName, coloursOf, FIGURE_COLOURS } from '../../palette/index.ts';
import { drawShadowForms } from './forms.ts';
import type { Answer, Printed, ShadowValues } from './task.ts';
import { drawShadowTurns } from './turns.ts';

/** Sizes of the smaller ones, as shares of the larger; common practice, no source. */
const SMALLER = 0.75;
/** Sizes of shadows of several sizes, none of them the size of the figures. */
const MIXED = [0.55, 0.65, 0.8];
/** Ink is for shadows. */
export const MODEL_COLOURS: readonly ColourName[] = FIGURE_COLOURS.filter(
  (colour) => colour !== 'black' && colour !== 'grey',
);

export function generate(
  values: ShadowValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const { models: count, resize, response } = values;
  const modelOrder = drawModelOrder(count, random);
  const looks = drawLooks(values, random, style.letters);
  const colours = random.shuffle(coloursOf(style, MODEL_COLOURS));
  const models = looks
    .slice(0, count)
    .map((look, index) => dressed(look, colours[index % colours.length], style))
    .map((model) => (resize === 'bigger' ? { ...model, size: SMALLER } : model));
  const sizes = sizesOf(resize, looks.length, random);
  const order = drawOrder(looks.length, modelOrder, random);
  const shadows = order.flatMap((number, place) =>
    looks.slice(number, number + 1).map((look): Figure => {
      const size = sizes[place] ?? 1;
      return { ...look, fill: 'solid', ...(size === 1 ? {} : { size }) };
    }),
  );
  const answer = models.map((_, index) => order.indexOf(index));
  return { printed: { models, shadows, response }, answer };
}

/** The outlines of all shadows, those of the models first. */
function drawLooks(
  values: ShadowValues,
  random: Random,
  letters: string | undefined,
): readonly Figure[] {
  const { content, shadows, mirrors } = values;
  if (content !== 'directions') {
    return drawShadowForms(content, values, random, letters).map((form) => ({ form }));
  }
  const form = random.pick(formsOf(content));
  return drawShadowTurns(form, shadows, mirrors, random).map((turn) => ({ form, turn }));
}

/** As a model is printed: a picture in its colours, all else in one; in outline in grey print or for want of one, but for lines. */
function dressed(look: Figure, colour: ColourName | undefined, { print }: PrintStyle): Figure {
  const form = look.form ?? 'circle';
  if (isPicture(form)) return look;
  const isPlain = print === 'grey' || colour === undefined;
  return isPlain && !isSign(form) ? { ...look, fill: 'outline' } : { ...look, colour };
}

function sizesOf(resize: ShadowValues['resize'], count: number, random: Random): readonly number[] {
  if (resize === 'mixed') {
    const order = random.shuffle(MIXED);
    return random.shuffle(
      Array.from({ length: count }, (_, index) => order[index % order.length] ?? SMALLER),
    );
  }
  return Array.from({ length: count }, () => (resize === 'smaller' ? SMALLER : 1));
}

/** In which order the shadows of the models stand; from three models on never in that of the models. */
function drawModelOrder(models: number, random: Random): readonly number[] {
  const order = random.shuffle(Array.from({ length: models }, (_, number) => number));
  const isInOrder = order.every((number, place) => number === place);
  return models < 3 || !isInOrder ? order : [1, 0, ...order.slice(2)];
}

/** The numbers of all shadows by place, those of the models in the given order at random places. */
function drawOrder(
  count: number,
  modelOrder: readonly number[],
  random: Random,
): readonly number[] {
  const places = Array.from({ length: count }, (_, place) => place);
  const taken = random.sample(places, modelOrder.length).sort((a, b) => a - b);
  const free = places.filter((place) => !taken.includes(place));
  return places.map((place) =>
    taken.includes(place)
      ? (modelOrder[taken.indexOf(place)] ?? 0)
      : modelOrder.length + free.indexOf(place),
  );
}
