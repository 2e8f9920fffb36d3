// What in-every-box says to the adult and, through the adult, to the child.
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { capitalised } from '../wording.ts';
import { MESSAGES } from './messages-en.ts';
import { changingAttributes, itemName, lookOf } from './naming.ts';
import { solve } from './solve.ts';
import { answerSchema, PARAMETERS, type Printed } from './task.ts';

type SayBox = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('in-every-box', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayBox, wording: Wording): Spoken<Printed> {
  return {
    say: (printed) => question(say, wording, printed),
    show: (printed) => {
      const look = say('show', { noun: nounOf(say, wording, printed, 1), look: lookOf(printed) });
      return printed.response === 'sticker' ? `${look} ${say('show.sticker')}` : look;
    },
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => answerText(say, wording, printed, key),
  };
}

function question(say: SayBox, wording: Wording, printed: Printed): readonly string[] {
  const count = sharedCount(printed);
  const noun = nounOf(say, wording, printed, count);
  return [
    say('say.which', { count, noun, look: lookOf(printed) }),
    say('say.look'),
    ...severalSentence(say, wording, printed),
    say(`say.${printed.response ?? 'point'}`, { count, look: lookOf(printed) }),
  ];
}

/** Such as "colour", "two colours". */
function nounOf(say: SayBox, wording: Wording, printed: Printed, count: number): string {
  return say(`noun.${lookOf(printed)}`, { count, number: wording.number(count) });
}

/** Said where one attribute alone would mislead. */
function severalSentence(say: SayBox, wording: Wording, printed: Printed): readonly string[] {
  const changing = changingAttributes(printed);
  if (changing.length < 2) return [];
  const names = changing.map((attribute) => say(`attribute.${attribute}`));
  return [say('say.several', { attributes: wording.list(names) })];
}

function description(say: SayBox, wording: Wording, printed: Printed): string {
  const count = printed.boxes.length;
  const boxes = printed.boxes.map(({ figures }, index) =>
    say('describe.box', {
      place: index + 1,
      items: wording.list(figures.map((figure) => itemName(say, wording, figure, printed))),
    }),
  );
  const all = say('describe.boxes', { count, number: wording.number(count) });
  return [capitalised(all), ...boxes].join(' ');
}

function answerText(say: SayBox, wording: Wording, printed: Printed, key: unknown): string {
  const { figures } = answerSchema.parse(key);
  const names = figures.map((figure) => itemName(say, wording, figure, printed));
  const boxes = printed.boxes.length;
  const count = figures.length;
  const number = wording.number(boxes);
  return capitalised(say('answer', { items: wording.list(names), count, boxes, number }));
}

/** How many figures to look for, which the child is told; 1 where the page admits no answer. */
function sharedCount(printed: Printed): number {
  return solve(printed).answers[0]?.figures.length ?? 1;
}
