// The sheet of a code: several of them stand in one document.
import { expect, test } from 'vitest';
import { DEFAULT_PAGE, makeSheet } from '../../sheets/index.ts';
import { tapTasks } from '../planning/tap-tasks.ts';
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

test('a sheet that was changed is shown and can be recorded as it was changed', () => {
  const asked = { step: 3, values: {}, seed: 5, page: DEFAULT_PAGE, print: 'colour' } as const;
  const edit = { task: 0, shape: [], figures: [[0, { colour: 'pink' }]], facts: [] } as const;
  const made = makeSheet({ activity: 'in-every-box', ...asked, edits: [edit] });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  const { code } = made.value;
  expect(sheetOfCode(code.toLowerCase())).toMatchObject({ ok: true, value: { code } });
  const taps = tapTasks({ code });
  expect(taps.ok && taps.value[0]?.choices[0]?.name).toContain('pink');
});
