// Styles stay once they are loaded: what one screen says of a class must not reach another screen.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** The style files that come with each screen alone. */
const SCREENS = {
  today: ['today.css'],
  week: ['week.css', 'slips.css'],
  supplies: ['supplies.css'],
  growth: ['growth.css'],
  record: ['record.css', 'taps.css', 'scanning.css'],
} as const;

/** The classes that rules begin with. */
function firstClasses(files: readonly string[]): ReadonlySet<string> {
  const classes = files.flatMap((file) => {
    const text = readFileSync(new URL(`../src/web/look/${file}`, import.meta.url), 'utf8');
    const selectors = [...text.replace(/\/\*[\s\S]*?\*\//g, '').matchAll(/([^{}]+)\{/g)];
    return selectors
      .flatMap(([, list = '']) => list.split(','))
      .flatMap((selector) => /^\s*\.([\w-]+)/.exec(selector)?.[1] ?? []);
  });
  return new Set(classes);
}

test('no class has rules of two screens', () => {
  const owners = new Map<string, string[]>();
  for (const [screen, files] of Object.entries(SCREENS)) {
    for (const name of firstClasses(files)) {
      owners.set(name, [...(owners.get(name) ?? []), screen]);
    }
  }
  expect(owners.size).toBeGreaterThan(40);
  expect([...owners].filter(([, screens]) => screens.length > 1)).toEqual([]);
});
