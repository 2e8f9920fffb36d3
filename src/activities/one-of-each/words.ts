// What one-of-each says to the adult and, through the adult, to the child.
import { formOf, isLetter, isNumeral } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { areTextures } from '../drawing-deed.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { capitalised } from '../wording.ts';
import { MESSAGES } from './messages-en.ts';
import { answerSchema, PARAMETERS, type Printed } from './task.ts';

type SayEach = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('one-of-each', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayEach, wording: Wording): Spoken<Printed> {
  return {
    say: (printed) => [
      say('say.use'),
      say(printed.boxes ? 'say.blocks' : 'say.lines'),
      say(`say.${deedOf(printed)}`),
    ],
    show: ({ response }) =>
      response === 'counters' || response === 'cut' || response === 'sticker'
        ? `${say('show')} ${say(`show.${response}`)}`
        : say('show'),
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => answerText(say, wording, printed, key),
  };
}

/** What the child does; to draw a letter is to write, and a pattern is filled in. */
function deedOf({ response = 'point', figures }: Printed) {
  if (response !== 'draw') return response;
  if (areTextures(figures)) return 'fill';
  const forms = figures.map(formOf);
  return forms.every((form) => isLetter(form) || isNumeral(form)) ? 'write' : 'draw';
}

function description(say: SayEach, wording: Wording, printed: Printed): string {
  const { rows, figures, boxes } = printed;
  const count = rows.length;
  const lines = rows.map((row, place) => {
    const names = row.map((figure) =>
      figure ? wording.among(figures, figure) : say('describe.empty'),
    );
    const line = { place: place + 1, ordinal: wording.ordinal(place), names: wording.inRow(names) };
    return capitalised(say('describe.row', line));
  });
  const names = figures.map((figure) => wording.among(figures, figure));
  return [
    say('describe.grid', { count, number: wording.number(count) }),
    ...(boxes ? [say('describe.blocks')] : []),
    say('describe.figures', { names: wording.list(names) }),
    ...lines,
  ].join(' ');
}

/** What each row lacks, from left to right. */
function answerText(say: SayEach, wording: Wording, { rows, figures }: Printed, key: unknown) {
  const missing = [...answerSchema.parse(key).figures];
  const lines = rows.flatMap((row, place) => {
    const filled = missing.splice(0, row.filter((figure) => figure === null).length);
    if (filled.length === 0) return [];
    const names = wording.list(filled.map((figure) => wording.among(figures, figure)));
    return [say('answer.row', { place: place + 1, ordinal: wording.ordinal(place), names })];
  });
  return say('answer', { reading: wording.reading, rows: wording.inParts(lines) });
}
