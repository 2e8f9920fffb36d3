// The table for marking has room for a full room.
import { beforeAll, expect, test } from 'vitest';
import { loadAllScripts } from '../../tests/outside/script-fonts.ts';
import { LANGUAGES, loadAllCatalogues } from '../languages/index.ts';
import { HOME_PAPERS } from '../page/index.ts';
import { makeGroupPack } from './group.ts';
import { markingPages } from './marking-table.ts';

beforeAll(async () => {
  await loadAllCatalogues();
  await loadAllScripts();
});

test.each(HOME_PAPERS)(
  'thirty children with ten sheets stand on one page of %s in every language',
  (paper) => {
    const made = makeGroupPack({
      ...{ seed: 7, print: 'colour', page: { paper, orientation: 'portrait' } },
      parts: [{ activity: 'in-every-box', step: 4, values: {}, sheets: 10 }],
      children: Array.from({ length: 30 }, (_, number) => ({
        name: `Child ${number}`,
        ...(number === 0 ? { shift: 1 } : {}),
      })),
    });
    if (!made.ok) throw new Error(JSON.stringify(made.refusals));
    for (const language of LANGUAGES) {
      expect(markingPages(made.value.sheets, language), language).toHaveLength(1);
    }
  },
);
