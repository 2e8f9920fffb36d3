// The promises that every activity makes about difficulty: one scale, rungs that rise, targets that are met.
import { describe, expect, test } from 'vitest';
import {
  ACTIVITY_IDS,
  type Activity,
  activityOf,
  FEATURE_NAMES,
  FEATURES,
  type Values,
} from '../../src/activities/index.ts';
import { type Refusal, randomFrom } from '../../src/base/index.ts';
import {
  AIM_TOLERANCE,
  aimAt,
  differentRungs,
  meanDifficulty,
  meansOf,
  NOTCH_LOGITS,
  notch,
  placeThatFails,
  sampleSeeds,
} from '../../src/learner/index.ts';
import type { PrintStyle } from '../../src/page/index.ts';
import { sentenceIn } from '../../src/words/index.ts';
import { IS_WHOLE } from '../whole.ts';

const STYLE: PrintStyle = { print: 'colour' };
/** Seeds that no search has seen. */
const OTHER_SEEDS = sampleSeeds(IS_WHOLE ? 150 : 100, randomFrom(987));
/** For the means of the ends, which are held to figures, and for those of all rungs. */
const END_SEEDS = 200;
const RUNG_SEEDS = IS_WHOLE ? END_SEEDS : 80;
/**
 * Where ladders begin and end, in logits. Not every activity can be made as hard as the hardest: looking alone
 * reaches less far than a key with eight entries.
 */
const START = { min: -3.6, max: -1.25 };
const END = { min: 0.4, max: 3.4 };
/** Least number of rungs that differ, with a content that has little to vary. */
const LEAST_RUNGS = 3;
/** Targets, as shares of the way from the ladder's first rung to its last. */
const WAYS = [0.2, 0.5, 0.8];
/** Least rise of the mean from rung to rung; with other contents than the ladder's own, any. */
const LEAST_RISE = { ladder: 0.05, content: 0.01 };

