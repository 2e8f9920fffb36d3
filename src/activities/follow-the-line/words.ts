// What follow-the-line says to the adult and, through the adult, to the child.
import type { Figure, FigureCase } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { isMirrored } from '../../page/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { capitalised } from '../wording.ts';
import { MESSAGES } from './messages-en.ts';
import { answerSchema, keepsDirection, PARAMETERS, type Printed } from './task.ts';

type SayLine = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('follow-the-line', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayLine, wording: Wording): Spoken<Printed> {
  return {
    say: ({ response = 'point' }) => [say('say.where'), say(`say.${response}`)],
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => answerText(say, wording, printed, key),
  };
}

function description(say: SayLine, wording: Wording, printed: Printed): string {
  const { starts, ends, lines } = printed;
  const ways = waysOf(wording, printed);
  const count = lines.length;
  const listed = (figures: readonly Figure[]) => wording.list(namesOf(wording, figures, 'name'));
  return [
    capitalised(say('describe.lines', { count, number: wording.number(count) })),
    say('describe.starts', { ...ways, names: listed(starts) }),
    ends ? say('describe.ends', { ...ways, names: listed(ends) }) : say('describe.circles', ways),
  ].join(' ');
}

function answerText(say: SayLine, wording: Wording, printed: Printed, key: unknown): string {
  const { starts, ends } = printed;
  const ways = waysOf(wording, printed);
  const startNames = namesOf(wording, starts, 'the');
  const endNames = ends && namesOf(wording, ends, 'the');
  const lines = answerSchema.parse(key).map((place, start) => {
    const end =
      endNames?.[place] ?? say('answer.circle', { ...ways, ordinal: wording.ordinal(place) });
    return say('answer.line', { start: startNames[start] ?? '', end });
  });
  return say('answer', { lines: wording.list(lines) });
}

/** Which way the lines run, and from which side the page is read: `reading` is `leftward` or `rightward`. */
function waysOf({ language, reading }: Wording, printed: Printed) {
  const { direction = 'across' } = printed;
  const keeps = isMirrored(language) && keepsDirection(printed);
  return { direction, reading: keeps ? 'rightward' : reading };
}

function namesOf(wording: Wording, figures: readonly Figure[], as: FigureCase): readonly string[] {
  const isPlain = figures.every(({ fill = 'solid' }) => fill === 'outline');
  return figures.map((figure) =>
    isPlain ? wording.figure({ form: figure.form }, as) : wording.among(figures, figure, as),
  );
}
