// The chance of a blind child against ways that are counted by hand, on pages made by hand.
import { describe, expect, test } from 'vitest';
import { type ActivityId, activityOf, MOST_CHANCE } from '../../src/activities/index.ts';

const RED = { colour: 'red' };
const BLUE = { colour: 'blue' };
const GREEN = { colour: 'green' };
const YELLOW = { colour: 'yellow' };

interface Example {
  readonly id: ActivityId;
  readonly about: string;
  readonly printed: unknown;
  readonly ways: number;
}

const EXAMPLES: readonly Example[] = [
  {
    id: 'find-the-same',
    about: 'one of four',
    printed: { model: RED, choices: [BLUE, RED, GREEN, YELLOW] },
    ways: 4,
  },
  {
    id: 'odd-one-out',
    about: 'one of three',
    printed: { figures: [RED, BLUE, RED] },
    ways: 3,
  },
  {
    id: 'in-every-box',
    about: 'two of four colours, as the child is told, however often they stand there',
    printed: { boxes: [{ figures: [RED, BLUE, GREEN] }, { figures: [BLUE, YELLOW, RED] }] },
    ways: 6,
  },
  {
    id: 'same-or-different',
    about: 'yes or no for three pairs',
    printed: {
      pairs: [
        [RED, RED],
        [RED, BLUE],
        [GREEN, GREEN],
      ],
    },
    ways: 8,
  },
  {
    id: 'by-key',
    about: 'one of three entries for two items',
    printed: {
      key: [RED, BLUE, GREEN].map((figure, place) => ({
        figure,
        response: { kind: 'sign', sign: ['sign-dot', 'sign-ring', 'sign-plus'][place] },
      })),
      items: [RED, GREEN],
    },
    ways: 9,
  },
  {
    id: 'continue-row',
    about: 'one of three offered for two places',
    printed: { row: [RED, BLUE, RED, BLUE, null, null], offered: [RED, BLUE, GREEN] },
    ways: 9,
  },
  {
    id: 'continue-row',
    about: 'one of two colours of the row as a sticker',
    printed: { row: [RED, BLUE, RED, BLUE, null], response: 'sticker' },
    ways: 2,
  },
  {
    id: 'look-and-remember',
    about: 'two of four, since two were shown',
    printed: { set: [RED, BLUE], choices: [GREEN, RED, YELLOW, BLUE] },
    ways: 6,
  },
  {
    id: 'look-and-remember',
    about: 'each of three in or out, where nobody says how many come again',
    printed: { set: [RED, BLUE], choices: [GREEN, RED, YELLOW] },
    ways: 8,
  },
  {
    id: 'shadows',
    about: 'two of three shadows, each for its own model',
    printed: {
      models: [{ form: 'star' }, { form: 'heart' }],
      shadows: [{ form: 'square' }, { form: 'star' }, { form: 'heart' }],
    },
    ways: 6,
  },
  {
    id: 'size-order',
    about: 'all orders of three',
    printed: { figures: [{ size: 0.5 }, { size: 1 }, { size: 0.7 }] },
    ways: 6,
  },
  {
    id: 'size-order',
    about: 'one of three',
    printed: { figures: [{ size: 0.5 }, { size: 1 }, { size: 0.7 }], asked: 'biggest' },
    ways: 3,
  },
  {
    id: 'what-changed',
    about: 'two of three places where anything stands',
    printed: {
      first: [RED, null, BLUE, null],
      second: [RED, GREEN, null, null],
      asked: 2,
    },
    ways: 3,
  },
  {
    id: 'turned-shapes',
    about: 'two of four, as the child is told',
    printed: {
      model: { form: 'star' },
      choices: ['star', 'square', 'star', 'heart'].map((form) => ({ form })),
      matches: 2,
    },
    ways: 6,
  },
  {
    id: 'crossing-table',
    about: 'two of three loose figures into two cells',
    printed: {
      rows: [
        [RED, null],
        [null, BLUE],
      ],
      loose: [GREEN, YELLOW, RED],
    },
    ways: 6,
  },
  {
    id: 'one-of-each',
    about: 'one of two colours for each of two cells',
    printed: {
      rows: [
        [RED, null],
        [null, RED],
      ],
      figures: [RED, BLUE],
      response: 'sticker',
    },
    ways: 4,
  },
  {
    id: 'one-of-each',
    about: 'three pieces, two of them alike',
    printed: {
      rows: [
        [RED, null],
        [null, null],
      ],
      figures: [RED, BLUE],
      response: 'cut',
      pieces: [RED, BLUE, BLUE],
    },
    ways: 3,
  },
  {
    id: 'copy-pattern',
    about: 'red, blue or nothing on three free places',
    printed: {
      model: { rows: 2, columns: 2, cells: [RED, BLUE, null, null] },
      boxes: [{ cells: [RED, null, null, null] }],
      content: 'colours',
      response: 'sticker',
    },
    ways: 27,
  },
  {
    id: 'mirror-half',
    about: 'red or nothing on four places',
    printed: {
      part: { rows: 2, columns: 2, cells: [RED, null, null, null] },
      axis: 'upright',
      response: 'sticker',
    },
    ways: 16,
  },
];

describe('the chance of a blind answer', () => {
  test.each(EXAMPLES)('$id: $about, 1 in $ways', ({ id, printed, ways }) => {
    const activity = activityOf(id);
    expect(activity.printed.safeParse(printed).success).toBe(true);
    expect(activity.chance(printed)).toBeCloseTo(1 / ways, 12);
  });

  test('is none where the child draws, whatever the page shows', () => {
    expect(activityOf('continue-row').chance({ row: [RED, BLUE, RED, BLUE, null] })).toBe(0);
    const field = [RED, BLUE, RED, null];
    expect(activityOf('missing-part').chance({ field, columns: 2 })).toBe(0);
  });

  test('is capped where there is but one place to lay the one thing', () => {
    const rows = [
      [RED, BLUE],
      [GREEN, null],
    ];
    expect(activityOf('crossing-table').chance({ rows, loose: [YELLOW] })).toBe(MOST_CHANCE);
  });
});
