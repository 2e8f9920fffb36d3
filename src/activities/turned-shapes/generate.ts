// Makes a task and its key: the model, the same form turned or of another size, and other forms.
import type { Random } from '../../base/index.ts';
import type { Figure, FormId } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { type ColourName, coloursOf, drawColours, mostFairColours } from '../../palette/index.ts';
import { drawOthers, modelForms, TURNS, wantedForms } from './generate-forms.ts';
import type { Answer, Printed, TurnedValues } from './task.ts';

/** Sizes of the model and of the right choices: neighbours 1.3 or more apart, the smallest above half. */
const SIZES: Readonly<
  Record<TurnedValues['resize'], { readonly model: number; readonly right: readonly number[] }>
> = {
  none: { model: 1, right: [1] },
  bigger: { model: 0.6, right: [1] },
  smaller: { model: 1, right: [0.6] },
  both: { model: 0.75, right: [1, 0.55] },
};

/** One for the model, and for the choices so many that none of them tells anything. */
const MOST_COLOURS = 4;
export const FEWEST_COLOURS = 3;

export function generate(
  values: TurnedValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const { choices, matches, mirrors, layout, response } = values;
  const form = random.pick(wantedForms(modelForms(values), style.letters));
  const model: Figure = { form, size: SIZES[values.resize].model };
  const right = drawRight(form, values, random);
  const wrong = drawWrong(form, right, values, random);
  const order = random.shuffle([...right, ...wrong]);
  const painted = paint(model, order, right, values, random, style);
  const answer = order.flatMap((figure, place) => (right.includes(figure) ? [place] : []));
  if (order.length !== choices) throw new Error('turned-shapes › choices: expected all, got fewer');
  return {
    printed: {
      ...painted,
      ...(matches > 1 ? { matches } : {}),
      ...(mirrors ? { mirrors } : {}),
      layout,
      response,
    },
    answer,
  };
}

/** The form of the model, each time turned otherwise as far as there are turns. */
function drawRight(
  form: FormId,
  { matches, turn, resize }: TurnedValues,
  random: Random,
): readonly Figure[] {
  const turns = random.shuffle(TURNS[turn]);
  const sizes = random.shuffle(SIZES[resize].right);
  return Array.from({ length: matches }, (_, index) => ({
    form,
    ...turnOf(turns[index % turns.length] ?? 0),
    size: sizes[index % sizes.length] ?? 1,
  }));
}

/** Other forms in the turns and sizes of model and right ones, so that neither tells anything. */
function drawWrong(
  form: FormId,
  right: readonly Figure[],
  values: TurnedValues,
  random: Random,
): readonly Figure[] {
  const { choices, matches, turn, resize, mixed, mirrors } = values;
  const count = choices - matches - (mirrors ? 1 : 0);
  const drawn = drawOthers(values, form, mixed ? count : 1, random);
  const forms = Array.from({ length: count }, (_, index) => drawn[index % drawn.length] ?? form);
  const { model, right: usual } = SIZES[resize];
  const { size: first = 1 } = random.pick(right);
  const sizes = [first, model, ...forms.map(() => random.pick([model, ...usual]))];
  const turns = TURNS[turn];
  const wrong = forms.map((other, index): Figure => {
    const degrees = index === 0 ? random.pick(turns) : random.pick([0, ...turns]);
    return { form: other, ...turnOf(degrees), size: sizes[index] ?? 1 };
  });
  if (!mirrors) return wrong;
  return [
    ...wrong,
    { form, mirrored: true, ...turnOf(random.pick(turns)), size: random.pick(usual) },
  ];
}

function turnOf(degrees: number): Partial<Figure> {
  return degrees === 0 ? {} : { turn: degrees };
}

/** Colours: one for all shapes, else the model's on no right choice, and on a wrong one only as a lure. */
function paint(
  model: Figure,
  order: readonly Figure[],
  right: readonly Figure[],
  { content, colours }: TurnedValues,
  random: Random,
  style: PrintStyle,
): Pick<Printed, 'model' | 'choices'> {
  if (colours === 'one') {
    if (content !== 'shapes') return { model, choices: order };
    const [colour] = drawColours(random, 1, style.print, coloursOf(style));
    return {
      model: painted(model, colour),
      choices: order.map((figure) => painted(figure, colour)),
    };
  }
  const from = coloursOf(style);
  const count = Math.min(MOST_COLOURS, mostFairColours('colour', from));
  const [own, ...rest] = drawColours(random, count, style.print, from);
  const dealt = random.shuffle(order.map((_, index) => rest[index % rest.length]));
  const wrong = order.filter((figure) => !right.includes(figure));
  const lure = colours === 'lure' ? random.pick(wrong) : undefined;
  const choices = order.map((figure, index) =>
    painted(figure, figure === lure ? own : dealt[index]),
  );
  return { model: painted(model, own), choices };
}

function painted(figure: Figure, colour: ColourName | undefined): Figure {
  return colour === undefined ? figure : { ...figure, colour };
}
