// What is said of a row: the question that fits where it is empty, the answer in words.
import { expect, test } from 'vitest';
import type { Printed } from './task.ts';
import { WORDS } from './words.ts';

const RED = { form: 'circle', colour: 'red' } as const;
const BLUE = { form: 'circle', colour: 'blue' } as const;
const AT_END: Printed = { row: [RED, BLUE, RED, BLUE, null], response: 'colour-in' };
const INSIDE: Printed = {
  row: [RED, BLUE, RED, null, RED, BLUE],
  response: 'sticker',
  stickerMm: 16,
};

test('asks for what comes next, or for what is missing inside the row', () => {
  expect(WORDS.en.say(AT_END)).toContain('What comes next?');
  expect(WORDS.en.say(INSIDE)).toContain('What is missing in the row?');
});

test('names the answer and does not give it away in the description', () => {
  expect(WORDS.en.answer(AT_END, { figures: [RED] })).toBe('Next: red circle.');
  expect(WORDS.en.describe(AT_END)).toBe(
    'A row: red circle, blue circle, red circle, blue circle, empty place.',
  );
});

test('says how many stickers, and that others are laid out too', () => {
  expect(WORDS.en.say(INSIDE)).toContain('Put the right sticker on the empty circle.');
  expect(WORDS.en.show(INSIDE)).toContain('stickers of all colours');
});
