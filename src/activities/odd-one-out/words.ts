// What odd-one-out says to the adult and, through the adult, to the child.
import {
  type Figure,
  formOf,
  isLetter,
  isNumeral,
  isOwnColoured,
  isPicture,
} from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { capitalised } from '../wording.ts';
import { MESSAGES } from './messages-en.ts';
import { aloneIn, changingTraits, type Trait } from './solve-looks.ts';
import { answerSchema, PARAMETERS, type Printed } from './task.ts';

type SayOdd = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('odd-one-out', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayOdd, wording: Wording): Spoken<Printed> {
  return {
    say: ({ figures, response = 'point' }) => [
      say('say.which'),
      say(isOfLooks(figures) ? 'say.looks' : 'say.kinds'),
      say(`say.${response}`),
    ],
    show: ({ figures }) =>
      say(changingTraits(figures).length > 1 && isOfLooks(figures) ? 'show.several' : 'show'),
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => answerText(say, wording, printed, key),
  };
}

/** Whether some figures look alike; else they are of one kind but for one. */
function isOfLooks(figures: readonly Figure[]): boolean {
  return new Set(figures.map((figure) => JSON.stringify(figure))).size < figures.length;
}

function description(say: SayOdd, wording: Wording, printed: Printed): string {
  const { figures, columns = figures.length } = printed;
  const count = figures.length;
  const names = wording.inRow(figures.map((figure) => wording.among(figures, figure)));
  const stand = columns < count ? 'describe.rows' : 'describe.row';
  return capitalised(say(stand, { count, number: wording.number(count), names }));
}

function answerText(say: SayOdd, wording: Wording, { figures }: Printed, key: unknown): string {
  const { odd } = answerSchema.parse(key);
  const figure = figures[odd] ?? {};
  const name = wording.among(figures, figure, 'the');
  return say(`answer.${reasonFor(figures, odd)}`, { place: odd + 1, name });
}

function reasonFor(figures: readonly Figure[], odd: number) {
  const figure = figures[odd] ?? {};
  const traits = changingTraits(figures).filter((trait) => aloneIn(figures, [trait]).includes(odd));
  if (traits.includes('kind') && !isOfLooks(figures)) return 'kind';
  return traits.map((trait) => sayableTrait(figure, trait)).find(Boolean) ?? 'alone';
}

/** What a child calls the trait; undefined where it has no plain name. */
function sayableTrait(figure: Figure, trait: Trait) {
  const form = formOf(figure);
  switch (trait) {
    case 'form':
      if (isPicture(form)) return 'picture';
      if (isNumeral(form)) return 'numeral';
      return isLetter(form) ? 'letter' : 'shape';
    case 'turn':
      return 'direction';
    case 'count':
      return 'dots';
    case 'fill':
      return 'texture';
    case 'colour':
      return isOwnColoured(figure) ? undefined : 'colour';
    default:
      return trait === 'size' ? 'size' : undefined;
  }
}
