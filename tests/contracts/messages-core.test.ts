// Messages of the core: each can be read as ICU MessageFormat; and with all of them in other letters, no page, guide or
// refusal says a word in Latin ones.
import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test, vi } from 'vitest';
import { englishMessages } from '../../scripts/english-messages.ts';
import { ACTIVITY_IDS, type ActivityId, activityOf } from '../../src/activities/index.ts';
import { type Refusal, told } from '../../src/base/index.ts';
import { pagesMade } from '../../src/by-hand/index.ts';
import { PICTURE_CREDIT } from '../../src/figures/index.ts';
import type { Page, SceneNode } from '../../src/page/index.ts';
import { pairNames } from '../../src/plan/index.ts';
import {
  FRAMEWORKS,
  makePack,
  type Pack,
  packPages,
  rulerPages,
  TO_CUT,
} from '../../src/sheets/index.ts';
import { sentenceIn } from '../../src/words/index.ts';

import { INVENTED } from './invented.ts';

vi.mock('../../src/languages/language.ts', () => import('./invented.ts'));
vi.mock('../../src/languages/catalogues.ts', () => import('./invented.ts'));

const language = INVENTED;

describe('every message', () => {
  test('can be read, and no apostrophe hides what stands in braces', () => {
    for (const [space, messages] of Object.entries(englishMessages())) {
      expect(Object.keys(messages).length, space).toBeGreaterThan(0);
      for (const [key, message] of Object.entries(messages)) {
        const place = `${space} › ${key}: ${message}`;
        expect(message.includes('{') && message.includes("'"), place).toBe(false);
        expect(() => new IntlMessageFormat(message, 'en'), place).not.toThrow();
      }
    }
  });
});

function packOf(activity: ActivityId, toCut: Pack['toCut'] = []): Pack {
  const { length } = activityOf(activity).ladder;
  const steps = [...new Set([1, Math.ceil(length / 2), length])];
  const pack = makePack({
    ...{ seed: 11, page: { paper: 'A4', orientation: 'portrait' }, print: 'colour' },
    parts: steps.map((step) => ({ activity, step, values: {}, sheets: 1 })),
    ...{ toCut, goals: FRAMEWORKS },
  });
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  return pack.value;
}

/** What is the same in every language: codes, names, published identifiers, marks of colours. */
const NAMES = [
  /\b[0-9A-Z]{4}(-[0-9A-Z]{1,4})+\b/g,
  /\bA4\b/g,
  /^(Bk|Bn|Gy|Pk)$/,
  /\b(P-ATL|P-MATH|P-PMP|P-SCI|K\.[A-Z]{1,2}\.[A-Z]|C-|CG-)[ \u00a0]?[\d.-]+/g,
  /\bELG\u00a0(Number|Numerical\u00a0Patterns|Fine\u00a0Motor\u00a0Skills)\b/g,
  /\bELG\b|\bExploration\b|\bCG-13\b/g,
];

/** Single letters are spoken of: they are what some tasks are about. */
const LATIN_WORD = /[A-Za-z]{2,}/;

function latinIn(pages: Iterable<Page>): readonly string[] {
  const said = [...pages].flatMap(({ title, nodes }) => [title, ...nodes.flatMap(saidIn)]);
  const credit = PICTURE_CREDIT.split(/[ .]/);
  return [...new Set(said)].filter((text) => {
    const left = NAMES.reduce((rest, name) => rest.replace(name, ''), text);
    return left.split(/\s/).some((word) => LATIN_WORD.test(word) && !isOf(credit, word));
  });
}

/** What a licence asks to be said is no word of ours. */
function isOf(credit: readonly string[], word: string): boolean {
  return credit.includes(word.replace(/\.$/, ''));
}

/** All that is printed in a node, and what it is for those who cannot see it. */
function saidIn(node: SceneNode): readonly string[] {
  if (node.kind === 'text') return [node.text];
  if (node.kind === 'shape') return [];
  const own = [node.alt, node.title].filter((text) => text !== undefined);
  return [...own, ...node.children.flatMap(saidIn)];
}

