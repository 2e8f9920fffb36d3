// The promises of a sheet that is made with few colours alone: they are all it uses, or it is refused.
import { describe, expect, test } from 'vitest';
import {
  ACTIVITY_IDS,
  type Activity,
  activityOf,
  type Task,
  type Value,
  type Values,
} from '../../src/activities/index.ts';
import { type Random, type Refusal, randomFrom } from '../../src/base/index.ts';
import type { PrintStyle } from '../../src/page/index.ts';
import { COLOUR_NAMES, type ColourName, FIGURE_COLOURS } from '../../src/palette/index.ts';
import { sentenceOf } from '../../src/words/index.ts';
import { testSeed } from '../seed.ts';

/** Lists of a house: usual ones, one alone, two that are alike in grey print, inks that do not answer, paper. */
const LISTS: readonly (readonly ColourName[])[] = [
  ['red', 'yellow', 'blue'],
  ['orange', 'green', 'purple', 'pink'],
  ['green'],
  ['green', 'grey'],
  ['black', 'grey'],
  ['white'],
  ['red', 'white', 'black', 'brown', 'pink'],
];
const STYLES: readonly PrintStyle[] = LISTS.flatMap((colours) => [
  { print: 'colour', colours } as const,
  { print: 'grey', colours } as const,
]);
const SEEDS = 2;

describe.each(ACTIVITY_IDS.map((id) => [id, activityOf(id)] as const))('%s', (id, activity) => {
  const steps = activity.ladder.map((_, index) => index + 1);

  test.each(STYLES)(
    'every step with $colours in $print is proven and uses these alone, or is refused',
    (style) => {
      for (const step of steps) {
        const read = activity.read(step, {}, style);
        if (!read.ok) {
          expectColoursNamed(activity, step, read.refusals, style);
          continue;
        }
        for (let seed = 0; seed < SEEDS; seed++) {
          expectOnlyThese(activity, read.value, seed, style, `step ${step}, seed ${seed}`);
        }
      }
    },
  );

  test('any values that are not refused are proven and use the colours at hand alone', () => {
    const seed = testSeed(`colours at hand for ${id}`);
    const random = randomFrom(seed);
    let made = 0;
    for (let attempt = 0; attempt < 1000 && made < 80; attempt++) {
      const style = random.pick(STYLES);
      const read = activity.read(random.pick(steps), someChanges(activity, random), style);
      if (!read.ok) continue;
      made++;
      const name = `seed ${seed}: ${JSON.stringify({ ...read.value, ...style })}`;
      expectOnlyThese(activity, read.value, random.int(0, 1e9), style, name);
    }
    expect(made, `seed ${seed}`).toBeGreaterThan(20);
  });

  test('all colours at hand are as good as no list', () => {
    for (const step of steps) {
      const [plain, listed] = [
        { print: 'colour' },
        { print: 'colour', colours: FIGURE_COLOURS },
      ] as const satisfies readonly PrintStyle[];
      expect(activity.read(step, {}, listed), `step ${step}`).toEqual(
        activity.read(step, {}, plain),
      );
    }
  });
});

/** A refusal that says how few colours there are and offers something that is then accepted or mended further. */
function expectColoursNamed(
  activity: Activity,
  step: number,
  refusals: readonly Refusal[],
  style: PrintStyle,
): void {
  const [refusal] = refusals;
  const sentence = refusal ? sentenceOf(refusal) : '';
  const name = `step ${step} of ${activity.id} with ${style.colours}: ${sentence}`;
  expect(refusals.length, name).toBe(1);
  expect(sentence, name).toMatch(/only \d+ colours? (is|are) at hand/);
  const parameter = refusal?.at.split(' › ')[1] ?? '';
  expect(Object.keys(activity.parameters), name).toContain(parameter);
  const value = refusal ? offered(refusal) : undefined;
  expect(value, name).toBeDefined();
  const again = activity.read(step, { [parameter]: value }, style);
  const other = again.ok ? [] : again.refusals.map(({ at }) => at);
  // Where one change is not enough, what is refused next is something else.
  expect(other, name).not.toContain(refusal?.at);
}

function offered(refusal: Refusal): Value | undefined {
  if (refusal.code === 'out-of-range') {
    return Number(refusal.got) < refusal.min ? refusal.min : refusal.max;
  }
  if (refusal.code !== 'not-a-choice') return undefined;
  const { got, nearest } = refusal;
  if (typeof got === 'boolean') return nearest === 'true';
  return typeof got === 'number' ? Number(nearest) : nearest;
}

function expectOnlyThese(
  activity: Activity,
  values: Values,
  seed: number,
  style: PrintStyle,
  name: string,
): void {
  const task = activity.generate(values, randomFrom(seed), style);
  expect(activity.prove(task), name).toEqual({ proven: true });
  expect(activity.printed.safeParse(JSON.parse(JSON.stringify(task.printed))).success, name).toBe(
    true,
  );
  const used = [...coloursWritten(task), ...materialColours(activity, task)];
  expect(style.colours, name).toEqual(expect.arrayContaining(used));
}

/** Wherever in the printed facts a colour is named. */
function coloursWritten({ printed }: Task): readonly ColourName[] {
  const written = JSON.stringify(printed);
  return COLOUR_NAMES.filter((name) => written.includes(`"${name}"`));
}

function materialColours(activity: Activity, task: Task): readonly ColourName[] {
  return activity
    .materials(task)
    .flatMap((material) => ('colour' in material ? [material.colour] : []));
}

/** A few parameters at any value of theirs. */
function someChanges(activity: Activity, random: Random): Readonly<Record<string, Value>> {
  const names = random.sample(Object.keys(activity.parameters), random.int(0, 3));
  return Object.fromEntries(
    names.map((name): readonly [string, Value] => {
      const spec = activity.parameters[name];
      if (!spec || spec.kind === 'yes-no') return [name, random.int(0, 1) === 1];
      return [
        name,
        spec.kind === 'whole' ? random.int(spec.min, spec.max) : random.pick(spec.values),
      ];
    }),
  );
}
