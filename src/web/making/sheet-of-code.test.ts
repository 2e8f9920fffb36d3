// The sheet of a code: several of them stand in one document.
import { expect, test } from 'vitest';
import { DEFAULT_PAGE, makeSheet } from '../../sheets/index.ts';
import { sheetOfCode } from './sheet-of-code.ts';

/** The ids in the picture of a sheet with textures, which are cut out by clip paths. */
function idsOf(seed: number): readonly string[] {
  const values = { content: 'textures' };
  const asked = { step: 1, values, seed, tasks: 2, page: DEFAULT_PAGE, print: 'colour' } as const;
  const made = makeSheet({ activity: 'odd-one-out', ...asked });
  const shown = made.ok ? sheetOfCode(made.value.code) : made;
  if (!shown.ok) throw new Error(JSON.stringify(shown.refusals));
  return [...shown.value.svg.matchAll(/ id="([^"]+)"/g)].map(([, id = '']) => id);
}

test('pictures of two sheets have no id in common', () => {
  const [one, other] = [idsOf(1), idsOf(2)];
  expect(one.length).toBeGreaterThan(0);
  expect(one.filter((id) => other.includes(id))).toEqual([]);
});
