// English sentences about a task that was changed.
import { capitalised, WORDINGS } from '../activities/index.ts';
import type { DotLayout } from '../figures/index.ts';

const { list, number } = WORDINGS.en;

/** Answers told in full; more are counted. */
const MOST_TOLD = 3;

const LAYOUTS: Readonly<Record<DotLayout, string>> = {
  dice: 'as on a die',
  row: 'in a row',
  'scattered-1': 'scattered',
  'scattered-2': 'scattered another way',
  'scattered-3': 'scattered a third way',
};

const TURNS: Readonly<Record<number, string>> = {
  0: 'upright',
  45: 'an eighth to the right',
  90: 'a quarter to the right',
  135: 'three eighths to the right',
  180: 'upside down',
  225: 'three eighths to the left',
  270: 'a quarter to the left',
  315: 'an eighth to the left',
};

/** Numbers that the page tells the child, by the names of their fields, and how a change of them is said. */
const TOLD: Readonly<Record<string, (was: number, is: number) => string>> = {
  circles: (was, is) => `Print ${is} empty ${is === 1 ? 'circle' : 'circles'} in place of ${was}.`,
  matches: (was, is) => `Ask for ${is} in place of ${was}.`,
  asked: (was, is) => `Ask for ${is} in place of ${was}.`,
};

export const editingWords = {
  unreadable: 'this can no longer be read as a task',
  noAnswer: 'No answer fits what is printed.',
  fault: (fault: string) => `${capitalised(fault)}.`,
  several: (answers: readonly string[]) => {
    const told = [...new Set(answers)].slice(0, MOST_TOLD);
    const more = answers.length - told.length;
    if (told.length < 2) return 'More than one answer fits what is printed.';
    return `More than one answer fits. ${told.join(' Or: ')}${more > 0 ? ` And ${more} more.` : ''}`;
  },
  changed: (come: readonly string[], gone: readonly string[], answer: string) => {
    const says =
      come.length > 0 && gone.length > 0
        ? `The answer was ${list(gone)} and is now ${list(come)}.`
        : come.length > 0
          ? `${capitalised(list(come))} ${come.length === 1 ? 'is' : 'are'} now an answer too.`
          : gone.length > 0
            ? `${capitalised(list(gone))} ${gone.length === 1 ? 'is' : 'are'} no longer an answer.`
            : '';
    return says === '' ? answer : `${says} ${answer}`;
  },
  attributes: {
    colour: 'Colour',
    form: 'Shape',
    size: 'Size',
    turn: 'Turn',
    mirrored: 'Mirrored',
    count: 'Dots',
    layout: 'How the dots lie',
    fill: 'Fill',
  },
  ink: 'ink',
  size: (share: number) => (share === 1 ? 'full size' : `${Math.round(share * 100)} %`),
  turn: (degrees: number) => TURNS[degrees] ?? `${degrees}°`,
  mirrored: (isMirrored: boolean) => (isMirrored ? 'mirrored' : 'not mirrored'),
  count: (dots: number) => number(dots),
  layouts: LAYOUTS,
  add: (thing: string) => `Add another ${thing}`,
  take: (thing: string) => `Take this ${thing} away`,
  become: (was: string, place: string, is: string) =>
    `Make the ${was} (${place}) ${/^[aeiou]/i.test(is) ? 'an' : 'a'} ${is}.`,
  tell: TOLD,
} as const;
