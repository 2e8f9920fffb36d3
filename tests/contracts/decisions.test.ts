// What every activity promises of its decisions: they name what is drawn, and say what the answer says.
import { beforeAll, describe, expect, test } from 'vitest';
import {
  ACTIVITY_IDS,
  type Activity,
  type ActivityId,
  activityOf,
  type Decision,
  type Task,
} from '../../src/activities/index.ts';
import { randomFrom } from '../../src/base/index.ts';
import { sameFigure } from '../../src/figures/index.ts';
import type { Group, PrintStyle, SceneNode } from '../../src/page/index.ts';
import { boundsOf, groupsOf } from '../scene-bounds.ts';

const COLOUR: PrintStyle = { print: 'colour' };
const SEEDS = 2;
/** The larger side of the least thing that is drawn to be chosen, a small shape, is more than this; in mm. */
const LEAST_MM = 4;

/** Those in which what is put down, drawn or ordered is no single choice. */
const WITHOUT: readonly ActivityId[] = [
  'copy-pattern',
  'crossing-table',
  'mirror-half',
  'one-of-each',
];
const DECIDING = ACTIVITY_IDS.filter((id) => !WITHOUT.includes(id));

interface Made {
  readonly name: string;
  readonly task: Task;
  readonly decisions: readonly Decision[];
}

const tasksMade = new Map<string, readonly Made[]>();

/** Tasks of each step with each response, and with each content, that is not refused there; made once. */
function tasksOf(activity: Activity): readonly Made[] {
  const all = tasksMade.get(activity.id) ?? makeTasks(activity);
  tasksMade.set(activity.id, all);
  return all;
}

function makeTasks(activity: Activity): readonly Made[] {
  const changes = (['response', 'content'] as const).flatMap((name) => {
    const spec = activity.parameters[name];
    return spec?.kind === 'choice' ? spec.values.map((value) => ({ name, value })) : [];
  });
  return activity.ladder.flatMap((_, index) =>
    changes.flatMap(({ name: changed, value }) => {
      const read = activity.read(index + 1, { [changed]: value }, COLOUR);
      if (!read.ok) return [];
      return Array.from({ length: SEEDS }, (_, seed) => {
        const task = activity.generate(read.value, randomFrom(seed), COLOUR);
        const name = `step ${index + 1}, ${value}, seed ${seed}`;
        return { name, task, decisions: activity.decisions(task) };
      });
    }),
  );
}

function drawn(activity: Activity, task: Task, withAnswer: boolean): Group {
  return activity.draw(task, activity.room(task.printed), COLOUR, withAnswer);
}

function markedIn(node: SceneNode): readonly (readonly [number, Group])[] {
  if (node.kind !== 'group') return [];
  const own = node.mark === undefined ? [] : [[node.mark, node] as const];
  return [...own, ...node.children.flatMap(markedIn)];
}

interface Looked extends Made {
  /** The marks that are drawn, in order: without the answer and with it. */
  readonly marks: readonly (readonly number[])[];
  /** The larger side of what bears each mark, in mm. */
  readonly sides: readonly (readonly [mark: number, mm: number])[];
}

function lookAt(activity: Activity, each: Made): Looked {
  const plain = markedIn(drawn(activity, each.task, false));
  const answered = markedIn(drawn(activity, each.task, true));
  const inOrder = (marked: typeof plain) => marked.map(([mark]) => mark).sort((a, b) => a - b);
  const sides = plain.map(([mark, node]) => {
    const { left, top, right, bottom } = boundsOf(node);
    return [mark, Math.max(right - left, bottom - top)] as const;
  });
  return { ...each, marks: [inOrder(plain), inOrder(answered)], sides };
}

function marksNamed(decisions: readonly Decision[]): readonly number[] {
  const named = decisions.flatMap(({ about, options }) => [
    ...(about === undefined ? [] : [about]),
    ...options.flatMap(({ mark }) => (mark === undefined ? [] : [mark])),
  ]);
  return [...new Set(named)].sort((a, b) => a - b);
}

