// The page keeps its measures: equal frames, room between them, stickers at true size.

import { describe, expect, it } from 'vitest';
import { boundsOf, groupsOf } from '../../../tests/scene-bounds.ts';
import { type Bounds, pathBounds, randomFrom } from '../../base/index.ts';
import {
  type Area,
  type Group,
  HOME_PAPERS,
  ORIENTATIONS,
  type SceneNode,
  sheetArea,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { copyPattern } from './index.ts';
import { type PagePlan, planPage } from './page-plan.ts';
import { type Answer, answerSchema, type Printed, printedSchema } from './task.ts';

const COLOUR = { print: 'colour' } as const;
const STEPS = copyPattern.ladder.map((_, index) => index + 1);

interface Copy {
  readonly printed: Printed;
  readonly answer: Answer;
}

function taskOf(step: number, changes: Readonly<Record<string, unknown>> = {}, seed = 1): Copy {
  const read = copyPattern.read(step, changes, COLOUR);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const task = copyPattern.generate(read.value, randomFrom(seed), COLOUR);
  return { printed: printedSchema.parse(task.printed), answer: answerSchema.parse(task.answer) };
}

/** Bounds of all ink of a scene, lines with half their width; the scene has no transforms of its own. */
function inkOf(node: SceneNode): Bounds[] {
  if (node.kind === 'group') return node.children.flatMap(inkOf);
  if (node.kind === 'text') return [];
  const { left, top, right, bottom } = pathBounds(node.path);
  const half = (node.stroke?.widthMm ?? 0) / 2;
  return [{ left: left - half, top: top - half, right: right + half, bottom: bottom + half }];
}

function gapBetween(one: Area, other: Area): number {
  const across = Math.max(other.left - one.left - one.width, one.left - other.left - other.width);
  const down = Math.max(other.top - one.top - one.height, one.top - other.top - other.height);
  return Math.max(across, down);
}

function sizesFor(printed: Printed): readonly Size[] {
  const { widthMm, heightMm } = copyPattern.room(printed);
  return [
    { widthMm, heightMm },
    { widthMm: widthMm * 1.4, heightMm },
    { widthMm, heightMm: heightMm * 2 },
    { widthMm: 273, heightMm: Math.max(heightMm, 168) },
  ].map((size) => ({ ...size, widthMm: Math.max(size.widthMm, widthMm) }));
}

const PAGES: readonly [string, Copy][] = [
  ...STEPS.map((step): [string, Copy] => [`step ${step}`, taskOf(step)]),
  ['six boxes of 4 by 3', taskOf(7, { rows: 4, boxes: 6, givens: 'some' })],
  ['five boxes of dots', taskOf(8, { content: 'dots', response: 'draw', kinds: 1, boxes: 5 })],
  ['5 by 5 lines', taskOf(14, { rows: 5, columns: 5, elements: 20, boxes: 3 })],
  ['letters', taskOf(8, { content: 'capitals', response: 'draw', kinds: 3 })],
  ['directions', taskOf(8, { content: 'directions', response: 'draw', givens: 'some' })],
  ['small stickers', taskOf(7, { stickerMm: '8' })],
  ['large stickers', taskOf(7, { stickerMm: '25' })],
];

describe('page', () => {
  it.each(PAGES)(
    'R9 %s: all boxes are as large as the model, apart from each other and inside the size',
    (_, { printed }) => {
      for (const size of sizesFor(printed)) {
        const plan = planPage(printed, size);
        const frames = [plan.model, ...plan.boxes];
        for (const { width, height } of frames) {
          expect(width).toBeCloseTo(plan.model.width, 6);
          expect(height).toBeCloseTo(plan.model.height, 6);
        }
        for (const [index, one] of [plan.plate, ...plan.boxes].entries()) {
          expect(one.left).toBeGreaterThan(-0.001);
          expect(one.top).toBeGreaterThan(-0.001);
          expect(one.left + one.width).toBeLessThan(size.widthMm + 0.001);
          expect(one.top + one.height).toBeLessThan(size.heightMm + 0.001);
          for (const other of [plan.plate, ...plan.boxes].slice(index + 1)) {
            expect(gapBetween(one, other)).toBeGreaterThan(Math.max(8, plan.cellMm / 2) - 0.001);
          }
        }
      }
    },
  );

  it.each(PAGES)(
    'R15 %s: the model stands first, above all boxes or left of them',
    (_, { printed }) => {
      for (const size of sizesFor(printed)) {
        const { plate, boxes } = planPage(printed, size);
        const isAbove = boxes.every(({ top }) => top > plate.top + plate.height);
        const isLeft = boxes.every(({ left }) => left > plate.left + plate.width);
        expect(isAbove || isLeft).toBe(true);
      }
    },
  );

  it.each([2, 3, 4, 6])(
    'R15 %i boxes stand in full rows, in the least room and on a whole page',
    (boxes) => {
      const { printed } = taskOf(9, { boxes });
      for (const size of [copyPattern.room(printed), { widthMm: 186, heightMm: 237 }]) {
        const tops = planPage(printed, size).boxes.map(({ top }) => top.toFixed(2));
        const rows = [...new Set(tops)].map((top) => tops.filter((other) => other === top).length);
        expect(new Set(rows).size).toBe(1);
      }
    },
  );

  it.each(PAGES)(
    'R15 %s: cells and the ways between points are at least 12 mm',
    (_, { printed }) => {
      for (const size of sizesFor(printed)) {
        expect(planPage(printed, size).cellMm).toBeGreaterThan(12 - 0.001);
      }
    },
  );

  it.each(PAGES)(
    '%s: all ink lies inside the size, and inside its own frame',
    (_, { printed, answer }) => {
      for (const size of sizesFor(printed)) {
        const scene = copyPattern.draw({ printed, answer }, size, COLOUR, true);
        const whole = boundsOf(scene);
        expect(whole.left).toBeGreaterThan(-0.001);
        expect(whole.top).toBeGreaterThan(-0.001);
        expect(whole.right).toBeLessThan(size.widthMm + 0.001);
        expect(whole.bottom).toBeLessThan(size.heightMm + 0.001);
        const plan = planPage(printed, size);
        for (const [index, box] of groupsOf(scene, 'box').entries()) {
          expectInside(boundsOf(box), plan.boxes[index]);
        }
      }
    },
  );

  it.each(STEPS)('R15 step %i has room on both papers, upright and level', (step) => {
    for (const paper of HOME_PAPERS) {
      for (const orientation of ORIENTATIONS) {
        const area = sheetArea(paper, orientation);
        const room = copyPattern.room(taskOf(step).printed);
        expect(room.widthMm).toBeLessThanOrEqual(area.width);
        expect(room.heightMm).toBeLessThanOrEqual(area.height);
      }
    }
  });

  it('R15 a dot that takes a sticker is as wide as the sticker, its line included, and so is its circle', () => {
    for (const stickerMm of ['8', '16', '25']) {
      const { printed, answer } = taskOf(7, { stickerMm });
      const size = copyPattern.room(printed);
      const scene = copyPattern.draw({ printed, answer }, size, COLOUR, false);
      const dots = groupsOf(scene, 'figure');
      expect(dots).toHaveLength(4);
      for (const dot of dots) {
        const { left, right } = boundsOf(dot);
        expect(right - left).toBeCloseTo(Number(stickerMm), 3);
      }
      const [, ...circles] = groupsOf(groupsOf(scene, 'box')[0] ?? scene, 'frame').flatMap(inkOf);
      expect(circles).toHaveLength(9);
      for (const { left, right } of circles) expect(right - left).toBeCloseTo(Number(stickerMm), 3);
    }
  });

  it('R9 a figure stands in a finished box where it stands in the model', () => {
    for (const step of [7, 12, 16]) {
      const { printed, answer } = taskOf(step);
      const size = copyPattern.room(printed);
      const scene = copyPattern.draw({ printed, answer }, size, COLOUR, true);
      const plan = planPage(printed, size);
      const model = placesIn(groupsOf(scene, 'model')[0], plan.model);
      for (const [index, box] of groupsOf(scene, 'box').entries()) {
        expect(placesIn(box, plan.boxes[index])).toEqual(model);
      }
    }
  });

  it('without the answer only the givens stand in the boxes', () => {
    const { printed, answer } = taskOf(11);
    const scene = copyPattern.draw({ printed, answer }, copyPattern.room(printed), COLOUR, false);
    const counts = groupsOf(scene, 'box').map((box) => groupsOf(box, 'figure').length);
    expect(counts).toEqual([2, 2]);
    expect(groupsOf(scene, 'answer')).toHaveLength(0);
  });
});

function expectInside(ink: Bounds, area: PagePlan['model'] | undefined): void {
  if (!area) throw new Error('a box without a place');
  expect(ink.left).toBeGreaterThan(area.left - 0.001);
  expect(ink.top).toBeGreaterThan(area.top - 0.001);
  expect(ink.right).toBeLessThan(area.left + area.width + 0.001);
  expect(ink.bottom).toBeLessThan(area.top + area.height + 0.001);
}

/** Names and middles of the figures, from the corner of their frame, to a hundredth of a mm. */
function placesIn(pattern: Group | undefined, area: Area | undefined): readonly string[] {
  if (!pattern || !area) throw new Error('no pattern');
  return groupsOf(pattern, 'figure')
    .map((figure) => {
      const { left, top, right, bottom } = boundsOf(figure);
      const [x, y] = [(left + right) / 2 - area.left, (top + bottom) / 2 - area.top];
      return `${figure.alt} ${x.toFixed(2)} ${y.toFixed(2)}`;
    })
    .sort();
}
