// What folding promises: the look half is wholly behind the other, and its edge marks reach the edges.
import { expect, test } from 'vitest';
import { boundsOf, groupsOf, outsideOf } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import { ORIENTATIONS, PAPER_NAMES, pageSize, sheetArea } from '../../page/index.ts';
import { draw, room } from './draw.ts';
import { FOLD_GUIDE_SIZE, foldGuide } from './fold-guide.ts';
import { planPage } from './page-plan.ts';
import { anyTasks } from './tasks-to-test.ts';

const ALL = anyTasks(60, testSeed('look-and-remember, folding'));

test('once the upper part of the paper is folded back, nothing of what was to be seen shows', () => {
  for (const paper of PAPER_NAMES) {
    for (const orientation of ORIENTATIONS) {
      const area = sheetArea(paper, orientation);
      const size = { widthMm: area.width, heightMm: area.height };
      for (const { printed, name } of ALL) {
        const least = room(printed);
        // What has no room on a paper is refused there.
        if (least.widthMm > area.width || least.heightMm > area.height) continue;
        const page = draw(printed, size, { print: 'colour' });
        const fold = planPage(printed, size).foldMm;
        const where = `${name}, ${paper} ${orientation}`;
        // Wholly above the fold, so that it turns to the back; the choices wholly below.
        for (const frame of groupsOf(page, 'frame'))
          expect(boundsOf(frame).bottom, where).toBeLessThan(fold - 3);
        for (const choice of groupsOf(page, 'choice'))
          expect(boundsOf(choice).top, where).toBeGreaterThan(fold + 3);
        // What is folded back is no longer than what it is folded behind, so that none of it looks out below.
        const above = area.top + fold;
        expect(above, where).toBeLessThan(pageSize(paper, orientation).heightMm - above);
      }
    }
  }
});

test('a solid mark stands at either edge of the fold, level with the dashed line', () => {
  const [made] = ALL;
  if (!made) throw new Error('no tasks');
  const size = { widthMm: 186, heightMm: 250 };
  const [fold] = groupsOf(draw(made.printed, size, { print: 'colour' }), 'fold');
  const lines = (fold?.children ?? []).filter((node) => node.kind === 'shape');
  const solid = lines.filter(({ stroke }) => stroke && stroke.dashMm === undefined).map(boundsOf);
  const dashed = lines.filter(({ stroke }) => stroke?.dashMm).map(boundsOf);
  expect(solid.map(({ left, right }) => [Math.abs(Math.round(left)), Math.round(right)])).toEqual([
    [0, 6],
    [180, 186],
  ]);
  expect(dashed.length).toBe(1);
  for (const { top, bottom } of [...solid, ...dashed])
    expect((top + bottom) / 2).toBeCloseTo(125, 6);
});

test('the small drawing of the fold stays within its size', () => {
  expect(outsideOf(foldGuide(), FOLD_GUIDE_SIZE.widthMm, FOLD_GUIDE_SIZE.heightMm)).toEqual([]);
});
