// The sheet code: the short text on a sheet from which the same sheet is made again.
import { ACTIVITY_IDS, type Activity, type ActivityId, activityOf } from '../activities/index.ts';
import { accept, type Result, refuse, told } from '../base/index.ts';
import { checkDigitOf, digitsOf, groupedText, isChecked } from './code-characters.ts';
import { type CodeVersion, fieldsOf, readFields, versionFor } from './code-fields.ts';
import { packFields, unpack } from './code-packing.ts';
import { refusalsUnder } from './path-text.ts';
import { isAboutPictures, type SheetSpec } from './sheet-spec.ts';
import { changesOf, valuesOf } from './sheet-values.ts';

/**
 * The newest version of codes, 1 to 22, as the first character. Whatever changes what a
 * code's numbers mean (a parameter's range, a rung of a ladder, a generator) raises it, and the
 * reader of each older version stays in `READERS`, turning what it reads into a spec of today.
 * Version 2 says more than version 1 and version 3 more than 2, all else alike: a sheet with nothing more to say has a
 * code of version 1, one that nobody changed none of version 3, and one that is not
 * about letters of a name or a content that came later none of version 4.
 */
export const MAKER_VERSION = 4;

type Reader = (digits: readonly number[]) => Result<SheetSpec>;
const READERS: Readonly<Record<number, Reader>> = {
  1: (digits) => readVersion(1, digits),
  2: (digits) => readVersion(2, digits),
  3: (digits) => readVersion(3, digits),
  4: (digits) => readVersion(4, digits),
};
export const READABLE_VERSIONS: readonly number[] = Object.keys(READERS).map(Number);

/** A version and a check character at the least, and something between them. */
const FEWEST_DIGITS = 3;

/** The code of a sheet, in groups of four; a defect for a spec that no sheet can be made from. */
export function writeCode(spec: SheetSpec): string {
  const activity = activityOf(spec.activity);
  const values = valuesOf(spec);
  if (!values.ok) throw new Error(`sheet code: ${JSON.stringify(values.refusals)}`);
  const isChanged = Object.keys(changesOf(spec, values.value)).length > 0;
  const fields = fieldsOf(activity, spec, isChanged ? values.value : undefined);
  const digits = [versionFor(spec), ...packFields(fields)];
  return codeOf(digits);
}

/**
 * The spec of a code as a person typed it, in any case, with or without hyphens. Refuses, each in
 * its own way: characters that no code has, a code that is not whole or has a wrong character, one
 * from an unknown version, an unknown activity, and values that no sheet can be made from.
 */
export function readCode(typed: string): Result<SheetSpec> {
  const read = digitsOf(typed);
  if (!read.ok) return read;
  const digits = read.value;
  if (digits.length < FEWEST_DIGITS || !isChecked(digits)) {
    return refuse({ code: 'wrong-check', at: 'sheet code', got: groupedText(digits) });
  }
  const version = digits[0] ?? 0;
  const reader = READERS[version];
  return reader
    ? reader(digits.slice(1, -1))
    : refuse({
        code: 'unknown-version',
        at: 'sheet code',
        got: version,
        known: READABLE_VERSIONS,
      });
}

function readVersion(version: CodeVersion, digits: readonly number[]): Result<SheetSpec> {
  const fields = unpack(digits);
  const read = readFields(fields, activities(), version);
  if (!read.ok) return read;
  if (!fields.isSpent()) return refuseUnwritten(version, digits);
  const { spec } = read.value;
  const values = valuesOf(spec);
  if (!values.ok) {
    return refuse(...refusalsUnder('sheet code', values.refusals));
  }
  const changes = changesOf(spec, values.value);
  // Each sheet has one code: one that carries values which are the step's own, or no extras, was never printed.
  const hasOwn = Object.keys(spec.values).length > 0 && Object.keys(changes).length === 0;
  const isIdle = spec.pictures !== undefined && !isAboutPictures(spec.activity, values.value);
  const isCanonical =
    !hasOwn &&
    !isIdle &&
    versionFor(spec) === version &&
    (version < 3 || isAsWritten(spec, version, digits));
  return isCanonical ? accept({ ...spec, values: changes }) : refuseUnwritten(version, digits);
}

/** A code with changes carries many numbers; it is read only as it would be written. */
function isAsWritten(spec: SheetSpec, version: CodeVersion, digits: readonly number[]): boolean {
  return writeCode(spec) === codeOf([version, ...digits]);
}

function codeOf(digits: readonly number[]): string {
  return groupedText([...digits, checkDigitOf(digits)]);
}

function refuseUnwritten(version: CodeVersion, digits: readonly number[]): Result<never> {
  return refuse({
    code: 'unreadable',
    at: 'sheet code',
    got: codeOf([version, ...digits]),
    expected: told('reasons', 'expected.code.printed'),
  });
}

function activities(): readonly (readonly [ActivityId, Activity])[] {
  return ACTIVITY_IDS.map((id) => [id, activityOf(id)] as const);
}
