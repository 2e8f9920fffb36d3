// Every activity can be changed: its figures are found on the page, and what is offered can be printed.
import { describe, expect, test } from 'vitest';
import { ACTIVITY_IDS, activityOf, type Task } from '../../src/activities/index.ts';
import { type Random, randomFrom } from '../../src/base/index.ts';
import {
  changed,
  type Deed,
  doDeed,
  drawnTask,
  emptyCellsIn,
  type Ground,
  historyOf,
  judge,
  lyingTask,
  NO_EDITS,
  offersAt,
  placesIn,
  redone,
  type SheetEdits,
  shapeOffersAt,
  smallestRepair,
  tracedTask,
  undone,
  wholesIn,
} from '../../src/editing/index.ts';
import type { Group, SceneNode } from '../../src/page/index.ts';
import { makeSheet, readCode } from '../../src/sheets/index.ts';
import { testSeed } from '../seed.ts';

const SEED = testSeed('editing');

function groundAt(id: (typeof ACTIVITY_IDS)[number], step: number): Ground {
  const activity = activityOf(id);
  const values = activity.ladder[step - 1]?.values ?? {};
  return { activity, values, style: { print: 'colour' } };
}

function placesDrawn(node: SceneNode): readonly number[] {
  if (node.kind !== 'group') return [];
  return [...(node.place === undefined ? [] : [node.place]), ...node.children.flatMap(placesDrawn)];
}

function rolesDrawn(node: SceneNode): readonly string[] {
  return node.kind === 'group' ? [node.role ?? '', ...node.children.flatMap(rolesDrawn)] : [];
}

function drawnFor({ activity, style }: Ground, task: Task): Group {
  const traced = { ...task, printed: tracedTask(task.printed) };
  return activity.draw(traced, activity.room(task.printed), style, false);
}

/** A deed that a hand might do: any offered value, a swap, something added or taken away, a lock. */
function anyDeed(ground: Ground, printed: unknown, before: Task, random: Random): Deed {
  const places = placesIn(printed);
  const standing = places.flatMap(({ figure }, place) => (figure ? [place] : []));
  const at = { task: 0, place: random.pick(standing) };
  const kind = random.int(0, 9);
  if (kind === 0) return { kind: 'lock', at };
  if (kind <= 2) return { kind: 'swap', at, with: random.pick(standing) };
  if (kind === 3) {
    const shapes = shapeOffersAt(ground, printed, before, at.place);
    if (shapes.length > 0) return { kind: 'shape', at, change: random.pick(shapes).change };
  }
  const offers = offersAt(ground, printed, at.place).flatMap((group) => group.offers);
  return { kind: 'become', at, figure: random.pick(offers).figure };
}

/** A figure of the task that becomes any other that is offered for it. */
function becomeAny(ground: Ground, { printed }: Task, random: Random) {
  const places = placesIn(printed).flatMap(({ figure }, place) => (figure ? [place] : []));
  const place = random.pick(places);
  const offers = offersAt(ground, printed, place).flatMap((group) => group.offers);
  return { kind: 'become', at: { task: 0, place }, figure: random.pick(offers).figure } as const;
}

/** Whether the deed alone leaves the task uncertain. */
function alone(ground: Ground, before: Task, deed: Deed): boolean {
  const done = doDeed(ground, [before], NO_EDITS, deed);
  if (!done.ok) return true;
  const { printed } = lyingTask(ground, [before], done.value, 0);
  return judge(ground, printed, before).state === 'uncertain';
}

/** Activities in which a single change was found to break a task. */
const marked = new Set<string>();

