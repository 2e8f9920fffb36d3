// The promises that every activity makes, whatever it is about.
import { describe, expect, test } from 'vitest';
import {
  ACTIVITY_IDS,
  type Activity,
  activityOf,
  MOST_CHANCE,
  type Parameter,
  type Task,
  type Value,
} from '../../src/activities/index.ts';
import { type Random, randomFrom } from '../../src/base/index.ts';
import type { PrintStyle } from '../../src/page/index.ts';
import { outsideOf } from '../scene-bounds.ts';
import { testSeed } from '../seed.ts';
import { IS_WHOLE } from '../whole.ts';

const COLOUR: PrintStyle = { print: 'colour' };
const STYLES: readonly PrintStyle[] = [COLOUR, { print: 'grey' }];
/** For each step and print; `npm run prove` proves as many as one likes, of every content as well. */
const SEEDS = IS_WHOLE ? 40 : 20;
/** Tasks of any values that an activity takes. */
const FREELY = IS_WHOLE ? 400 : 200;

test('each activity has a number in sheet codes that is its own, and the name of its place in the registry', () => {
  const all = ACTIVITY_IDS.map((id) => [id, activityOf(id)] as const);
  const numbers = all.map(([, { codeNumber }]) => codeNumber);
  expect(numbers.filter((number, place) => numbers.indexOf(number) !== place)).toEqual([]);
  for (const [id, activity] of all) {
    expect(activity.id).toBe(id);
    expect(Number.isInteger(activity.codeNumber), id).toBe(true);
    expect(activity.codeNumber, id).toBeGreaterThanOrEqual(0);
    expect(activity.codeNumber, id).toBeLessThanOrEqual(63);
  }
});

