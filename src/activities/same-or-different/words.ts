// What same-or-different says to the adult and, through the adult, to the child.
import { differencesOf } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { capitalised } from '../wording.ts';
import { MESSAGES } from './messages-en.ts';
import { answerSchema, PARAMETERS, type Pair, type Printed } from './task.ts';

type SayPair = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('same-or-different', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayPair, wording: Wording): Spoken<Printed> {
  return {
    say: ({ response = 'point' }) => [say('say.boxes'), say('say.look'), say(`say.${response}`)],
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => answerText(say, wording, printed, key),
  };
}

function description(say: SayPair, wording: Wording, { pairs }: Printed): string {
  const count = pairs.length;
  const boxes = pairs.map(([one, other], place) =>
    say('describe.box', {
      place: place + 1,
      one: wording.among(pairs.flat(), one),
      other: wording.among(pairs.flat(), other),
    }),
  );
  const number = wording.number(count);
  return capitalised(say('describe', { count, number, boxes: wording.inParts(boxes) }));
}

function answerText(say: SayPair, wording: Wording, { pairs }: Printed, key: unknown): string {
  const same = answerSchema.parse(key);
  const numbers = same.map((place) => String(place + 1));
  const sentence = say('answer.same', { count: same.length, boxes: wording.list(numbers) });
  const others = pairs.flatMap((pair, place) =>
    same.includes(place)
      ? []
      : [say('answer.box', { place: place + 1, reason: say(`reason.${reasonIn(pair)}`) })],
  );
  if (others.length === 0) return sentence;
  const rest = say('answer.others', { count: others.length, boxes: wording.list(others) });
  return `${sentence} ${rest}`;
}

/** In what the two of a pair differ, as an adult would say it. */
function reasonIn([one, other]: Pair) {
  const found = differencesOf(one, other);
  if (found.turnedOutlineShare !== undefined || found.insideShare !== undefined) return 'form';
  if (found.countRatio !== undefined) return 'count';
  if (found.colourDe00 !== undefined) return 'colour';
  if (found.fill) return 'fill';
  if (found.turnDeg !== undefined) return 'turn';
  return found.sizeRatio === undefined ? 'unclear' : 'size';
}
