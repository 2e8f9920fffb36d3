// What shadows says to the adult and, through the adult, to the child.
import type { Figure, FigureCase } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { capitalised } from '../wording.ts';
import { MESSAGES } from './messages-en.ts';
import { answerSchema, PARAMETERS, type Printed } from './task.ts';

type SayShadow = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('shadows', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayShadow, wording: Wording): Spoken<Printed> {
  return {
    say: (printed) => question(say, printed),
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => answerText(say, wording, printed, key),
  };
}

function question(say: SayShadow, { models, shadows, response = 'point' }: Printed) {
  const count = models.length;
  const isSpare = count > 1 && shadows.length > count;
  return [
    say('say.look', { count }),
    say('say.which'),
    ...(isSpare ? [say('say.spare')] : []),
    say(`say.${response}`),
  ];
}

function description(say: SayShadow, wording: Wording, { models, shadows }: Printed): string {
  const framed = wording.inRow(models.map((figure) => nameOf(wording, figure, 'name')));
  const count = shadows.length;
  const names = shadows.map((figure, place) =>
    say('describe.shadow', { place: place + 1, name: nameOf(wording, figure, 'name') }),
  );
  const dark = { count, number: wording.number(count), names: wording.inParts(names) };
  return [
    say('describe.models', { count: models.length, names: framed }),
    capitalised(say('describe.shadows', dark)),
  ].join(' ');
}

function answerText(say: SayShadow, wording: Wording, { models }: Printed, key: unknown): string {
  const shadows = answerSchema.parse(key).map((place, index) =>
    say('answer.shadow', {
      ordinal: wording.ordinal(place),
      name: nameOf(wording, models[index] ?? {}, 'the'),
    }),
  );
  return say('answer', { shadows: wording.list(shadows) });
}

/** What a figure is, whatever it is inked in. */
function nameOf(wording: Wording, { form, turn, mirrored }: Figure, as: FigureCase): string {
  return wording.figure({ form, turn, mirrored }, as);
}
