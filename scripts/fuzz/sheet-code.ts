// Sheet codes, short and long: read, and the sheet made and drawn.
import fc from 'fast-check';
import { ACTIVITY_IDS, activityOf } from '../../src/activities/index.ts';
import type { TaskEdit } from '../../src/editing/index.ts';
import { DOT_LAYOUTS, FILLS, type Figure, FORMS, ownFormOf } from '../../src/figures/index.ts';
import { COLOUR_NAMES } from '../../src/palette/index.ts';
import { svgOf } from '../../src/press/index.ts';
import {
  CODE_ALPHABET,
  CODE_BASE,
  checkDigitOf,
  digitsOf,
  groupedText,
} from '../../src/sheets/code-characters.ts';
import { fieldsOf, versionFor } from '../../src/sheets/code-fields.ts';
import { type Packed, packFields } from '../../src/sheets/code-packing.ts';
import {
  DEFAULT_PAGE,
  makeSheet,
  readCode,
  type SheetSpec,
  sheetPage,
} from '../../src/sheets/index.ts';
import { valuesOf } from '../../src/sheets/sheet-values.ts';
import { knownNumbers } from './bases.ts';
import { hostileText } from './hostile.ts';
import type { Kind } from './kind.ts';
import { acceptedOrTold } from './must-hold.ts';

/** One sheet in so many is drawn, too. */
const DRAWN = 4;

function meet(code: string): void {
  const spec = acceptedOrTold(readCode(code));
  if (!spec) return;
  const sheet = acceptedOrTold(makeSheet(spec));
  if (sheet && spec.seed % DRAWN === 0) svgOf(sheetPage(sheet));
}

export function sheetCodeKind(): Kind<string> {
  const specs = plainSpecs();
  const written = specs.map(({ spec, changed }) => ({
    version: versionFor(spec),
    fields: fieldsOf(activityOf(spec.activity), spec, changed),
  }));
  const fromFields = fc
    .tuple(fc.constantFrom(...written), fc.array(slip, { maxLength: 4 }))
    .map(([{ version, fields }, slips]) => coded(version, withSlips(fields, slips)));
  const codes = written.map(({ version, fields }) => coded(version, fields));
  return {
    name: 'sheet-code',
    inputs: fc.oneof(
      { weight: 10, arbitrary: fromFields },
      { weight: 4, arbitrary: changedCodes(codes) },
      { weight: 3, arbitrary: digitCodes(40) },
      { weight: 2, arbitrary: hostileText },
    ),
    meet,
    show: (code) => code,
  };
}

export function longCodeKind(): Kind<string> {
  const own = knownNumbers();
  const bases = ACTIVITY_IDS.map((activity) => specOf(activity, 2));
  const changed = fc
    .tuple(fc.constantFrom(...bases), edits(own), fc.boolean(), fc.array(slip, { maxLength: 2 }))
    .map(([base, all, withOwn, slips]) => {
      const pictures = withOwn ? { pictures: { ids: [...own].sort() } } : {};
      const spec: SheetSpec = { ...base, ...pictures, edits: all };
      const fields = fieldsOf(activityOf(spec.activity), spec).map(inRange);
      return coded(versionFor(spec), withSlips(fields, slips));
    });
  return {
    name: 'long-code',
    inputs: fc.oneof(
      { weight: 8, arbitrary: changed },
      { weight: 2, arbitrary: digitCodes(3300) },
      { weight: 1, arbitrary: changed.map((code) => `${code}-${code}`.repeat(9).slice(0, 4001)) },
    ),
    meet,
    show: (code) => code,
  };
}

type Wanted = { readonly spec: SheetSpec; readonly changed?: ReturnType<typeof allValues> };

function plainSpecs(): readonly Wanted[] {
  const own = [...knownNumbers()].sort();
  return ACTIVITY_IDS.flatMap((activity): readonly Wanted[] => {
    const plain = specOf(activity, 1);
    const extras: Partial<SheetSpec> = { colours: ['red', 'blue'], hand: 'left', ink: 'saving' };
    return [
      { spec: plain },
      { spec: plain, changed: allValues(plain) },
      { spec: { ...plain, ...extras } },
      { spec: { ...plain, pictures: { ids: own, alone: true } }, changed: allValues(plain) },
      { spec: { ...plain, values: { content: 'name-letters' } }, changed: allValues(plain) },
    ];
  });
}

