// Sheets that an adult sticks dots on are shown with the stickers of the house, or it is said why they do not fit.
import { expect, test } from 'vitest';
import { COLOUR_NAMES } from '../../palette/index.ts';
import { FIRST_ENTRIES } from '../recipe/entries.ts';
import { objectionsOf } from './objections-of.ts';
import { show } from './show.ts';

function shown(diameterMm: number, made: 'half-made' | 'by-hand') {
  const stickers = COLOUR_NAMES.map((colour) => ({ colour, diameterMm, count: 99 }));
  const stock = { stickers, crayons: [], tools: [] };
  const recipe = { activity: 'in-every-box', step: 3, sheets: 1, seed: 4, made };
  const entries = { ...FIRST_ENTRIES, ...recipe, stock };
  return show({ entries }, 'sheet', { wanted: 1, leaf: 1 });
}

test.each([
  // The middle of a line of 0.5 mm inside 12 mm.
  ['half-made', '-5.75 5.75'],
  ['by-hand', '12\u00a0mm'],
] as const)('%s with the size that there is', (made, sign) => {
  const page = shown(12, made);
  expect(page.ok && page.value.svg.includes(sign)).toBe(true);
  const larger = shown(14, made);
  expect(larger.ok && larger.value.svg.includes(sign)).toBe(false);
});

test.each(['half-made', 'by-hand'] as const)(
  'stickers larger than the places of a %s sheet are told beside the switch',
  (made) => {
    const page = shown(40, made);
    if (page.ok) throw new Error('there is a page');
    const [objection] = objectionsOf(page.refusals, 'in-every-box');
    expect(objection).toMatchObject({ control: 'onlyWith' });
    expect(objection?.sentence).toMatch(
      /^Only with what you have: .*got 40\..*Take smaller stickers/,
    );
  },
);