describe.each(ACTIVITY_IDS.map((id) => [id, activityOf(id)] as const))('%s', (_id, activity) => {
  test('each rung is harder than the one below, from what a beginner can do to what is hard', () => {
    const rungs = activity.ladder.map((rung) => rung.values);
    const means = meansOf(activity, rungs, RUNG_SEEDS, STYLE);
    expect(rungsThatDoNotRise(means, LEAST_RISE.ladder)).toBe('');
    const [first, last] = meansOf(activity, endsOf(activity), END_SEEDS, STYLE);
    expect(first, 'difficulty of the first rung, in logits').toBeGreaterThan(START.min);
    expect(first, 'difficulty of the first rung, in logits').toBeLessThan(START.max);
    expect(last, 'difficulty of the last rung, in logits').toBeGreaterThan(END.min);
    expect(last, 'difficulty of the last rung, in logits').toBeLessThan(END.max);
  });

  test.each(contentsOf(activity))(
    'with %s, each rung is harder than the one below or makes the very same tasks',
    (content) => {
      const rungs = differentRungs(activity, { content }, STYLE);
      if (!rungs.ok) throw new Error(saidOf(rungs.refusals));
      expect(rungs.value.length, 'rungs that differ').toBeGreaterThanOrEqual(LEAST_RUNGS);
      const means = meansOf(activity, rungs.value, 40, STYLE);
      expect(rungsThatDoNotRise(means, LEAST_RISE.content)).toBe('');
    },
  );

  test('features are known, finite, at least 0, and the same for a task from a file', () => {
    for (const [index, { values }] of activity.ladder.entries()) {
      const { printed } = activity.generate(values, randomFrom(index), STYLE);
      const features = activity.features(printed);
      expect(activity.features(JSON.parse(JSON.stringify(printed)))).toEqual(features);
      for (const [name, amount] of Object.entries(features)) {
        const unit = FEATURES[name as keyof typeof FEATURES];
        expect(FEATURE_NAMES, 'names in src/activities/features.ts').toContain(name);
        expect(amount, name).toBeGreaterThanOrEqual(0);
        expect(amount, name).toBeLessThanOrEqual(unit.startsWith('0 to 1') ? 1 : 20);
      }
    }
  });

  test.each(WAYS)('a target at %d of the ladder’s height is met within the tolerance', (way) => {
    const [first, last] = meansOf(activity, endsOf(activity), 40, STYLE);
    const target = Math.round(100 * ((first ?? 0) * (1 - way) + (last ?? 0) * way)) / 100;
    const aim = aimAt(activity, target, {}, STYLE);
    if (!aim.ok) throw new Error(saidOf(aim.refusals));
    const { logits } = meanDifficulty(activity, aim.value.values, OTHER_SEEDS, STYLE);
    expect(Math.abs(logits - target), JSON.stringify(aim.value)).toBeLessThanOrEqual(AIM_TOLERANCE);
  });

  test('a notch harder and a notch easier move about half a logit, content and response as they are', () => {
    const step = Math.ceil(activity.ladder.length / 2);
    const from = activity.ladder[step - 1]?.values ?? {};
    const before = meanDifficulty(activity, from, OTHER_SEEDS, STYLE).logits;
    for (const [direction, sign] of [['harder', 1] as const, ['easier', -1] as const]) {
      const aim = notch(activity, step, {}, direction, STYLE);
      if (!aim.ok) throw new Error(saidOf(aim.refusals));
      const { values } = aim.value;
      const moved = meanDifficulty(activity, values, OTHER_SEEDS, STYLE).logits - before;
      expect(Math.abs(sign * moved - NOTCH_LOGITS), direction).toBeLessThanOrEqual(AIM_TOLERANCE);
      expect([values.content, values.response]).toEqual([from.content, from.response]);
    }
  });

  test('a target out of reach is refused with the range that is not', () => {
    const aim = aimAt(activity, 20, {}, STYLE);
    const [refusal] = aim.ok ? [] : aim.refusals;
    expect(refusal).toMatchObject({
      code: 'out-of-range',
      at: `${activity.id} › difficulty`,
      got: 20,
    });
    if (refusal?.code !== 'out-of-range') return;
    expect(refusal.max, 'hardest that can be asked for, in logits').toBeGreaterThan(END.min);
    expect(refusal.min, 'easiest that can be asked for, in logits').toBeLessThan(START.max);
    expect(aimAt(activity, refusal.max, {}, STYLE).ok).toBe(true);
  });
});

function saidOf(refusals: readonly Refusal[]): string {
  return refusals.map((refusal) => sentenceIn('en', refusal)).join(' ');
}

/** Which rung is no harder than the one below it by the least rise; empty where every one is. */
function rungsThatDoNotRise(means: readonly number[], leastRise: number): string {
  const place = placeThatFails(means, leastRise);
  if (place === 0) return '';
  const [before, mean] = means.slice(place - 2, place);
  return `rung ${place} (${mean} logits) is not ${leastRise} harder than rung ${place - 1} (${before}), by its features`;
}

/** The values of the first rung and of the last. */
function endsOf({ ladder }: Activity): readonly Values[] {
  return [ladder[0]?.values ?? {}, ladder.at(-1)?.values ?? {}];
}

/**
 * Contents of every kind, so that a test run stays short; `npm run rungs` measures them all over 200 seeds.
 */
const KINDS: readonly string[] = [
  'colours',
  'shapes',
  'sizes',
  'directions',
  'small-letters',
  'dot-quantities',
  'pictures',
  'shapes-and-colours',
];

/** Those of each kind that the activity takes; all of them where it names contents of its own. */
function contentsOf({ parameters: { content } }: Activity): readonly string[] {
  const all = content?.kind === 'choice' ? content.values : [];
  const known = all.filter((each) => KINDS.includes(each));
  return known.length > 0 ? known : all;
}
