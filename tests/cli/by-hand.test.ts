// Sheets by hand and half-made from the command line, from options, recipe and code.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { emptyFolder, samewise } from './program.ts';

const PACK = ['pack', '--activity', 'in-every-box', '--seed', '5'];

async function titles(words: readonly string[], cwd: string): Promise<string> {
  const { code, stderr } = await samewise([...words, '--svg', 'pages'], { cwd });
  expect(stderr).toContain('all proven');
  expect(code).toBe(0);
  return readdirSync(join(cwd, 'pages'))
    .sort()
    .map((name) => readFileSync(join(cwd, 'pages', name), 'utf8'))
    .map((svg) => /<title[^>]*>([^<]*)/.exec(svg)?.[1] ?? '')
    .join(' | ');
}

describe('samewise', () => {
  test('pack --by-hand --quick gives the adult’s page and guides of one task a page', async () => {
    const all = await titles([...PACK, '--by-hand', '--quick'], emptyFolder());
    expect(all).toMatch(/^For the adult \| Make it by hand: in every box, step 1 \(/);
    expect(all).not.toContain('Answers');
  });

  test('pack --half-made tells what to stick on first', async () => {
    const all = await titles([...PACK, '--half-made'], emptyFolder());
    expect(all).toMatch(/^For the adult \| Answers \| |Stick these on first/);
    expect(all).toContain('Stick these on first');
  });

  test('pack --half-made --stock takes the stickers of the house and says what it takes of them', async () => {
    const cwd = emptyFolder();
    const stock = {
      ...{ format: 'samewise.stock', version: 1, crayons: [], tools: [], papers: ['A4'] },
      stickers: ['red', 'blue', 'yellow'].map((colour) => ({ colour, diameterMm: 12, count: 40 })),
    };
    writeFileSync(join(cwd, 'stock.json'), JSON.stringify(stock));
    const words = [...PACK, '--half-made', '--stock', 'stock.json', '--svg', 'pages'];
    const { code, stderr } = await samewise(words, { cwd });
    expect(code, stderr).toBe(0);
    expect(stderr).toMatch(/from the house: (\d+ of 40 \w+ stickers of 12 mm, )+A4 paper\n/);
    const pages = readdirSync(join(cwd, 'pages')).map((name) =>
      readFileSync(join(cwd, 'pages', name), 'utf8'),
    );
    expect(pages.join('')).toMatch(/stickers, 12[\u00a0 ]mm/);
  });

  test('a recipe says it, too', async () => {
    const cwd = emptyFolder();
    const recipe = {
      format: 'samewise.recipe',
      version: 1,
      seed: 5,
      made: 'by-hand',
      quick: true,
      parts: [{ activity: 'in-every-box', step: 1, sheets: 1 }],
    };
    writeFileSync(join(cwd, 'recipe.json'), JSON.stringify(recipe));
    expect(await titles(['pack', '--recipe', 'recipe.json'], cwd)).toContain('Make it by hand');
  });

  test('again --by-hand makes the guide of the sheet with the code', async () => {
    const cwd = emptyFolder();
    const all = await titles(['again', '3222-2223-MFTU-NH', '--by-hand'], cwd);
    expect(all).toContain('Make it by hand: in every box, step 1 (3222-2223-MFTU-NH)');
  });

  test.each([
    ['two ways at once', ['--by-hand', '--half-made'], 'either --by-hand or --half-made'],
    ['the quickest layout of printed sheets', ['--quick'], '--quick: expected --by-hand'],
    ['stickers for printed sheets', ['--sticker', '12'], '--sticker: expected --by-hand'],
    ['stickers of no size', ['--by-hand', '--sticker', '0'], 'expected 6 to 40, got 0'],
    ['a size in words', ['--by-hand', '--sticker', 'big'], 'a whole number from 6 to 40'],
    ['too large stickers', ['--by-hand', '--sticker', '40'], 'Take smaller stickers'],
  ])('refuses %s in one sentence and writes nothing', async (_, words, said) => {
    const cwd = emptyFolder();
    const { code, stderr } = await samewise([...PACK, ...words, '--out', 'out.pdf'], { cwd });
    expect(code).toBe(2);
    expect(stderr).toContain(said);
    expect(readdirSync(cwd)).toEqual([]);
  });
});
