// What a sheet code promises over all activities: the same sheet comes back, slips and strangers' codes are refused.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ACTIVITY_IDS,
  type ActivityId,
  activityOf,
  type Value,
  type Values,
} from '../activities/index.ts';
import { MAX_SEED, type Random, randomFrom } from '../base/index.ts';
import { ORIENTATIONS, PAPER_NAMES, PRINT_CHOICES } from '../page/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import { MAKER_VERSION, readCode, writeCode } from './code.ts';
import { CODE_ALPHABET, checkDigitOf, digitsOf, groupedText } from './code-characters.ts';
import { fieldsOf } from './code-fields.ts';
import { type Packed, packFields } from './code-packing.ts';
import { coloursField, MOST_TASKS, type SheetSpec } from './sheet-spec.ts';
import { changesOf, valuesOf } from './sheet-values.ts';

const plainSpec = (activity: ActivityId): SheetSpec => ({
  activity,
  step: 1,
  values: {},
  seed: 7,
  tasks: 1,
  page: { paper: 'A4', orientation: 'portrait' },
  print: 'colour',
});

function randomValue(activity: ActivityId, name: string, random: Random): Value {
  const parameter = activityOf(activity).parameters[name];
  if (parameter?.kind === 'whole') return random.int(parameter.min, parameter.max);
  return parameter?.kind === 'choice' ? random.pick(parameter.values) : random.int(0, 1) === 1;
}

/** A spec with up to three parameters changed, as far as the activity lets them change. */
function randomSpec(seed: number): SheetSpec {
  const random = randomFrom(seed);
  const activity = random.pick(ACTIVITY_IDS);
  const { ladder, parameters } = activityOf(activity);
  const isListed = random.int(0, 1) === 1;
  const someColours = isListed ? random.sample(COLOUR_NAMES, random.int(3, 11)) : undefined;
  const spec: SheetSpec = {
    activity,
    step: random.int(1, ladder.length),
    values: {},
    seed: random.int(0, MAX_SEED),
    tasks: random.int(1, MOST_TASKS),
    page: {
      paper: random.pick(PAPER_NAMES),
      orientation: random.pick(ORIENTATIONS),
      ...(random.int(0, 3) === 0 ? { margin: 'pocket' as const } : {}),
    },
    print: 'colour',
    ...(random.int(0, 3) === 0 ? { hand: 'left' as const } : {}),
    ...(random.int(0, 3) === 0 ? { size: 'large' as const } : {}),
    ...(random.int(0, 3) === 0 ? { ink: 'saving' as const } : {}),
    ...coloursField(someColours),
  };
  let values: Values = {};
  for (const name of random.sample(Object.keys(parameters), random.int(0, 3))) {
    const more = { ...values, [name]: randomValue(activity, name, random) };
    if (valuesOf({ ...spec, values: more }).ok) values = more;
  }
  // What few colours do not allow is made with all of them.
  const { colours: _, ...plain } = spec;
  return { ...(valuesOf({ ...spec, values }).ok ? spec : plain), values: changesOf(spec, values) };
}

const digitsIn = (code: string): readonly number[] => {
  const read = digitsOf(code);
  if (!read.ok) throw new Error(`not a code: ${code}`);
  return read.value;
};

const changed = (digits: readonly number[], place: number, value: number) =>
  digits.map((digit, index) => (index === place ? value : digit));

/** A code with a right check round fields that no sheet wrote. */
function forged(fields: readonly Packed[], version = 1): string {
  const digits = [version, ...packFields(fields)];
  return groupedText([...digits, checkDigitOf(digits)]);
}

const [firstId] = ACTIVITY_IDS;
const FIRST = plainSpec(firstId ?? 'in-every-box');
const COLOURED: SheetSpec = { ...FIRST, colours: ['red', 'green', 'blue', 'pink'] };
const firstFields = (changes: Readonly<Record<number, number>>): readonly Packed[] =>
  fieldsOf(activityOf(FIRST.activity), FIRST).map((field, index) => ({
    ...field,
    value: changes[index] ?? field.value,
  }));

