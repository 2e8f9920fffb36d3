// What look-and-remember says to the adult and, through the adult, to the child.
import type { Figure } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { FOLD_GUIDE_SIZE, foldGuide } from './fold-guide.ts';
import { MESSAGES } from './messages-en.ts';
import { answerSchema, PARAMETERS, type Printed } from './task.ts';

type SaySeen = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('look-and-remember', MESSAGES, PARAMETERS, spoken);

/** Seconds to look: three for each figure, and not less than five; common practice, no source. */
const SECONDS_EACH = 3;
const FEWEST_SECONDS = 5;

function spoken(say: SaySeen, wording: Wording): Spoken<Printed> {
  return {
    say: (printed) => question(say, printed),
    show: ({ set }) =>
      say('show', { seconds: Math.max(FEWEST_SECONDS, SECONDS_EACH * set.length) }),
    guide: (_printed, tasks) => ({
      words: tasks > 1 ? `${say('guide.several')} ${say('guide')}` : say('guide'),
      drawing: foldGuide(),
      ...FOLD_GUIDE_SIZE,
    }),
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => answerText(say, wording, printed, key),
  };
}

function question(say: SaySeen, { set, response = 'point' }: Printed): readonly string[] {
  const count = set.length;
  return [
    say('say.look', { count }),
    say('say.fold'),
    say('say.which', { count }),
    say(`say.${response}`, { count }),
  ];
}

/** Both halves, as they are printed: what has to be found is not said. */
function description(say: SaySeen, wording: Wording, printed: Printed): string {
  const listed = (figures: readonly Figure[]) =>
    wording.list(figures.map((figure) => wording.among(allIn(printed), figure)));
  return say('describe', { set: listed(printed.set), choices: listed(printed.choices) });
}

function answerText(say: SaySeen, wording: Wording, printed: Printed, key: unknown): string {
  const places = answerSchema.parse(key);
  const count = places.length;
  const found = places.map((place) =>
    say('answer.found', {
      ordinal: wording.ordinal(place),
      name: wording.among(allIn(printed), printed.choices[place] ?? {}),
    }),
  );
  return say('answer', { count, number: wording.number(count), found: wording.inParts(found) });
}

function allIn({ set, choices }: Printed): readonly Figure[] {
  return [...set, ...choices];
}
