// What turned-shapes says to the adult and, through the adult, to the child.
import { formOf, stanceOf, symmetryTurnDeg } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { MESSAGES } from './messages-en.ts';
import { answerSchema, PARAMETERS, type Printed } from './task.ts';

type SayTurned = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('turned-shapes', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayTurned, wording: Wording): Spoken<Printed> {
  return {
    say: (printed) => question(say, wording, printed),
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => answerText(say, wording, printed, key),
  };
}

function question(say: SayTurned, wording: Wording, printed: Printed): readonly string[] {
  const { matches: count = 1, mirrors, response = 'point' } = printed;
  return [
    say('say.which', { count, number: wording.number(count) }),
    say(`say.${response}`, { count }),
    say('say.turned', { count }),
    ...(mirrors ? [say('say.mirrors', { count })] : []),
  ];
}

function description(say: SayTurned, wording: Wording, { model, choices }: Printed): string {
  const all = [model, ...choices];
  const names = choices.map((figure, place) =>
    say('describe.choice', { place: place + 1, name: wording.among(all, figure) }),
  );
  return say('describe', { model: wording.among(all, model), choices: wording.inParts(names) });
}

function answerText(say: SayTurned, wording: Wording, printed: Printed, key: unknown): string {
  const places = answerSchema.parse(key);
  const named = places.map((place) =>
    say(`place.${lyingOf(printed, place)}`, { ordinal: wording.ordinal(place) }),
  );
  return say('answer', { count: places.length, places: wording.list(named) });
}

/** How a figure lies against the one in the frame. */
function lyingOf({ model, choices }: Printed, place: number) {
  const figure = choices[place] ?? model;
  const isTurned =
    stanceOf(figure).turn !== stanceOf(model).turn && symmetryTurnDeg(formOf(model)) > 1;
  const [size, modelSize] = [figure.size ?? 1, model.size ?? 1];
  if (size === modelSize) return isTurned ? 'turned' : 'as-framed';
  const resized = size > modelSize ? 'bigger' : 'smaller';
  return isTurned ? (`turned-${resized}` as const) : resized;
}