describe('a sheet code', () => {
  it('gives the spec back that it was written from', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: MAX_SEED }), (seed) => {
        const spec = randomSpec(seed);
        expect(readCode(writeCode(spec))).toEqual({ ok: true, value: spec });
      }),
    );
  });

  it.each(ACTIVITY_IDS)(
    'of %s has at most 40 characters, hyphens too, with every value in it',
    (id) => {
      const [rung] = activityOf(id).ladder;
      const digits = packFields(fieldsOf(activityOf(id), plainSpec(id), rung?.values));
      const code = groupedText([1, ...digits, 0]);
      expect(code.length).toBeLessThanOrEqual(40);
    },
  );

  it('leaves out values that are the step’s own, so that each sheet has one code', () => {
    const own = activityOf(FIRST.activity).ladder[0]?.values ?? {};
    expect(writeCode({ ...FIRST, values: own })).toBe(writeCode(FIRST));
  });

  it.each(ACTIVITY_IDS)('of %s with any one character wrong is refused', (id) => {
    const digits = digitsIn(writeCode({ ...plainSpec(id), seed: 3_735_928_559 }));
    for (const [place, right] of digits.entries()) {
      for (let wrong = 0; wrong < CODE_ALPHABET.length; wrong++) {
        if (wrong === right) continue;
        const refusals = { ok: false, refusals: [{ code: 'wrong-check', at: 'sheet code' }] };
        expect(readCode(groupedText(changed(digits, place, wrong)))).toMatchObject(refusals);
      }
    }
  });

  it('cut short or run on is refused', () => {
    const code = writeCode(FIRST);
    const digits = digitsIn(code);
    for (let length = 1; length < digits.length; length++) {
      expect(readCode(groupedText(digits.slice(0, length))).ok).toBe(false);
    }
    for (const more of CODE_ALPHABET) expect(readCode(code + more).ok).toBe(false);
  });

  it('from a later maker says so', () => {
    for (const version of [0, MAKER_VERSION + 1, 22]) {
      expect(readCode(forged(firstFields({}), version))).toMatchObject({
        ok: false,
        refusals: [{ code: 'unknown-version', got: version, known: [1, 2, 3, 4] }],
      });
    }
  });

  it.each([
    [
      'an activity number that nothing has',
      { 0: 63 },
      {
        code: 'not-a-choice',
        at: 'sheet code › activity',
        got: 'number 63',
        choices: Array.from({ length: 18 }, (_, place) => `${place + 1}`),
      },
    ],
    ['a step above the ladder', { 1: 31 }, { code: 'out-of-range', got: 32 }],
    [
      'more tasks than a sheet holds',
      { 2: 12 },
      { code: 'out-of-range', at: 'sheet code › tasks', got: 13, max: 12 },
    ],
    ['a print that is not known', { 5: 3 }, { code: 'not-a-choice', at: 'sheet code › print' }],
  ])('with %s is refused in its own words', (_, changes, refusal) => {
    expect(readCode(forged(firstFields(changes)))).toMatchObject({
      ok: false,
      refusals: [refusal],
    });
  });

  it('that carries values which are the step’s own was never printed', () => {
    const own = activityOf(FIRST.activity).ladder[0]?.values;
    const code = forged(fieldsOf(activityOf(FIRST.activity), FIRST, own));
    expect(readCode(code)).toMatchObject({ ok: false, refusals: [{ code: 'unreadable' }] });
  });

  it('with values that the activity refuses says which', () => {
    const { parameters } = activityOf('in-every-box');
    const most = Object.entries(parameters).map(([name, parameter]) => [
      name,
      parameter.kind === 'whole'
        ? parameter.max
        : activityOf('in-every-box').ladder[0]?.values[name],
    ]);
    const spec = plainSpec('in-every-box');
    const read = readCode(
      forged(fieldsOf(activityOf('in-every-box'), spec, Object.fromEntries(most))),
    );
    expect(read.ok).toBe(false);
    if (!read.ok) {
      for (const { at } of read.refusals) expect(at).toMatch(/^sheet code › in-every-box › \w+$/);
    }
  });

  it('is never written for a spec that no sheet can be made from', () => {
    expect(() => writeCode({ ...FIRST, step: 99 })).toThrow(/sheet code/);
    expect(() => writeCode({ ...FIRST, tasks: 17 })).toThrow(/packing/);
    expect(() => writeCode({ ...FIRST, seed: MAX_SEED + 1 })).toThrow(/packing/);
    expect(() => writeCode({ ...FIRST, seed: 0.5 })).toThrow(/packing/);
  });

  it('knows the only colours, and has version 2 for these alone', () => {
    expect(writeCode(FIRST)[0]).toBe(CODE_ALPHABET[1]);
    expect(writeCode(COLOURED)[0]).toBe(CODE_ALPHABET[2]);
    expect(readCode(writeCode(COLOURED))).toEqual({ ok: true, value: COLOURED });
  });

  it('of version 2 with extras of a later maker says so, and without any was never printed', () => {
    const fields = fieldsOf(activityOf(COLOURED.activity), COLOURED);
    const changing = (changes: Readonly<Record<number, number>>) =>
      fields.map((field, index) => ({ ...field, value: changes[index] ?? field.value }));
    expect(readCode(forged(fields, 2)).ok).toBe(true);
    expect(readCode(forged(changing({ 8: 63 }), 2))).toMatchObject({
      refusals: [{ code: 'not-a-choice', at: 'sheet code › layout', got: 'number 63' }],
    });
    expect(readCode(forged(changing({ 7: 0 }), 2))).toMatchObject({
      refusals: [{ code: 'unreadable' }],
    });
    const bare = fields.flatMap((field, index) =>
      index === 6 ? [{ ...field, value: 0 }] : index === 7 || index === 8 ? [] : [field],
    );
    expect(readCode(forged(bare, 2))).toMatchObject({ refusals: [{ code: 'unreadable' }] });
  });

  it('with colours that do not suffice says so', () => {
    const fields = fieldsOf(activityOf(COLOURED.activity), COLOURED).map((field, index) =>
      index === 7 ? { ...field, value: 1 } : field,
    );
    const read = readCode(forged(fields, 2));
    expect(read).toMatchObject({
      ok: false,
      refusals: [{ at: expect.stringMatching(/^sheet code › in-every-box/) }],
    });
  });

  it('knows the print', () => {
    for (const print of PRINT_CHOICES) {
      const read = readCode(writeCode({ ...FIRST, print }));
      expect(read.ok && read.value.print).toBe(print);
    }
  });
});
