// Pages of a language that is written from right to left: the same tasks, their places mirrored, their figures not.
import { describe, expect, test } from 'vitest';
import { ACTIVITY_IDS, type Activity, activityOf, type Task } from '../../src/activities/index.ts';
import {
  compose,
  IDENTITY,
  type Path,
  pathBounds,
  randomFrom,
  scaleBy,
  type Transform,
  transformPath,
} from '../../src/base/index.ts';
import { registerCatalogue } from '../../src/languages/index.ts';
import { type Group, HANDS, type PrintStyle, type SceneNode } from '../../src/page/index.ts';
import { outsideOf } from '../scene-bounds.ts';
import { testSeed } from '../seed.ts';

// In English words, so that they can be understood here.
registerCatalogue('ar', {});

const NEAR_MM = 1e-6;
const SEED = testSeed('mirrored pages');
/** Parts that are one figure together: what they hold keeps its order. */
const WHOLES: Readonly<Record<string, readonly string[]>> = {
  'mirror-half': ['given', 'missing', 'offered'],
  tangle: ['tangle', 'candidate'],
  'by-key': ['entry', 'item'],
};

interface Drawn {
  /** All points of its paths, from its upper left corner. */
  readonly look: readonly number[];
  readonly left: number;
  readonly right: number;
}

interface Case {
  readonly what: string;
  readonly task: Task;
  readonly style: PrintStyle;
}

/** All steps for both hands, and every value of every choice, contents among them, at the first step and the last. */
function casesOf(activity: Activity): readonly Case[] {
  const { ladder, parameters } = activity;
  const choices = Object.entries(parameters).flatMap(([name, parameter]) =>
    parameter.kind === 'choice' ? parameter.values.map((value) => ({ [name]: value })) : [],
  );
  const wanted = [
    ...ladder.flatMap((_, index) => HANDS.map((hand) => ({ step: index + 1, changes: {}, hand }))),
    ...[1, ladder.length].flatMap((step) =>
      choices.map((changes) => ({ step, changes, hand: HANDS[0] })),
    ),
  ];
  return wanted.flatMap(({ step, changes, hand }, index) => {
    const print = index % 3 === 0 ? 'grey' : 'colour';
    const style: PrintStyle = { print, ...(hand === 'left' ? { hand } : {}) };
    const values = activity.read(step, changes, style);
    if (!values.ok) return [];
    const task = activity.generate(values.value, randomFrom(SEED + index), style);
    return [{ what: `${step} ${JSON.stringify(changes)} ${hand} ${print}`, task, style }];
  });
}

function pathsIn(node: SceneNode, outer: Transform = IDENTITY): readonly Path[] {
  if (node.kind === 'shape') return [transformPath(node.path, outer)];
  if (node.kind === 'text') return [];
  const inner = compose(outer, node.transform ?? IDENTITY);
  const clip = node.clip ? [transformPath(node.clip, inner)] : [];
  return [...clip, ...node.children.flatMap((child) => pathsIn(child, inner))];
}

function drawnFrom(node: Group, outer: Transform): Drawn {
  const paths = pathsIn(node, outer);
  const all = paths.map(pathBounds);
  const left = Math.min(...all.map((bounds) => bounds.left));
  const top = Math.min(...all.map((bounds) => bounds.top));
  const look = paths
    .flat()
    .flatMap(([, ...at]) => at.map((value, index) => value - (index % 2 === 0 ? left : top)));
  return { look, left, right: Math.max(...all.map((bounds) => bounds.right)) };
}

/** Every figure in the order of reading, and every part that is one figure together. */
function figuresIn(node: SceneNode, wholes: readonly string[], outer = IDENTITY): readonly Drawn[] {
  if (node.kind !== 'group') return [];
  const isFigure = node.shows !== undefined || wholes.includes(node.role ?? '');
  if (isFigure && pathsIn(node).length > 0) return [drawnFrom(node, outer)];
  const inner = compose(outer, node.transform ?? IDENTITY);
  return node.children.flatMap((child) => figuresIn(child, wholes, inner));
}

/** How far any point of a figure lies from where it lies in the other, in mm; infinite for figures of other parts. */
function farthest(one: readonly Drawn[], other: readonly Drawn[]): number {
  const apart = one.flatMap(({ look }, index) => {
    const against = other[index]?.look ?? [];
    if (against.length !== look.length) return [Number.POSITIVE_INFINITY];
    return look.map((value, at) => Math.abs(value - (against[at] ?? Number.NaN)));
  });
  return apart.reduce((most, each) => Math.max(most, each), 0);
}

function marksIn(node: SceneNode): readonly number[] {
  if (node.kind !== 'group') return [];
  return [...(node.mark === undefined ? [] : [node.mark]), ...node.children.flatMap(marksIn)];
}

/** The task for readers from the left, laid out for the other hand, and for readers from the right. */
function bothWays(activity: Activity, { task, style }: Case, withAnswer: boolean) {
  const size = roomy(activity.room(task.printed, style));
  const { hand, ...others } = style;
  const otherHand: PrintStyle = hand === 'left' ? others : { ...others, hand: 'left' };
  return {
    size,
    plain: activity.draw(task, size, otherHand, withAnswer),
    mirrored: activity.draw(task, size, { ...style, language: 'ar' }, withAnswer),
  };
}