describe.each(ACTIVITY_IDS.map((id) => [id, activityOf(id)] as const))('%s', (id, activity) => {
  const all = tasksOf(activity);
  let looked: readonly Looked[] = [];
  beforeAll(() => {
    looked = all.map((each) => lookAt(activity, each));
  });

  test('has decisions just where a single thing is chosen', () => {
    const count = all.filter(({ decisions }) => decisions.length > 0).length;
    if (WITHOUT.includes(id)) expect(count).toBe(0);
    else expect(count).toBeGreaterThan(SEEDS);
  });

  test('marks each thing once, and just what its decisions name, with and without the answer', () => {
    for (const { name, decisions, marks } of looked) {
      const named = marksNamed(decisions);
      expect(marks, name).toEqual([named, named]);
    }
  });

  test('marks nothing that has no room to be tapped', () => {
    for (const { name, sides } of looked) {
      for (const [mark, side] of sides) {
        expect(side, `${name}, mark ${mark}`).toBeGreaterThan(LEAST_MM);
      }
    }
  });

  test('lets every decision be made rightly and wrongly, by what is drawn where nothing is asked about', () => {
    for (const { name, decisions } of all) {
      for (const { about, options } of decisions) {
        expect(new Set(options.map(({ isRight }) => isRight)).size, name).toBe(2);
        if (about !== undefined) continue;
        expect(
          options.every(({ mark }) => mark !== undefined),
          name,
        ).toBe(true);
      }
    }
  });

  test('calls nothing mixed up with what prints just like it', () => {
    for (const { name, decisions } of all) {
      for (const { options, takenFor } of decisions) {
        if (!takenFor) continue;
        const wrong = options.filter(({ isRight }) => !isRight);
        expect(
          wrong.some(({ figure }) => sameFigure(figure, takenFor)),
          name,
        ).toBe(false);
      }
    }
  });

  test('gives a blind child one chance among as many as there are to choose one from', () => {
    for (const { name, task, decisions } of all) {
      const [only, ...more] = decisions;
      if (!only || more.length > 0 || only.about !== undefined) continue;
      if (only.options.filter(({ isRight }) => isRight).length !== 1) continue;
      expect(activity.chance(task.printed), name).toBeCloseTo(1 / only.options.length, 12);
    }
  });
});

/** What of a task the rings of its answer drawing go round. */
function ringedMarks(page: Group): readonly number[] {
  const [answer] = groupsOf(page, 'answer');
  const rings = (answer?.children ?? []).filter(({ kind }) => kind === 'shape').map(boundsOf);
  return markedIn(page).flatMap(([mark, node]) => {
    const { left, top, right, bottom } = boundsOf(node);
    const [x, y] = [(left + right) / 2, (top + bottom) / 2];
    const isRinged = rings.some(
      (ring) => ring.left < x && x < ring.right && ring.top < y && y < ring.bottom,
    );
    return isRinged ? [mark] : [];
  });
}

describe('right is what the answer drawing puts a ring round', () => {
  const RINGED = DECIDING.filter((id) => id !== 'by-key' && id !== 'follow-the-line');

  test.each(RINGED)('%s', (id) => {
    const activity = activityOf(id);
    let compared = 0;
    for (const { name, task, decisions } of tasksOf(activity)) {
      if (!name.includes('point') || decisions.length === 0) continue;
      compared++;
      const right = decisions.flatMap(({ about, options }) =>
        options.flatMap(({ isRight, mark }, place) => {
          if (!isRight) return [];
          // Of a pair, which is marked as a whole, the first option says that its two are the same.
          return mark ?? (place === 0 && about !== undefined ? about : []);
        }),
      );
      const ringed = ringedMarks(drawn(activity, task, true));
      expect(
        ringed.toSorted((a, b) => a - b),
        name,
      ).toEqual([...new Set(right)].sort((a, b) => a - b));
    }
    expect(compared).toBeGreaterThan(0);
  });
});