describe.each(ACTIVITY_IDS.map((id) => [id] as const))('%s', (id) => {
  const steps = activityOf(id).ladder.map((_, index) => index + 1);

  test('every figure that is printed is found on the page by its place, at every step', () => {
    for (const step of steps) {
      const ground = groundAt(id, step);
      const task = drawnTask(ground, SEED + step);
      const standing = placesIn(task.printed).flatMap(({ figure }, place) =>
        figure ? [place] : [],
      );
      const found = new Set(placesDrawn(drawnFor(ground, task)));
      expect(
        [...found].sort((one, other) => one - other),
        `step ${step}`,
      ).toEqual(standing);
    }
  });

  test('boxes, entries, pairs and pieces, and cells that are empty, are found on the page', () => {
    for (const step of steps) {
      const ground = groundAt(id, step);
      const task = drawnTask(ground, SEED + step);
      const drawn = rolesDrawn(drawnFor(ground, task));
      const counted = (role: string) => drawn.filter((other) => other === role).length;
      for (const { role, nth, places } of wholesIn(task.printed)) {
        const alike = wholesIn(task.printed).filter((other) => other.role === role);
        expect(counted(role), `step ${step}: ${role} ${nth}`).toBe(alike.length);
        expect(places.length).toBeGreaterThan(0);
      }
      for (const cell of emptyCellsIn(task.printed)) {
        expect(counted(cell.role), `step ${step}: ${cell.role}`).toBeGreaterThan(cell.nth);
        expect(cell.row).toBeLessThan(cell.rows);
        expect(cell.column).toBeLessThan(cell.columns);
      }
    }
  });

  test('every value that is offered is one that the activity prints and draws', () => {
    const random = randomFrom(SEED);
    for (const step of steps) {
      const ground = groundAt(id, step);
      const task = drawnTask(ground, SEED + step);
      const places = placesIn(task.printed);
      const place = random.pick(places.flatMap(({ figure }, index) => (figure ? [index] : [])));
      const offers = offersAt(ground, task.printed, place).flatMap((group) => group.offers);
      expect(offers.length).toBeGreaterThan(1);
      for (const { figure } of random.sample(offers, Math.min(5, offers.length))) {
        const deed = { kind: 'become', at: { task: 0, place }, figure } as const;
        const done = doDeed(ground, [task], NO_EDITS, deed);
        expect(done.ok, `step ${step}, place ${place}: ${JSON.stringify(figure)}`).toBe(true);
      }
    }
  });

  test('what was changed, printed and read back by its code is the same; undone it is as it was', () => {
    const random = randomFrom(SEED);
    for (const step of [2, steps.length]) {
      const spec = {
        activity: id,
        step,
        values: {},
        seed: SEED % 1000,
        page: { paper: 'A4', orientation: 'portrait' },
        print: 'colour',
      } as const;
      const plain = makeSheet(spec);
      if (!plain.ok) throw new Error(JSON.stringify(plain.refusals));
      const ground = groundAt(id, step);
      let history = historyOf<SheetEdits>(NO_EDITS);
      for (let count = 0; count < 6; count++) {
        const { printed, before } = lyingTask(ground, plain.value.tasks, history.now, 0);
        const deed = anyDeed(ground, printed, before, random);
        const done = doDeed(ground, plain.value.tasks, history.now, deed);
        if (!done.ok) continue;
        const made = makeSheet({ ...plain.value.spec, edits: done.value.edits });
        if (!made.ok) continue;
        history = changed(history, done.value);
        const read = readCode(made.value.code);
        if (!read.ok) throw new Error(`${made.value.code}: ${JSON.stringify(read.refusals)}`);
        expect(makeSheet(read.value)).toEqual(made);
      }
      const last = JSON.stringify(history.now);
      const steps = history.past.length;
      for (let count = 0; count < steps; count++) history = undone(history);
      expect(makeSheet({ ...plain.value.spec, edits: history.now.edits })).toEqual(plain);
      for (let count = 0; count < steps; count++) history = redone(history);
      expect(JSON.stringify(history.now)).toBe(last);
    }
  }, 60_000);

  test('a fault is marked where it was done, though it was not done last', () => {
    const random = randomFrom(SEED);
    for (let round = 0; round < 60; round++) {
      const ground = groundAt(id, random.pick(steps));
      const before = drawnTask(ground, SEED + round);
      const [broken, later] = [becomeAny, becomeAny].map((deed) => deed(ground, before, random));
      if (!broken || !later || broken.at.place === later.at.place) continue;
      const one = doDeed(ground, [before], NO_EDITS, broken);
      const both = one.ok ? doDeed(ground, [before], one.value, later) : one;
      if (!one.ok || !both.ok) continue;
      const faultsOf = (work: SheetEdits, touched: readonly number[]) => {
        const { printed } = lyingTask(ground, [before], work, 0);
        const verdict = judge(ground, printed, before, touched);
        const isFault = verdict.state === 'uncertain' && verdict.answers.length < 2;
        return isFault ? verdict.problems : [];
      };
      const first = faultsOf(one.value, []);
      for (const { places } of first) expect(places).toEqual([broken.at.place]);
      if (first.length > 0) marked.add(id);
      for (const { sentence, places } of faultsOf(both.value, [later.at.place])) {
        if (first.some((fault) => fault.sentence === sentence) && !alone(ground, before, later)) {
          expect(places, sentence).toContain(broken.at.place);
        }
      }
    }
  }, 60_000);

  test('a repair is proven, and leaves what is kept as it is', () => {
    const random = randomFrom(SEED);
    for (const step of [3, 6]) {
      const ground = groundAt(id, step);
      const before = drawnTask(ground, SEED + step);
      const deed = anyDeed(ground, before.printed, before, random);
      const done = doDeed(ground, [before], NO_EDITS, deed);
      if (!done.ok) continue;
      const { printed } = lyingTask(ground, [before], done.value, 0);
      if (judge(ground, printed, before).state !== 'uncertain') continue;
      const kept = done.value.last?.places ?? [];
      const repair = smallestRepair(ground, printed, { before, kept });
      if (!repair) continue;
      expect(judge(ground, repair.printed, before).state).not.toBe('uncertain');
      const [was, is] = [placesIn(printed), placesIn(repair.printed)];
      for (const place of kept) expect(is[place]?.figure).toEqual(was[place]?.figure);
    }
  }, 60_000);
});

test('single changes break tasks of all but a few activities', () => {
  expect(marked.size).toBeGreaterThan(ACTIVITY_IDS.length - 3);
});
