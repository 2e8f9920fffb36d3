// What the parts of the screen say is said in each language of the app: by their library, or added to it.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { PARTS_SAID, propertiesOf } from '../../scripts/parts-said.ts';
import { LANGUAGES } from '../../src/languages/index.ts';

const INTL = 'node_modules/react-aria/dist/private/intl';
/** Parts that the app has on its screens, or a part of which is in what it has. */
const PARTS = ['overlays', 'menu', 'spinbutton', 'numberfield', 'grid', 'dnd'];

function englishOf(part: string): string {
  return readFileSync(`${INTL}/${part}/en-US.mjs`, 'utf8');
}

function namesIn(code: string): readonly string[] {
  return [...code.matchAll(/^ {4}"(\w+)":/gm)].map(([, name = '']) => name).sort();
}

const lacking = LANGUAGES.filter(
  (language) => !readdirSync(`${INTL}/overlays`).some((file) => file.startsWith(`${language}-`)),
);

test('each language that the library does not speak is added', () => {
  expect(lacking.length).toBeGreaterThan(0);
  const added = Object.keys(PARTS_SAID).map((tag) => tag.split('-')[0]);
  expect(added.sort()).toEqual([...lacking].sort());
});

describe.each(Object.entries(PARTS_SAID))('%s', (language, parts) => {
  test.each(PARTS)('says all that %s says, with what is to be filled in', (part) => {
    const words = parts[part] ?? {};
    expect(Object.keys(words).sort()).toEqual(namesIn(englishOf(part)));
    for (const [name, text] of Object.entries(words)) {
      const english = englishOf(part).split(`"${name}":`)[1]?.split('\n    "')[0] ?? '';
      const asked = new Set([...english.matchAll(/args\.(\w+)/g)].map(([, place]) => place));
      const given = new Set([...text.matchAll(/\{(\w+)\}/g)].map(([, place]) => place));
      expect(given, `${language} › ${part} › ${name}`).toEqual(asked);
    }
  });
});

test('what is added is code that fills in what it is given', () => {
  const added = new Function(`return { ${propertiesOf('dnd')} }`)()['hi-IN'];
  expect(added.insertBetween({ beforeItemText: 'क', afterItemText: 'ख' })).toContain('क और ख');
  expect(added.dropComplete).toBe(PARTS_SAID['hi-IN']?.dnd?.dropComplete);
});