function specOf(activity: SheetSpec['activity'], step: number): SheetSpec {
  return { activity, step, values: {}, seed: 4, tasks: 2, page: DEFAULT_PAGE, print: 'colour' };
}

function allValues(spec: SheetSpec) {
  const values = valuesOf(spec);
  if (!values.ok) throw new Error(JSON.stringify(values.refusals));
  return values.value;
}

interface Slip {
  readonly at: number;
  readonly value: number;
}
const slip: fc.Arbitrary<Slip> = fc.record({ at: fc.nat(0xffff), value: fc.nat(0xffff_ffff) });

function withSlips(fields: readonly Packed[], slips: readonly Slip[]): readonly Packed[] {
  const changed = [...fields];
  for (const { at, value } of slips) {
    const place = at % changed.length;
    const radix = changed[place]?.radix ?? 1;
    changed[place] = { radix, value: value % radix };
  }
  return changed;
}

function inRange({ value, radix }: Packed): Packed {
  return { radix, value: Math.max(0, Math.min(radix - 1, Math.round(value))) };
}

function coded(version: number, fields: readonly Packed[]): string {
  return checked([version, ...packFields(fields)]);
}

function checked(digits: readonly number[]): string {
  return groupedText([...digits, checkDigitOf(digits)]);
}

/** Codes with digits changed, added or taken, and the check character right again. */
function changedCodes(codes: readonly string[]): fc.Arbitrary<string> {
  return fc
    .tuple(fc.constantFrom(...codes), fc.array(slip, { maxLength: 3 }))
    .map(([code, all]) => {
      const read = digitsOf(code);
      const digits = read.ok ? read.value.slice(0, -1) : [];
      for (const { at, value } of all) {
        const place = at % digits.length;
        const digit = value % CODE_BASE;
        const kind = value % 5;
        digits.splice(place, kind === 1 ? 0 : 1, ...(kind === 0 ? [] : [digit]));
        if (digits.length === 0) digits.push(digit);
      }
      return checked(digits);
    });
}

function digitCodes(most: number): fc.Arbitrary<string> {
  return fc
    .tuple(
      fc.integer({ min: 0, max: 6 }),
      fc.array(fc.nat(CODE_ALPHABET.length - 1), { minLength: 1, maxLength: most, size: 'max' }),
    )
    .map(([version, digits]) => checked([version, ...digits]));
}

function edits(own: readonly string[]): fc.Arbitrary<readonly TaskEdit[]> {
  const forms = [...FORMS, ...own.map(ownFormOf)];
  const figure: fc.Arbitrary<Figure | null> = fc.option(
    fc.record(
      {
        form: fc.constantFrom(...forms),
        colour: fc.constantFrom(...COLOUR_NAMES),
        size: fc.nat(4095).map((thousandths) => thousandths / 1000),
        turn: fc.nat(359),
        mirrored: fc.boolean(),
        count: fc.nat(20),
        layout: fc.constantFrom(...DOT_LAYOUTS),
        dotSize: fc.nat(4095).map((thousandths) => thousandths / 1000),
        fill: fc.constantFrom(...FILLS),
      },
      { requiredKeys: [] },
    ) as fc.Arbitrary<Figure>,
  );
  const shape = fc.record({
    kind: fc.constantFrom('add' as const, 'take' as const),
    list: fc.nat(8),
    at: fc.nat(12),
    together: fc.boolean(),
  });
  const fact = fc.tuple(
    fc.nat(12),
    fc.oneof<fc.Arbitrary<number | string>[]>(
      fc.nat(70),
      fc.constantFrom<string>(...COLOUR_NAMES, 'cross', 'ring'),
    ),
  );
  const edit = (task: number) =>
    fc
      .record({
        seed: fc.option(fc.nat(99), { nil: undefined }),
        shape: fc.array(shape, { maxLength: 3 }),
        figures: fc.array(fc.tuple(fc.nat(40), figure), { maxLength: 12 }),
        facts: fc.array(fact, { maxLength: 3 }),
      })
      .map(
        ({ seed, ...others }): TaskEdit => ({
          task,
          ...others,
          ...(seed === undefined ? {} : { seed }),
        }),
      );
  return fc.oneof(
    edit(0).map((one) => [one]),
    fc.tuple(edit(0), edit(1)),
  );
}
