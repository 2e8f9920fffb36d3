// What what-changed says to the adult and, through the adult, to the child.
import type { Figure } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { capitalised } from '../wording.ts';
import { MESSAGES } from './messages-en.ts';
import { answerSchema, PARAMETERS, type Printed, type Scene } from './task.ts';

type SayChange = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('what-changed', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayChange, wording: Wording): Spoken<Printed> {
  return {
    say: (printed) => question(say, wording, printed),
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => answerText(say, wording, printed, key),
  };
}

function question(say: SayChange, wording: Wording, printed: Printed): readonly string[] {
  const { asked: count, told, response = 'point' } = printed;
  const pairs = Math.round(count / 2);
  return [
    say('say.look'),
    told === 'swaps'
      ? say('say.swaps', { pairs, number: wording.number(pairs) })
      : say('say.places', { count, number: wording.number(count) }),
    say(`say.${response}`, { count }),
  ];
}

function description(say: SayChange, wording: Wording, printed: Printed): string {
  const named = (scene: Scene) =>
    wording.inRow(scene.map((figure) => nameIn(wording, printed, figure) ?? say('describe.empty')));
  return say('describe', { first: named(printed.first), second: named(printed.second) });
}

function answerText(say: SayChange, wording: Wording, printed: Printed, key: unknown): string {
  const nothing = say('answer.nothing');
  const places = answerSchema.parse(key).map((place) =>
    say('answer.place', {
      ordinal: wording.ordinal(place),
      before: nameIn(wording, printed, printed.first[place]) ?? nothing,
      after: nameIn(wording, printed, printed.second[place]) ?? nothing,
    }),
  );
  const count = places.length;
  const number = wording.number(count);
  return capitalised(say('answer', { count, number, places: wording.list(places) }));
}

/** The figure's name, with its size by rank where sizes differ. */
function nameIn(
  wording: Wording,
  { first, second }: Printed,
  figure: Figure | null | undefined,
): string | undefined {
  if (!figure) return undefined;
  const all = [...first, ...second].filter((other) => other !== null);
  return wording.among(all, figure);
}