describe('where a decision is about one of several, the right option is the one that the answer names for it', () => {
  /** The place of the only right option of each decision. */
  const rightOf = ({ decisions }: Made) =>
    decisions.map(({ options }) => {
      const right = options.flatMap(({ isRight }, place) => (isRight ? [place] : []));
      expect(right.length).toBe(1);
      return right[0];
    });

  test.each(['by-key', 'shadows', 'follow-the-line'] as const)('%s', (id) => {
    for (const made of tasksOf(activityOf(id))) {
      expect(rightOf(made), made.name).toEqual(made.task.answer);
      expect(made.decisions.map(({ about }) => about)).toEqual(made.decisions.map((_, at) => at));
    }
  });

  test('same-or-different', () => {
    for (const made of tasksOf(activityOf('same-or-different'))) {
      const same = rightOf(made).flatMap((place, pair) => (place === 0 ? [pair] : []));
      expect(same, made.name).toEqual(made.task.answer);
      const mixable = made.decisions.flatMap(({ takenFor }, pair) => (takenFor ? [pair] : []));
      expect([...same, ...mixable].sort((a, b) => a - b)).toEqual(
        made.decisions.map((_, pair) => pair),
      );
    }
  });

  test('continue-row', () => {
    const made = tasksOf(activityOf('continue-row')).filter(
      ({ decisions }) => decisions.length > 1,
    );
    expect(made.length).toBeGreaterThan(SEEDS);
    for (const { name, task, decisions } of made) {
      const right = decisions.map(({ options }) => options.find(({ isRight }) => isRight)?.figure);
      expect(right, name).toEqual((task.answer as { figures: unknown }).figures);
      expect(decisions.map(({ takenFor }) => takenFor)).toEqual(right);
    }
  });
});

describe('a wrong choice is taken for a figure only where the page says for which', () => {
  const RED = { colour: 'red' } as const;
  const BLUE = { colour: 'blue' } as const;
  const GREEN = { colour: 'green' } as const;
  const takenIn = (id: ActivityId, printed: unknown, answer: unknown) =>
    activityOf(id)
      .decisions({ printed, answer })
      .map(({ takenFor }) => takenFor);

  test('the one in the frame that is looked for', () => {
    const printed = { model: RED, choices: [BLUE, RED] };
    expect(takenIn('find-the-same', printed, 1)).toEqual([RED]);
  });

  test('the odd one among others that are all alike, and of no other', () => {
    expect(takenIn('odd-one-out', { figures: [RED, BLUE, RED] }, { odd: 1 })).toEqual([BLUE]);
    const mixed = { figures: [RED, BLUE, GREEN, RED] };
    expect(takenIn('odd-one-out', mixed, { odd: 1 })).toEqual([undefined]);
  });

  test('the only one that was to be remembered, and none of several', () => {
    const one = { set: [RED], choices: [BLUE, RED] };
    expect(takenIn('look-and-remember', one, [1])).toEqual([RED]);
    const two = { set: [RED, BLUE], choices: [BLUE, RED, GREEN] };
    expect(takenIn('look-and-remember', two, [0, 1])).toEqual([undefined]);
  });

  test('the right figure of a piece, where all wrong pieces are wrong in the same', () => {
    const field = [RED, BLUE, RED, BLUE, RED, BLUE, null, null];
    const answer = { figures: [RED, BLUE] };
    const inOne = {
      field,
      columns: 4,
      offered: [
        [GREEN, BLUE],
        [RED, BLUE],
        [BLUE, BLUE],
      ],
    };
    expect(takenIn('missing-part', inOne, answer)).toEqual([RED]);
    const inBoth = { field, columns: 4, offered: [[GREEN, BLUE], [RED, GREEN], answer.figures] };
    expect(takenIn('missing-part', inBoth, answer)).toEqual([undefined]);
    const figures = activityOf('missing-part').decisions({ printed: inBoth, answer });
    expect(figures[0]?.options.map(({ figure }) => figure)).toEqual([GREEN, GREEN, RED]);
  });
});
