// Changing a task: what is wrong is said of the right figures, and the smallest repair mends it.
import { describe, expect, test } from 'vitest';
import { activityOf, type Task } from '../activities/index.ts';
import { COLOUR_NAMES, type ColourName } from '../palette/index.ts';
import {
  choicesFor,
  doDeed,
  drawnTask,
  factsIn,
  type Ground,
  judge,
  lockedIn,
  lyingTask,
  NO_EDITS,
  offersAt,
  placeName,
  placesIn,
  shapeOffersAt,
  smallestRepair,
} from './index.ts';

const activity = activityOf('in-every-box');
const values = { ...activity.ladder[4]?.values, response: 'ring', shared: 1 };
const ground: Ground = { activity, values, style: { print: 'colour' } };

const box = (...colours: readonly ColourName[]) => ({
  figures: colours.map((colour) => ({ form: 'circle' as const, colour })),
});
const made: Task = {
  printed: { boxes: [box('red', 'blue'), box('green', 'red'), box('red', 'blue')] },
  answer: { figures: [{ form: 'circle', colour: 'red' }] },
};
const blueEverywhere = {
  kind: 'become',
  at: { task: 0, place: 2 },
  figure: { form: 'circle', colour: 'blue' },
} as const;

function afterDeed(deed: Parameters<typeof doDeed>[3], work = NO_EDITS) {
  const done = doDeed(ground, [made], work, deed);
  if (!done.ok) throw new Error(JSON.stringify(done.refusals));
  return done.value;
}

describe('the verdict', () => {
  test('names the figure that is now in every box too, and where it stands', () => {
    const work = afterDeed(blueEverywhere);
    const printed = { boxes: [box('red', 'blue', 'pink'), box('blue', 'red', 'grey')] };
    const before = { ...made, printed };
    const verdict = judge(ground, printed, before, [3]);
    expect(verdict.state).toBe('changed');
    expect(verdict.problems[0]?.sentence).toMatch(/^Blue circle is now an answer too\./i);
    const { problems } = judge(ground, lyingTask(ground, [made], work, 0).printed, made, [2]);
    expect(problems).toHaveLength(1);
  });

  test('of a fault points at the last change', () => {
    const printed = { boxes: [box('red', 'red'), box('red', 'green'), box('red', 'blue')] };
    const { state, problems } = judge(ground, printed, made, [1]);
    expect(state).toBe('uncertain');
    expect(problems[0]).toMatchObject({ places: [1] });
  });

  test('of what breaks the solver is a reason, not a defect', () => {
    expect(judge(ground, { boxes: 'none' }, made).state).toBe('uncertain');
  });
});

describe('a repair', () => {
  test('leaves the last change and what is locked as they are, and gives the answer back', () => {
    const printed = {
      boxes: [box('red', 'blue', 'pink'), box('blue', 'red', 'grey'), box('red', 'blue', 'green')],
    };
    const before = { ...made, printed };
    const repair = smallestRepair(ground, printed, { before, kept: [3, 1], near: 3 });
    expect(repair?.places).toEqual([7]);
    expect(repair?.sentence).toMatch(/^Box 3, figure 2: .+ circle in place of blue circle\.$/);
    expect(judge(ground, repair?.printed, before).state).toBe('certain');
    const again = smallestRepair(ground, printed, { before, kept: [3, 1], near: 3 });
    expect(again).toEqual(repair);
  });

  test('that cannot be, since all is locked, is not made up', () => {
    const printed = { boxes: [box('red', 'red'), box('red', 'green')] };
    expect(smallestRepair(ground, printed, { before: made, kept: [0, 1, 2, 3] })).toBeUndefined();
  });
});

describe('a deed', () => {
  test('swaps two figures, and swapped back nothing is left of it', () => {
    const swap = { kind: 'swap', at: { task: 0, place: 1 }, with: 2 } as const;
    const once = afterDeed(swap);
    expect(once.edits[0]?.figures.map(([place]) => place)).toEqual([1, 2]);
    expect(afterDeed(swap, once).edits).toEqual([]);
  });

  test('adds a box of its own looks that leaves the answer, and locks stay with their figures', () => {
    const locked = afterDeed({ kind: 'lock', at: { task: 0, place: 4 } });
    const offers = shapeOffersAt(ground, made.printed, made, 0);
    const add = offers.find(({ label }) => label === 'Add another box');
    if (!add) throw new Error('expected that a box can be added');
    const work = afterDeed(
      { kind: 'shape', at: { task: 0, place: 0 }, change: add.change },
      locked,
    );
    const { printed } = lyingTask(ground, [made], work, 0);
    expect((printed as { boxes: unknown[] }).boxes).toHaveLength(4);
    expect(judge(ground, printed, made).state).toBe('certain');
    expect(lockedIn(work, 0)).toEqual([6]);
  });

  test('draws the rest again from a seed: certain, the locked figure in its place, always the same', () => {
    const own = drawnTask(ground, 11);
    const place = 1;
    const figure = placesIn(own.printed)[place]?.figure;
    const locked = { ...NO_EDITS, locks: [{ task: 0, place }] };
    const done = doDeed(ground, [own], locked, { kind: 'redraw', task: 0, seed: 3 });
    if (!done.ok) throw new Error(JSON.stringify(done.refusals));
    const { printed, before } = lyingTask(ground, [own], done.value, 0);
    expect(placesIn(printed)[place]?.figure).toEqual(figure);
    expect(judge(ground, printed, before).state).not.toBe('uncertain');
    expect(printed).not.toEqual(own.printed);
    expect(doDeed(ground, [own], locked, { kind: 'redraw', task: 0, seed: 3 })).toEqual(done);
  });

  test.each([
    { kind: 'become', at: { task: 7, place: 0 }, figure: { colour: 'red' } },
    { kind: 'become', at: { task: 0, place: 99 }, figure: { colour: 'red' } },
    { kind: 'become', at: { task: 0, place: 0 }, figure: { form: 'dots' } },
    { kind: 'swap', at: { task: 0, place: 0 }, with: 99 },
    { kind: 'tell', task: 0, fact: 99, value: 3 },
    {
      kind: 'shape',
      at: { task: 0, place: 0 },
      change: { kind: 'take', list: 9, at: 9, together: true },
    },
  ] as const)('that cannot be done is refused and loses nothing: $kind', (deed) => {
    expect(doDeed(ground, [made], NO_EDITS, deed).ok).toBe(false);
  });
});

test('only the colours at hand are offered', () => {
  const colours = COLOUR_NAMES.slice(0, 3);
  const few: Ground = { ...ground, style: { print: 'colour', colours } };
  const offers = offersAt(few, made.printed, 0).find(({ attribute }) => attribute === 'colour');
  expect(offers?.offers.map(({ figure }) => figure.colour)).toEqual(colours);
});

test('what a key asks for is found beside its figures', () => {
  const byKey = activityOf('by-key');
  const first = byKey.ladder[3]?.values ?? {};
  const task = drawnTask({ activity: byKey, values: first, style: { print: 'colour' } }, 5);
  const words = factsIn(task.printed).filter(({ value }) => typeof value === 'string');
  expect(words.length).toBeGreaterThan(0);
  for (const { value } of words) expect(choicesFor(String(value)).length).toBeGreaterThan(1);
  expect(placeName({ path: ['key', 1, 'figure'] })).toBe('key entry 2');
});
