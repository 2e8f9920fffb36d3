// What a sentence promises: one line that says where, what was expected, what came and what to do.
import { describe, expect, it } from 'vitest';
import { type Refusal, told } from '../base/index.ts';
import { LANGUAGES, loadCatalogue } from '../languages/index.ts';
import { nearestOf } from './nearest.ts';
import { plainText } from './plain-text.ts';
import { sentenceIn, sentenceOf } from './sentences.ts';

const CASES: readonly (readonly [Refusal, string])[] = [
  [
    { code: 'out-of-range', at: 'in-every-box › step', got: 12, min: 1, max: 9 },
    'in-every-box › step: expected 1 to 9, got 12. Use 9.',
  ],
  [
    { code: 'out-of-range', at: '--tasks', got: 0, min: 1, max: 9, because: 'of the page' },
    '--tasks: expected 1 to 9, got 0 (of the page). Use 1.',
  ],
  [
    {
      code: 'not-a-choice',
      at: '--activity',
      got: 'in-evry-box',
      choices: ['by-key', 'in-every-box'],
    },
    '--activity: expected one of by-key, in-every-box, got "in-evry-box". Did you mean in-every-box?',
  ],
  [
    {
      code: 'not-a-choice',
      at: 'model.form',
      got: 'small-ß',
      choices: Array.from({ length: 300 }, (_, index) =>
        index === 7 ? 'small-s' : `form-${index}`,
      ),
    },
    'model.form: expected one of 300 that are known, such as form-0, form-1, form-2, form-3, form-4, got "small-ß". Did you mean small-s?',
  ],
  [
    { code: 'wrong-type', at: 'recipe › seed', got: 'x', expected: 'a whole number' },
    'recipe › seed: expected a whole number, got "x".',
  ],
  [
    { code: 'missing', at: 'recipe › parts', expected: 'a list' },
    'recipe › parts: expected a list, got nothing.',
  ],
  [
    { code: 'unknown-field', at: 'recipe', got: 'sead', choices: ['seed', 'parts'] },
    'recipe: "sead" is not known here. Did you mean seed?',
  ],
  [
    { code: 'unknown-field', at: 'recipe', got: 'colour', choices: ['seed', 'parts'] },
    'recipe: "colour" is not known here. Known are seed, parts.',
  ],
  [
    { code: 'too-big', at: 'recipe', got: 50_000_000, max: 1_000_000, unit: 'bytes' },
    'recipe: expected at most 1000000 bytes, got 50000000.',
  ],
  [
    { code: 'not-correctable', at: '--measured', got: 44, least: 45, most: 55 },
    '--measured: a 50 mm line that measures 44 mm cannot be put right here: only 45 to 55 mm can. The print window may be scaling the page: choose “100 %” or “actual size” in the print window, and measure a new print.',
  ],
  [
    { code: 'not-correctable', at: '--measured', got: 47, least: 47.2, most: 55, paper: 'A3' },
    '--measured: on A3, at least 47.2 mm can be put right, got 47 mm: enlarged further, the page would run over the edge of the paper. Do not correct it; choose “100 %” or “actual size” in the print window, and measure a new print.',
  ],
  [
    { code: 'unknown-version', at: 'sheet code', got: 4, known: [1, 2] },
    'sheet code: made by version 4; this program reads versions 1, 2. Get a newer Samewise to read it.',
  ],
  [
    {
      code: 'does-not-fit',
      at: 'by-key › tasks',
      got: 6,
      max: 2,
      unit: told('reasons', 'amount.tasks', { paper: 'A4', lies: 'portrait' }),
      advice: told('reasons', 'do.fewer', { count: 2 }),
    },
    'by-key › tasks: expected at most 2 tasks on A4 portrait, got 6. Ask for 2 or fewer.',
  ],
  [
    {
      code: 'does-not-fit',
      at: 'by-key › tasks',
      got: 1,
      max: 0,
      unit: told('reasons', 'amount.tasks', { paper: 'A5', lies: 'portrait' }),
      advice: told('reasons', 'do.easier'),
    },
    'by-key › tasks: there is room for no tasks on A5 portrait. Choose an easier step.',
  ],
  [
    {
      code: 'unchangeable',
      at: 'by-key › task 2',
      reason: told('reasons', 'change.most', { most: 4 }),
    },
    'by-key › task 2: this change cannot be made: at most 4 things can be added or taken away. Nothing was changed.',
  ],
  [
    { code: 'unwritable', at: 'pack.pdf', reason: 'the disk is full' },
    'pack.pdf: cannot be written: the disk is full.',
  ],
  [
    { code: 'storage', at: 'records', fault: 'full' },
    'records: this browser has no room left. This was not saved; what was saved before is still there. ' +
      'Make a backup, free some space on this device, then try again.',
  ],
];

describe('a refusal', () => {
  it.each(CASES)('%j is one whole sentence or two', (refusal, sentence) => {
    expect(sentenceOf(refusal)).toBe(sentence);
  });

  it('carries nothing from a stranger that moves a terminal', () => {
    const refusal: Refusal = {
      code: 'unreadable',
      at: 'pack',
      got: '\u001b[2J\nrm\u202e',
      expected: 'JSON',
    };
    expect(sentenceOf(refusal)).toBe('pack: expected JSON, got "�[2J�rm�".');
    expect(plainText('käse › 3')).toBe('käse › 3');
  });

  it('keeps the direction marks of a language, and none that came in', async () => {
    await loadCatalogue('ar');
    const at = 'sheet code › activity';
    const refusal: Refusal = {
      code: 'not-a-choice',
      at,
      got: 'x\u2069y',
      choices: ['1', '2\u202e'],
    };
    const sentence = sentenceIn('ar', refusal);
    expect(sentence).toContain('\u20671، 2�\u2069');
    expect(sentence).toContain('«\u2068x�y\u2069»');
  });

  it.each(LANGUAGES)('shows no mark of its own as one from a stranger, %s', async (language) => {
    await loadCatalogue(language);
    for (const [refusal] of CASES) expect(sentenceIn(language, refusal)).not.toContain('�');
  });

  it('says what came in cut short, however long it was', () => {
    const at = 'measured';
    const got = '9'.repeat(100_000);
    const expected = 'a number';
    const choice: Refusal = { code: 'not-a-choice', at, got, choices: ['a', 'b'] };
    const pictures: Refusal = { code: 'pictures-not-here', at, got: `${got}, ${got}` };
    for (const refusal of [{ code: 'wrong-type', at, got, expected } as const, choice, pictures]) {
      expect(sentenceOf(refusal).length).toBeLessThan(400);
    }
  });
});

describe('the nearest choice', () => {
  it.each([
    ['bxoes', 'boxes'],
    ['Boxes', 'boxes'],
    ['figure', 'figures'],
    ['zzz', undefined],
    ['', undefined],
  ])('to %j is %j', (typed, nearest) => {
    expect(nearestOf(typed, ['boxes', 'figures', 'shared'])).toBe(nearest);
  });
});