describe.each(ACTIVITY_IDS.map((id) => [id, activityOf(id)] as const))('%s', (_id, activity) => {
  const steps = activity.ladder.map((_, index) => index + 1);

  test('has at least eight steps, for ages three, four and five in that order', () => {
    expect(activity.ladder.length).toBeGreaterThanOrEqual(8);
    const ages = activity.ladder.map((step) => step.age);
    expect([...new Set(ages)]).toEqual([3, 4, 5]);
    expect(ages).toEqual(ages.toSorted());
  });

  test('each step changes exactly one value, and others only where that value cannot stand without them', () => {
    for (const [index, step] of activity.ladder.slice(1).entries()) {
      const before = activity.ladder[index]?.values ?? {};
      const changed = Object.keys(step.values).filter((name) => step.values[name] !== before[name]);
      const isRefused = (names: readonly string[]) =>
        !activity.read(
          index + 1,
          Object.fromEntries(names.map((name) => [name, step.values[name]])),
          COLOUR,
        ).ok;
      // A new content may bring what it cannot be without: dropping any of that is refused.
      const isForced = changed
        .filter((name) => name !== 'content')
        .every((name) => isRefused(changed.filter((other) => other !== name)));
      const isOneChange = changed.length === 1 || (changed.includes('content') && isForced);
      expect(isOneChange, `step ${index + 2} changes ${changed.join(', ')}`).toBe(true);
    }
  });

  test('has words for every step, parameter and choice', () => {
    const { steps: phrases, parameters } = activity.words.en;
    expect(phrases.length).toBe(activity.ladder.length);
    expect(Object.keys(parameters).toSorted()).toEqual(Object.keys(activity.parameters).toSorted());
    for (const [name, spec] of Object.entries(activity.parameters)) {
      expect(parameters[name]?.label).toMatch(/\S/);
      expect(parameters[name]?.help).toMatch(/\S/);
      if (spec.kind === 'choice') {
        expect(Object.keys(parameters[name]?.choices ?? {}).toSorted()).toEqual(
          [...spec.values].toSorted(),
        );
      }
    }
  });

  test('offers what is looked at and what the child does as parameters named content and response', () => {
    expect(activity.parameters.content?.kind).toBe('choice');
    expect(activity.parameters.response?.kind).toBe('choice');
  });

  test.each(STYLES)('every task of every step is proven, printed in $print', (style) => {
    for (const step of steps) {
      for (let seed = 0; seed < SEEDS; seed++) {
        const task = activity.generate(
          valuesOf(activity, step, {}, style),
          randomFrom(seed),
          style,
        );
        expect(activity.prove(task), `step ${step}, seed ${seed}`).toEqual({ proven: true });
      }
    }
  });

  test('blind answers are never said to be as good as certain', () => {
    for (const step of steps) {
      for (let seed = 0; seed < SEEDS; seed++) {
        const { printed } = activity.generate(valuesOf(activity, step), randomFrom(seed), COLOUR);
        const chance = activity.chance(printed);
        expect(chance, `step ${step}, seed ${seed}`).toBeGreaterThanOrEqual(0);
        expect(chance, `step ${step}, seed ${seed}`).toBeLessThanOrEqual(MOST_CHANCE);
      }
    }
  });

  test('the same seed gives the same task, and other seeds give others', () => {
    const made = (seed: number) =>
      JSON.stringify(activity.generate(valuesOf(activity, 4), randomFrom(seed), COLOUR));
    expect(made(11)).toBe(made(11));
    expect(new Set(Array.from({ length: 20 }, (_, seed) => made(seed))).size).toBeGreaterThan(10);
  });

  test('any values that are not refused give a proven task', () => {
    const seed = testSeed(`any values of ${activity.id}`);
    const random = randomFrom(seed);
    let made = 0;
    for (let attempt = 0; attempt < 4000 && made < FREELY; attempt++) {
      const style = random.pick(STYLES);
      const read = activity.read(random.pick(steps), someChanges(activity, random), style);
      if (!read.ok) continue;
      made++;
      const task = activity.generate(read.value, random.fork(), style);
      expect(activity.prove(task), `seed ${seed}: ${JSON.stringify(read.value)}`).toEqual({
        proven: true,
      });
    }
    expect(made, `seed ${seed}`).toBeGreaterThan(50);
  });

  test('what is printed survives the pack file and is refused with one field more', () => {
    const task = activity.generate(valuesOf(activity, 3), randomFrom(5), COLOUR);
    const through = JSON.parse(JSON.stringify(task)) as Task;
    expect(activity.printed.parse(through.printed)).toEqual(through.printed);
    expect(activity.printed.safeParse({ ...(through.printed as object), more: 1 }).success).toBe(
      false,
    );
    expect(activity.prove(through)).toEqual({ proven: true });
  });

  test('nothing is drawn outside its place, with or without the answer', () => {
    for (const step of steps) {
      for (const style of STYLES) {
        const task = activity.generate(
          valuesOf(activity, step, {}, style),
          randomFrom(step),
          style,
        );
        const least = activity.room(task.printed);
        for (const size of [
          least,
          { widthMm: least.widthMm + 23, heightMm: least.heightMm + 41 },
        ]) {
          for (const withAnswer of [false, true]) {
            const drawn = activity.draw(task, size, style, withAnswer);
            expect(outsideOf(drawn, size.widthMm, size.heightMm), `step ${step}`).toEqual([]);
          }
        }
      }
    }
  });

  test('the answer is on the answer drawing and not on the child’s', () => {
    const task = activity.generate(valuesOf(activity, 2), randomFrom(3), COLOUR);
    const size = activity.room(task.printed);
    const other = JSON.stringify(activity.draw({ ...task, answer: null }, size, COLOUR, false));
    expect(JSON.stringify(activity.draw(task, size, COLOUR, false))).toBe(other);
    expect(JSON.stringify(activity.draw(task, size, COLOUR, true))).not.toBe(other);
  });

  test('every parameter out of its range, of the wrong type or unknown is refused by name', () => {
    for (const [name, spec] of Object.entries(activity.parameters)) {
      for (const value of wrongValues(spec)) {
        const read = activity.read(1, { [name]: value }, COLOUR);
        expect(read.ok, `${name} = ${String(value)}`).toBe(false);
        if (!read.ok)
          expect(read.refusals.map((refusal) => refusal.at)).toContain(`${activity.id} › ${name}`);
      }
    }
    expect(activity.read(1, { nonsense: 1 }, COLOUR).ok).toBe(false);
    expect(activity.read(0, {}, COLOUR).ok).toBe(false);
    expect(activity.read(activity.ladder.length + 1, {}, COLOUR).ok).toBe(false);
  });

  test('has something to say, to show and to describe for every step', () => {
    for (const step of steps) {
      const { printed, answer } = activity.generate(
        valuesOf(activity, step),
        randomFrom(step),
        COLOUR,
      );
      const words = activity.words.en;
      const spoken = [
        ...words.say(printed),
        words.show(printed),
        words.describe(printed),
        words.answer(printed, answer),
      ];
      for (const sentence of spoken) expect(sentence).toMatch(/^[\p{Lu}“].*[.!?”]$/u);
      expect(words.say(printed).length).toBeGreaterThan(0);
    }
  });
});

function valuesOf(activity: Activity, step: number, changes = {}, style = COLOUR) {
  const read = activity.read(step, changes, style);
  if (!read.ok) throw new Error(`step ${step} is refused: ${JSON.stringify(read.refusals)}`);
  return read.value;
}

function someChanges(activity: Activity, random: Random): Record<string, Value> {
  const names = random.sample(Object.keys(activity.parameters), random.int(0, 3));
  return Object.fromEntries(
    names.map((name) => [name, someValue(activity.parameters[name] as Parameter, random)]),
  );
}

function someValue(spec: Parameter, random: Random): Value {
  if (spec.kind === 'whole') return random.int(spec.min, spec.max);
  return spec.kind === 'choice' ? random.pick(spec.values) : random.int(0, 1) === 1;
}

function wrongValues(spec: Parameter): unknown[] {
  const never = [null, undefined, Number.NaN, Number.POSITIVE_INFINITY, 'nonsense', [], {}, 1.5];
  return spec.kind === 'whole'
    ? [...never, spec.min - 1, spec.max + 1, 1e300, String(spec.min)]
    : [...never, 1e300];
}
