// What copy-pattern says to the adult and, through the adult, to the child.
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { classOf } from './classes.ts';
import { describeTask, elementCount, nounOf } from './description.ts';
import { MESSAGES } from './messages-en.ts';
import { PARAMETERS } from './parameters.ts';
import { readingOf } from './reading.ts';
import { lookalikesOf } from './solve.ts';
import { answerSchema, type Printed } from './task.ts';

type SayCopy = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('copy-pattern', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayCopy, wording: Wording): Spoken<Printed> {
  return {
    say: (printed) => question(say, printed),
    show: (printed) => show(say, wording, printed),
    describe: (printed) => describeTask(say, wording, printed),
    answer: (printed, key) => answerText(say, printed, key),
  };
}

function question(say: SayCopy, printed: Printed): readonly string[] {
  const { boxes } = printed;
  const isBegun = boxes.some(({ cells }) => elementCount(cells) > 0);
  return [
    say('say.boxes', { count: boxes.length }),
    deedSentence(say, printed),
    ...(isBegun ? [say('say.begun')] : []),
    say('say.place'),
  ];
}

function deedSentence(say: SayCopy, printed: Printed): string {
  const { content, response } = readingOf(printed);
  const noun = nounOf(content);
  if (noun === 'cell') return say('say.colour-in');
  if (noun === 'line') return say('say.draw-line');
  if (response !== 'draw') return say(`say.${response}`);
  const isColoured = printed.model.cells.some((figure) => figure?.colour !== undefined);
  return say(`say.draw.${noun}`, { look: isColoured ? 'coloured' : 'plain' });
}

function show(say: SayCopy, wording: Wording, printed: Printed): string {
  const first = say(readingOf(printed).content === 'lines' ? 'show.lines' : 'show');
  const boxes = [...new Set(lookalikesOf(printed).map(({ box }) => box))];
  if (boxes.length === 0) return first;
  const names = boxes.map((box) => say('show.box', { place: box + 1 }));
  return `${first} ${say('show.lookalikes', { boxes: wording.list(names) })}`;
}

/** What finished boxes hold, how much is to be added, and whether a mirrored or turned copy would show. */
function answerText(say: SayCopy, printed: Printed, key: unknown): string {
  const { content } = readingOf(printed);
  const count = elementCount(printed.model.cells);
  const added = answerSchema
    .parse(key)
    .map(({ cells }, box) => elementCount(cells) - elementCount(printed.boxes[box]?.cells ?? []));
  const [least, most] = [Math.min(...added), Math.max(...added)];
  const elements = say(`count.${nounOf(content)}`, { count });
  return [
    say(least === most ? 'answer.even' : 'answer.uneven', { elements, count, least, most }),
    say(`symmetry.${classOf(printed.model).symmetry}`),
  ].join(' ');
}
