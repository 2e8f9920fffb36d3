// What continue-row says to the adult and, through the adult, to the child.
import type { Figure } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { MESSAGES } from './messages-en.ts';
import { answerSchema, PARAMETERS, type Printed, responseTo } from './task.ts';

type SayRow = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('continue-row', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayRow, wording: Wording): Spoken<Printed> {
  return {
    say: (printed) => [
      say('say.look'),
      say(isAtEnd(printed) ? 'say.next' : 'say.missing'),
      say(`say.${responseTo(printed)}`, { count: emptyCount(printed) }),
    ],
    show: (printed) =>
      responseTo(printed) === 'sticker' ? `${say('show')} ${say('show.sticker')}` : say('show'),
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => {
      const { figures } = answerSchema.parse(key);
      const values = { count: figures.length, names: namesOf(wording, figures) };
      return say(isAtEnd(printed) ? 'answer.next' : 'answer.missing', values);
    },
  };
}

function description(say: SayRow, wording: Wording, { row, offered = [] }: Printed): string {
  const places = row.map((figure) => (figure ? wording.figure(figure) : say('describe.empty')));
  const shown = say('describe.row', { places: wording.inRow(places) });
  if (offered.length === 0) return shown;
  return `${shown} ${say('describe.choices', { names: namesOf(wording, offered) })}`;
}

function namesOf(wording: Wording, figures: readonly Figure[]): string {
  return wording.inRow(figures.map((figure) => wording.figure(figure)));
}

/** Whether the row is to be gone on with; else it has gaps. */
function isAtEnd({ row }: Printed): boolean {
  return row.at(-1) === null;
}

function emptyCount({ row }: Printed): number {
  return row.filter((figure) => figure === null).length;
}
