// What is remembered of the wishes for plans is read back as it was, or as at first.
import { expect, test } from 'vitest';
import { USUAL_MINUTES } from '../../plan/index.ts';
import { DEFAULT_PAGE } from '../../sheets/index.ts';
import { THINGS, textOf, wishesIn, withThings } from './wishes.ts';

const FIRST = { minutes: USUAL_MINUTES, page: DEFAULT_PAGE, print: 'colour' };

test.each([
  undefined,
  '',
  'no wishes',
  '[]',
  'null',
  '7',
  '{"minutes":"many","paper":"A3","print":"gold","things":7}',
  '{"minutes":7,"things":["string"]}',
])('of %s nothing is read, and the wishes are as at first', (text) => {
  expect(wishesIn(text)).toEqual(FIRST);
});

test('one wish that cannot be read takes none of the others with it', () => {
  const text = '{"minutes":"many","paper":"Letter","print":"grey","things":["glue"]}';
  expect(wishesIn(text)).toEqual({
    minutes: USUAL_MINUTES,
    page: { ...DEFAULT_PAGE, paper: 'Letter' },
    print: 'grey',
    supplies: ['glue'],
  });
});

test('wishes are read back as they were written, with all things in the house or with none', () => {
  for (const things of [THINGS, THINGS.slice(0, 2), []]) {
    const wishes = withThings(wishesIn('{"minutes":20,"paper":"Letter"}'), things);
    expect(wishesIn(textOf(wishes))).toEqual(wishes);
    expect(wishes.supplies).toEqual(things === THINGS ? undefined : things);
  }
});
