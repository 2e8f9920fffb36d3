// What find-the-same says to the adult and, through the adult, to the child.
import type { Figure } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { MESSAGES } from './messages-en.ts';
import { answerSchema, PARAMETERS, type Printed } from './task.ts';

type SaySame = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('find-the-same', MESSAGES, PARAMETERS, spoken);

function spoken(say: SaySame, wording: Wording): Spoken<Printed> {
  return {
    say: ({ response = 'point' }) => [say('say.look'), say('say.which'), say(`say.${response}`)],
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => answerText(say, wording, printed, key),
  };
}

function description(say: SaySame, wording: Wording, printed: Printed): string {
  const choices = printed.choices.map((figure, place) =>
    say('describe.choice', { place: place + 1, name: wording.among(allIn(printed), figure) }),
  );
  const model = wording.among(allIn(printed), printed.model);
  return say('describe', { model, choices: wording.inParts(choices) });
}

/** The key is one of the places: a task is read before it is spoken of. */
function answerText(say: SaySame, wording: Wording, printed: Printed, key: unknown): string {
  const place = answerSchema.parse(key);
  const name = wording.among(allIn(printed), printed.choices[place] ?? printed.model, 'the');
  return say('answer', { ordinal: wording.ordinal(place), name });
}

function allIn({ model, choices }: Printed): readonly Figure[] {
  return [model, ...choices];
}
