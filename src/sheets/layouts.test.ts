// Papers and ways to lay out a page: what of a sheet they change, and what they leave alone.
import { describe, expect, test } from 'vitest';
import { placedIn } from '../../tests/scene-bounds.ts';
import { testSeed } from '../../tests/seed.ts';
import { ACTIVITY_IDS, activityOf, STICKERS_SOLD_MM } from '../activities/index.ts';
import { ORIENTATIONS, pageSize } from '../page/index.ts';
import { readCode } from './code.ts';
import { materialsToDo } from './cut-demands.ts';
import { placedTasks } from './placed-tasks.ts';
import { makeSheet, type Sheet, type SheetRequest } from './sheet.ts';
import { sheetPage } from './sheet-page.ts';
import type { PrintChoices } from './sheet-spec.ts';

const USUAL: PrintChoices = { page: { paper: 'A4', orientation: 'portrait' }, print: 'colour' };
const SEED = testSeed('layouts of sheets');

function request(activity: SheetRequest['activity'], choices: Partial<PrintChoices>): SheetRequest {
  return { activity, step: 1, values: {}, seed: SEED, ...USUAL, ...choices };
}

const LAYOUTS: Readonly<Record<string, Partial<PrintChoices>>> = {
  A3: { page: { paper: 'A3', orientation: 'portrait' } },
  'A5 sideways': { page: { paper: 'A5', orientation: 'landscape' } },
  'the pocket’s margin': { page: { paper: 'A4', orientation: 'portrait', margin: 'pocket' } },
  'the left hand': { hand: 'left' },
  'large print': { size: 'large' },
  'ink saving': { ink: 'saving' },
};

describe.each(Object.entries(LAYOUTS))('%s', (_, choices) => {
  test('asks the same first task as the usual page does, for the left hand maybe with sides changed, and is read back from its code', () => {
    for (const id of ACTIVITY_IDS) {
      const usual = makeSheet(request(id, {}));
      const made = makeSheet(request(id, choices));
      if (!usual.ok) throw new Error(id);
      // Not every task has room everywhere: then it says so.
      if (!made.ok) continue;
      const [first, usually] = [made.value.tasks[0], usual.value.tasks[0]];
      if (choices.hand === undefined) expect(first, id).toEqual(usually);
      const { features } = activityOf(id);
      expect(features(first?.printed), id).toEqual(features(usually?.printed));
      const read = readCode(made.value.code);
      expect(read, id).toEqual({ ok: true, value: made.value.spec });
      expect(made.value.code, id).not.toBe(usual.value.code);
    }
  });

  test('leaves its margin blank', () => {
    for (const id of ACTIVITY_IDS) {
      const made = makeSheet(request(id, choices));
      if (!made.ok) continue;
      const page = sheetPage(made.value);
      const { page: wanted } = made.value.spec;
      expect(pageSize(wanted.paper, wanted.orientation)).toMatchObject({ widthMm: page.widthMm });
      // Half the width of a line may lie over it.
      const marginMm = (wanted.margin === 'pocket' ? 20 : 12) - 0.6;
      for (const node of page.nodes) {
        if (node.kind !== 'group') continue;
        for (const { bounds } of placedIn(node)) {
          expect(bounds.left, id).toBeGreaterThan(marginMm);
          expect(bounds.top, id).toBeGreaterThan(marginMm);
          expect(bounds.right, id).toBeLessThan(page.widthMm - marginMm);
          expect(bounds.bottom, id).toBeLessThan(page.heightMm - marginMm);
        }
      }
    }
  });
});

describe('large print', () => {
  test('draws every task a quarter larger at the least, a seventh with stickers, or is refused', () => {
    let drawn = 0;
    for (const id of ACTIVITY_IDS) {
      const made = makeSheet(request(id, { size: 'large' }));
      if (!made.ok) continue;
      drawn += 1;
      const places = sheetPage(made.value).nodes.flatMap((node) =>
        node.kind === 'group' && node.role === 'task-place' ? [node.transform] : [],
      );
      expect(places.length, id).toBe(made.value.tasks.length);
      // Stickers are sold in few sizes.
      const least = diametersOf(made.value).length > 0 ? 1.15 : 1.249;
      for (const place of places) expect(place?.[0], id).toBeGreaterThan(least);
    }
    expect(drawn).toBeGreaterThan(9);
  });

  test('takes larger stickers that are sold, and has places exactly as large', () => {
    for (const stickerMm of ['8', '10', '13', '16', '19']) {
      const values = { response: 'sticker', stickerMm };
      for (const orientation of ORIENTATIONS) {
        const page = { paper: 'A4', orientation } as const;
        const made = makeSheet({ ...request('copy-pattern', { size: 'large', page }), values });
        if (!made.ok) throw new Error(JSON.stringify(made.refusals));
        const [larger, ...others] = diametersOf(made.value);
        expect(others).toEqual([]);
        expect(STICKERS_SOLD_MM.map(Number)).toContain(larger);
        for (const { times } of placedTasks(made.value, 'ar'))
          expect(times * Number(stickerMm)).toBeCloseTo(larger ?? 0, 9);
      }
    }
  });

  test('is refused where no larger stickers are sold, and says what to do', () => {
    const made = makeSheet({
      ...request('copy-pattern', { size: 'large' }),
      values: { response: 'sticker', stickerMm: '25' },
    });
    expect(made).toMatchObject({
      refusals: [{ code: 'not-a-choice', at: 'copy-pattern › size', got: 'large' }],
    });
  });
});

/** Of the stickers that are laid out, each size once. */
function diametersOf(sheet: Sheet): readonly number[] {
  const all = materialsToDo(sheet).flatMap((material) =>
    material.kind === 'sticker' ? [material.diameterMm] : [],
  );
  return [...new Set(all)];
}

test('most steps have room on A5 lying sideways, which is as wide as A4', () => {
  const steps = ACTIVITY_IDS.flatMap((id) =>
    activityOf(id).ladder.map((_, index) => [id, index + 1] as const),
  );
  const fitting = steps.filter(
    ([activity, step]) =>
      makeSheet({ ...request(activity, LAYOUTS['A5 sideways'] ?? {}), step }).ok,
  );
  console.info(`${fitting.length} of ${steps.length} steps fit A5 sideways`);
  expect(fitting.length / steps.length).toBeGreaterThan(0.5);
});