describe.each(ACTIVITY_IDS)(
  'in a language that is a catalogue only, %s has no English word',
  (id) => {
    test('on the pages of a pack', () => {
      const { title, pages } = packPages(packOf(id, TO_CUT), { language });
      expect(title).not.toMatch(LATIN_WORD);
      expect(latinIn(pages)).toEqual([]);
    });

    test.each(['by-hand', 'half-made'] as const)('where it is made %s', (made) => {
      const all = pagesMade(packOf(id), { made }, { language });
      if (!all.ok) throw new Error(JSON.stringify(all.refusals));
      expect(latinIn(all.value.pages)).toEqual([]);
    });
  },
);

describe('in a language that is a catalogue only, no English word stands', () => {
  test('on the marking table of a group', () => {
    const part = { activity: 'odd-one-out', step: 2, values: {}, sheets: 2 } as const;
    const pack = makePack({
      ...{ seed: 3, page: { paper: 'A4', orientation: 'portrait' }, print: 'colour' },
      ...{ parts: [part], children: [{ name: 'Ø' }, { name: 'Å', shift: 1 }] },
    });
    if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
    expect(latinIn(packPages(pack.value, { language }).pages)).toEqual([]);
  });

  test('on the page that checks a printer', () => {
    expect(latinIn(rulerPages('A4', language).pages)).toEqual([]);
  });

  test('in what sets a pair apart', () => {
    const pairs = [
      pairNames({ size: 0.5 }, { size: 1 }, language),
      pairNames({ colour: 'red' }, {}, language),
      pairNames({ form: 'star' }, { form: 'circle' }, language),
    ];
    expect(pairs.flat().join(' ')).not.toMatch(LATIN_WORD);
  });

  test.each(refusals())('in a refusal: %j', (refusal) => {
    expect(sentenceIn(language, refusal)).not.toMatch(LATIN_WORD);
  });
});

function refusals(): readonly Refusal[] {
  const at = '1 › 2';
  const red = { what: 'sticker', colour: 'red', diameterMm: 13, count: 3 } as const;
  const crayon = { what: 'crayon', colour: 'blue' } as const;
  return [
    { code: 'out-of-range', at, got: 12, min: 1, max: 9 },
    {
      code: 'out-of-range',
      at,
      got: 12,
      min: 1,
      max: 1,
      because: told('reasons', 'row', { most: 6 }),
    },
    { code: 'not-a-choice', at, got: 3, choices: ['1', '2'], nearest: '2' },
    { code: 'unknown-field', at, got: '%', choices: ['1', '2'] },
    { code: 'unknown-field', at, got: '%', choices: [] },
    {
      code: 'wrong-type',
      at,
      got: 3,
      expected: told('reasons', 'expected.whole', { min: 1, max: 9 }),
    },
    { code: 'missing', at, expected: told('reasons', 'expected.whole', { min: 1, max: 9 }) },
    { code: 'too-big', at, got: 3, max: 2, unit: told('reasons', 'amount.children') },
    {
      code: 'does-not-fit',
      at,
      got: 3,
      max: 2,
      unit: told('reasons', 'amount.sheets.equal'),
      advice: told('reasons', 'do.easier'),
    },
    { code: 'wrong-check', at, got: '1' },
    { code: 'unknown-version', at, got: 4, known: [1, 2] },
    { code: 'not-proven', at, reason: told('faults', 'several-answers', { count: 2 }) },
    { code: 'not-correctable', at, got: 44, least: 45, most: 55 },
    { code: 'unwritable', at, reason: '…' },
    { code: 'unchangeable', at, reason: told('reasons', 'change.undrawable') },
    ...(['denied', 'full', 'blocked', 'failed'] as const).map(
      (fault) => ({ code: 'storage', at, fault }) as const,
    ),
    {
      ...{ code: 'not-in-the-house', at, sheets: 3, possible: 1 },
      ...{ needs: [red, crayon, { what: 'glue' }], has: [], add: [red] },
    },
  ];
}
