// The sentences that an adult says and reads.
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../figures/index.ts';
import type { ColourName } from '../../palette/index.ts';
import { inEveryBox } from './index.ts';
import { materialsOf } from './materials.ts';
import type { Box, Printed } from './task.ts';

const WORDS = inEveryBox.words.en;

function dots(...colours: readonly ColourName[]): Box {
  return { figures: colours.map((colour) => ({ form: 'circle', colour })) };
}

function forms(...figures: readonly Figure[]): Box {
  return { figures };
}

const ONE: Printed = { boxes: [dots('red', 'blue'), dots('pink', 'red'), dots('red', 'green')] };
const TWO: Printed = { boxes: [dots('red', 'blue', 'black'), dots('blue', 'red', 'pink')] };

describe('what the adult says', () => {
  test('asks for one colour, and names what the child does', () => {
    expect(WORDS.say(ONE)).toEqual([
      'Which colour is in every box?',
      'Look into one box after the other.',
      'Put your finger on it in each box.',
    ]);
    expect(WORDS.say({ ...ONE, response: 'ring' }).at(-1)).toBe(
      'Draw a ring round it in each box.',
    );
    expect(WORDS.say({ ...ONE, response: 'sticker', circles: 1 }).at(-1)).toBe(
      'Put a sticker of that colour on the empty circle.',
    );
  });

  test('says how many there are to find', () => {
    expect(WORDS.say(TWO)[0]).toBe('Which two colours are in every box?');
    expect(WORDS.say(TWO).at(-1)).toBe('Put your finger on them in each box.');
  });

  test.each([
    [forms({ form: 'star' }, { form: 'heart' }), 'Which shape is in every box?'],
    [forms({ form: 'small-k' }, { form: 'capital-S' }), 'Which letter is in every box?'],
    [forms({ form: 'numeral-3' }, { form: 'numeral-4' }), 'Which number is in every box?'],
    [
      forms({ form: 'dots', count: 3 }, { form: 'dots', count: 1 }),
      'Which dot card is in every box?',
    ],
    [forms({ form: 'star' }, { form: 'small-k' }), 'Which picture is in every box?'],
    [forms({ form: 'star' }, { form: 'star', size: 0.6 }), 'Which size is in every box?'],
    [forms({ form: 'arrow' }, { form: 'arrow', turn: 90 }), 'Which direction is in every box?'],
    [forms({ fill: 'spots' }, { fill: 'checks' }), 'Which pattern is in every box?'],
    [forms({ form: 'sign-plus' }, { form: 'sign-wave' }), 'Which sign is in every box?'],
  ])('names what is looked at: %#', (box, question) => {
    const [first = {}] = box.figures;
    expect(WORDS.say({ boxes: [box, forms(first)] })[0]).toBe(question);
  });
});

test('the adult says that all counts where figures differ in two things', () => {
  const [star, heart]: readonly Figure[] = [
    { form: 'star', colour: 'red' },
    { form: 'heart', colour: 'blue' },
  ];
  const said = WORDS.say({ boxes: [forms(star ?? {}, heart ?? {}), forms(star ?? {})] });
  expect(said).toContain('The same means the same colour and shape.');
  expect(said[0]).toBe('Which picture is in every box?');
});

describe('the task and its answer in words', () => {
  test('describe every box and give nothing away', () => {
    expect(WORDS.describe(ONE)).toBe(
      'Three boxes. Box 1: red and blue. Box 2: pink and red. Box 3: red and green.',
    );
  });

  test('tell the answer of one and of several', () => {
    const figure = (colour: ColourName): Figure => ({ form: 'circle', colour });
    expect(WORDS.answer(ONE, { figures: [figure('red')] })).toBe('Red is in all three boxes.');
    expect(WORDS.answer(TWO, { figures: [figure('blue'), figure('red')] })).toBe(
      'Blue and red are in both boxes.',
    );
  });

  test('name shapes, letters, numbers and quantities', () => {
    const told = (figure: Figure) =>
      WORDS.answer({ boxes: [forms(figure), forms(figure)] }, { figures: [figure] });
    expect(told({ form: 'half-circle' })).toBe('The half circle is in both boxes.');
    expect(told({ form: 'small-k' })).toBe('The small k is in both boxes.');
    expect(told({ form: 'numeral-3' })).toBe('The 3 is in both boxes.');
    expect(told({ form: 'dots', count: 1 })).toBe('The card with one dot is in both boxes.');
    expect(told({ form: 'dots', count: 4 })).toBe('The card with four dots is in both boxes.');
  });
});

describe('what to lay out', () => {
  const answer = { figures: [{ form: 'circle', colour: 'red' } as const] };

  test('is a sticker of each colour of the answer, at its size', () => {
    const printed: Printed = { ...ONE, response: 'sticker', circles: 1, stickerMm: 13 };
    expect(materialsOf(printed, answer)).toEqual([
      { kind: 'sticker', colour: 'red', diameterMm: 13, count: 1 },
    ]);
    expect(WORDS.show(printed)).toContain('stickers of other colours too');
  });

  test('is a pencil for rings, and nothing to point with', () => {
    expect(materialsOf({ ...ONE, response: 'ring' }, answer)).toEqual([{ kind: 'pencil' }]);
    expect(materialsOf(ONE, answer)).toEqual([]);
  });
});
