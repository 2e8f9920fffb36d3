// What tangle says to the adult and, through the adult, to the child.
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { capitalised } from '../wording.ts';
import { MESSAGES } from './messages-en.ts';
import { answerSchema, PARAMETERS, type Printed } from './task.ts';

export const WORDS = inAllLanguages('tangle', MESSAGES, PARAMETERS, spoken);

function spoken(say: Say<typeof MESSAGES>, wording: Wording): Spoken<Printed> {
  return {
    say: ({ response = 'point' }) => [say('say.look'), say('say.which'), say(`say.${response}`)],
    describe: ({ tangle, candidates }) => {
      const count = tangle.length;
      const lie = say('describe.tangle', { count, number: wording.number(count) });
      const names = candidates.map((figure, place) =>
        say('describe.choice', { place: place + 1, name: wording.figure(figure) }),
      );
      return `${capitalised(lie)} ${say('describe.choices', { names: wording.inParts(names) })}`;
    },
    answer: ({ candidates }, key) => {
      const names = answerSchema.parse(key).flatMap((place) => {
        const figure = candidates[place];
        return figure ? [wording.figure(figure)] : [];
      });
      return say('answer', { names: wording.list(names) });
    },
  };
}