/** Room for the layout of either hand. */
function roomy({ widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number }) {
  const side = 2.1 * Math.max(widthMm, heightMm);
  return { widthMm: side, heightMm: side };
}

describe.each(ACTIVITY_IDS.map((id) => [id, activityOf(id)] as const))('%s', (id, activity) => {
  const cases = casesOf(activity);
  const wholes = WHOLES[id] ?? [];

  test('shows on a mirrored page the same figures in the same order, none turned round', () => {
    for (const each of cases) {
      const { plain, mirrored } = bothWays(activity, each, true);
      const [one, other] = [figuresIn(plain, wholes), figuresIn(mirrored, wholes)];
      expect(other.length, each.what).toBe(one.length);
      expect(farthest(one, other), each.what).toBeLessThan(NEAR_MM);
      expect(marksIn(mirrored), each.what).toEqual(marksIn(plain));
    }
  });

  test('places them on a mirrored page as far from the other side, but for what is one figure together', () => {
    // In grey print a mark may stand beside the body of a figure.
    for (const each of cases.filter(({ style }) => style.print === 'colour')) {
      const { size, plain, mirrored } = bothWays(activity, each, false);
      const [one, other] = [figuresIn(plain, wholes), figuresIn(mirrored, wholes)];
      if (isKeptWhole(each.task, mirrored)) continue;
      const off = one.flatMap((figure, index) => {
        const { left = 0, right = 0 } = other[index] ?? {};
        const middle = (left + right) / 2;
        // A figure may stand a little beside the middle of its cell, and stays so: by less than a third of itself.
        const slack = 0.34 * (right - left) + NEAR_MM;
        const wanted = size.widthMm - (figure.left + figure.right) / 2;
        return Math.abs(middle - wanted) > slack ? [`${each.what}: ${index}`] : [];
      });
      expect(off).toEqual([]);
    }
  });

  test('draws on a mirrored page no more outside its room than on another, at its least size and with answers', () => {
    for (const { what, task, style } of cases) {
      const size = activity.room(task.printed, style);
      const [plain = [], mirrored = []] = [style, { ...style, language: 'ar' as const }].map(
        (each) => outsideOf(activity.draw(task, size, each, true), size.widthMm, size.heightMm),
      );
      expect(mirrored.length, [what, ...mirrored].join()).toBe(plain.length);
    }
  });

  test('asks the same of mirrored pages: each piece to cut fits the place that it has there', () => {
    for (const { what, task, style } of cases) {
      const size = activity.room(task.printed, style);
      const [one, other] = [style, { ...style, language: 'ar' as const }].map((each) =>
        activity.pieces(task, size, each),
      );
      expect(
        other?.map(({ figures }) => figures),
        what,
      ).toEqual(one?.map(({ figures }) => figures));
      for (const { place, widthMm } of other ?? []) {
        if (!place) continue;
        expect(place.left, what).toBeGreaterThanOrEqual(-NEAR_MM);
        expect(place.left + place.width, what).toBeLessThanOrEqual(size.widthMm + NEAR_MM);
        expect(widthMm, what).toBeLessThanOrEqual(place.width);
      }
    }
  });
});

/** The halves of a picture, patterns of lines, and lines that keep their direction: the whole task or pattern is a figure. */
function isKeptWhole({ printed }: Task, drawn: Group): boolean {
  const { part, model, ends, lines, direction } = printed as Record<string, unknown>;
  if (part !== undefined) return true;
  if (lines !== undefined) return ends === undefined && direction !== 'down';
  const pattern = model as { cells?: readonly unknown[]; rows?: number; columns?: number };
  const { cells = [], rows = 0, columns = 0 } = pattern ?? {};
  return drawn.role === 'task' && cells.length > 0 && cells.length !== rows * columns;
}

test('a figure that is turned round would be seen', () => {
  const odd = activityOf('find-the-same');
  const style: PrintStyle = { print: 'colour' };
  const values = odd.read(1, { content: 'directions' }, style);
  if (!values.ok) throw new Error(JSON.stringify(values.refusals));
  const task = odd.generate(values.value, randomFrom(SEED), style);
  const size = odd.room(task.printed, style);
  const drawn = odd.draw(task, size, style, false);
  const turned: Group = { kind: 'group', children: [drawn], transform: scaleBy(-1, 1) };
  expect(farthest(figuresIn(drawn, []), figuresIn(turned, []))).toBeGreaterThan(1);
});

test('what is said of places is said from the right', () => {
  const style: PrintStyle = { print: 'colour' };
  const said = (id: (typeof ACTIVITY_IDS)[number], step: number, changes = {}) => {
    const activity = activityOf(id);
    const values = activity.read(step, changes, style);
    if (!values.ok) throw new Error(JSON.stringify(values.refusals));
    const { printed, answer } = activity.generate(values.value, randomFrom(SEED), style);
    const { describe, answer: tell } = activity.words.ar;
    return `${describe(printed)} ${tell(printed, answer)}`;
  };
  expect(said('size-order', 4)).toContain('from the right');
  expect(said('one-of-each', 4)).toContain('From right to left');
  expect(said('follow-the-line', 4)).toContain('start at the right');
  // These lead to empty circles, away from the hand that fills them.
  const stickers = said('follow-the-line', 4, { response: 'sticker' });
  expect(stickers).toContain('start at the left');
});
