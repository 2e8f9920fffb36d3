// On a page that is read from the right the first of two pictures is read first, and does not lie under the hand.
import { describe, expect, test } from 'vitest';
import { type Bounds, compose, IDENTITY, type Transform } from '../../src/base/index.ts';
import { registerCatalogue } from '../../src/languages/index.ts';
import {
  type Group,
  ORIENTATIONS,
  PAPER_NAMES,
  type SceneNode,
  sheetArea,
} from '../../src/page/index.ts';
import { makeSheet, type Sheet, sheetPage, taskGroups } from '../../src/sheets/index.ts';
import { blankBetween, boundsOf } from '../scene-bounds.ts';

registerCatalogue('ar', {});

const NEAR_MM = 0.01;
const STEPS = [2, 4, 7, 12];
const FIGURES = [undefined, 4, 6, 9];
const RESPONSES = ['point', 'ring'];
const PAGES = PAPER_NAMES.flatMap((paper) =>
  ORIENTATIONS.flatMap((orientation) =>
    ([undefined, 'large'] as const).map((size) => ({ page: { paper, orientation }, size })),
  ),
);

interface Asked extends Pick<Parameters<typeof makeSheet>[0], 'page' | 'hand' | 'size'> {
  readonly step: number;
  readonly values: Readonly<Record<string, string | number>>;
}

function sheetOf({ size, hand, ...asked }: Asked): Sheet | undefined {
  const choices = { ...(size ? { size } : {}), ...(hand ? { hand } : {}) };
  const made = makeSheet({
    activity: 'what-changed',
    seed: 5,
    print: 'colour',
    ...asked,
    ...choices,
  });
  return made.ok ? made.value : undefined;
}

/** Sheets of usual and unusual choices, as far as they can be made. */
function sheets(hand?: 'left'): readonly Sheet[] {
  const values = RESPONSES.flatMap((response) =>
    FIGURES.map((figures) => ({ response, ...(figures ? { figures } : {}) })),
  );
  return PAGES.flatMap(({ size, page }) =>
    STEPS.flatMap((step) =>
      values.flatMap(
        (each) =>
          sheetOf({ step, page, values: each, ...(size && { size }), ...(hand && { hand }) }) ?? [],
      ),
    ),
  );
}

interface Pair {
  readonly name: string;
  readonly response: unknown;
  readonly first: Bounds;
  readonly second: Bounds;
}

function scenesIn(node: SceneNode, outer: Transform = IDENTITY): readonly Bounds[] {
  if (node.kind !== 'group') return [];
  if (node.role === 'scene') {
    return [boundsOf({ kind: 'group', children: [node], transform: outer })];
  }
  const inner = compose(outer, node.transform ?? IDENTITY);
  return node.children.flatMap((child) => scenesIn(child, inner));
}

function pairsOf(sheet: Sheet): readonly Pair[] {
  const { page, step, values, size = 'usual' } = sheet.spec;
  const scenes = sheetPage(sheet, 'ar').nodes.flatMap((node) => scenesIn(node));
  return sheet.tasks.map(({ printed }, index): Pair => {
    const [first, second] = [scenes[2 * index], scenes[2 * index + 1]];
    if (!first || !second) throw new Error(`task ${index + 1}: expected two pictures`);
    const name = `${page.paper} ${page.orientation} ${size}, step ${step} ${JSON.stringify(values)}`;
    return { name, response: (printed as { response?: string }).response, first, second };
  });
}

const isAbove = ({ first, second }: Pair) => first.bottom < second.top;
const isRight = ({ first, second }: Pair) => first.left > second.right;

describe('two pictures on a page read from the right', () => {
  const right = sheets().flatMap(pairsOf);
  const left = sheets('left').flatMap(pairsOf);

  test('stand above one another for the right hand, beside each other only where a page has no room', () => {
    const beside = right.filter((pair) => !isAbove(pair));
    expect(right.length).toBeGreaterThan(500);
    expect(beside.length).toBeLessThan(0.06 * right.length);
    const unusual = beside.filter(({ name }) => !/A5|"figures":9/.test(name));
    expect(unusual.map(({ name }) => name)).toEqual([]);
  });

  test('begin where reading begins, but for the hand that draws where there is no other room', () => {
    for (const pair of [...right, ...left]) {
      if (isAbove(pair) || isRight(pair)) continue;
      expect(pair.response, pair.name).toBe('ring');
      expect(pair.first.right, pair.name).toBeLessThan(pair.second.left);
    }
    expect(left.filter((pair) => !isAbove(pair) && !isRight(pair))).toEqual([]);
  });

  test('keep apart from those of other tasks, inside the page', () => {
    for (const sheet of sheets()) {
      const { paper, orientation, margin } = sheet.spec.page;
      const area = sheetArea(paper, orientation, margin);
      const tasks = taskGroups(sheet, false, 'ar')
        .filter(({ role }) => role === 'task-place')
        .map((group: Group) => boundsOf(group));
      for (const [index, one] of tasks.entries()) {
        expect(one.left).toBeGreaterThan(area.left - NEAR_MM);
        expect(one.right).toBeLessThan(area.left + area.width + NEAR_MM);
        expect(one.bottom).toBeLessThan(area.top + area.height + NEAR_MM);
        for (const other of tasks.slice(index + 1)) {
          expect(blankBetween(one, other)).toBeGreaterThan(13.9);
        }
      }
    }
  });
});
