// What a schema found wrong, as refusals with the path of each fault.
import type { z } from 'zod';
import { asGot, type Refusal, saidIn, type Told, told } from '../base/index.ts';
import { pathText } from './path-text.ts';
import { fieldsIn, rangeIn } from './schema-parts.ts';

type Issue = z.core.$ZodIssue;
type IssueOf<C extends Issue['code']> = Extract<Issue, { readonly code: C }>;
type Path = readonly PropertyKey[];

/** More faults than this in one file say no more than these do. */
export const MOST_REFUSALS = 20;

/** The refusals of a failed reading of `input`; `what` and `path` name where the input stands. */
export function refusalsOf(
  error: z.ZodError,
  input: unknown,
  what: string,
  path: Path = [],
): readonly Refusal[] {
  return error.issues
    .flatMap((issue) => refusalsOfIssue(issue, input, what, path))
    .slice(0, MOST_REFUSALS);
}

function refusalsOfIssue(
  issue: Issue,
  input: unknown,
  what: string,
  path: Path,
): readonly Refusal[] {
  const at = pathText(what, [...path, ...issue.path]);
  const value = valueAt(input, issue.path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        code: 'unknown-field',
        at,
        got: asGot(key),
        choices: fieldsIn(issue.message),
      }));
    case 'invalid_type':
      return [typeRefusal(issue, value, at)];
    case 'too_small':
    case 'too_big':
      return [sizeRefusal(issue, value, at)];
    case 'invalid_value':
      return [choiceRefusal(issue.values.map(String), value, at)];
    case 'invalid_union':
      return unionRefusals(issue, value, what, [...path, ...issue.path]);
    default:
      return [
        {
          code: 'unreadable',
          at,
          got: asGot(value),
          expected: saidIn(issue.message) ?? issue.message,
        },
      ];
  }
}

function typeRefusal(issue: IssueOf<'invalid_type'>, value: unknown, at: string): Refusal {
  const range = rangeIn(issue.message);
  const expected = range
    ? told('reasons', 'expected.whole', { ...range })
    : typeName(issue.expected);
  return value === undefined
    ? { code: 'missing', at, expected }
    : { code: 'wrong-type', at, got: asGot(value), expected };
}

function sizeRefusal(
  issue: IssueOf<'too_small'> | IssueOf<'too_big'>,
  value: unknown,
  at: string,
): Refusal {
  const range = rangeIn(issue.message);
  if (range) return { code: 'out-of-range', at, got: asGot(value), ...range };
  const isSmall = issue.code === 'too_small';
  const bound = Number(isSmall ? issue.minimum : issue.maximum);
  const [open, closed] = isSmall ? ['more', 'least'] : ['less', 'most'];
  const end = issue.inclusive === false ? open : closed;
  const expected = told('reasons', `expected.${end}`, { of: issue.origin, count: bound });
  return { code: 'unreadable', at, got: asGot(value), expected };
}

function choiceRefusal(choices: readonly string[], value: unknown, at: string): Refusal {
  return value === undefined
    ? { code: 'missing', at, expected: listed(choices) }
    : { code: 'not-a-choice', at, got: asGot(value), choices };
}

/** Of a union's branches the one that got furthest into the value tells most. */
function unionRefusals(
  issue: IssueOf<'invalid_union'>,
  value: unknown,
  what: string,
  path: Path,
): readonly Refusal[] {
  const at = pathText(what, path);
  if ('options' in issue && Array.isArray(issue.options)) {
    return [choiceRefusal(issue.options.map(String), value, at)];
  }
  const depths = issue.errors.map((inner) => Math.max(...inner.map(({ path }) => path.length)));
  const furthest = issue.errors[depths.indexOf(Math.max(...depths))] ?? [];
  if (furthest.some((inner) => inner.path.length > 0 || inner.code === 'unrecognized_keys')) {
    return furthest.flatMap((inner) => refusalsOfIssue(inner, value, what, path));
  }
  const kinds = issue.errors.flat().flatMap((inner) => expectedOf(inner));
  const expected = listed(kinds.filter((kind, place) => kinds.findIndex(isLike(kind)) === place));
  return value === undefined
    ? [{ code: 'missing', at, expected }]
    : [{ code: 'wrong-type', at, got: asGot(value), expected }];
}

function expectedOf(issue: Issue): readonly (string | Told)[] {
  if (issue.code === 'invalid_type') return [typeName(issue.expected)];
  return issue.code === 'invalid_value' ? issue.values.map(String) : [];
}

function isLike(one: string | Told) {
  const nameOf = (kind: string | Told) => (typeof kind === 'string' ? kind : kind.key);
  return (other: string | Told) => nameOf(other) === nameOf(one);
}

function listed(choices: readonly (string | Told)[]): string | Told {
  if (choices.length > 1)
    return told('reasons', 'expected.choices', { choices: { commas: choices } });
  return choices[0] ?? told('reasons', 'expected.value');
}

function valueAt(input: unknown, path: Path): unknown {
  let value = input;
  for (const part of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, part))
      return undefined;
    value = (value as Readonly<Record<PropertyKey, unknown>>)[part];
  }
  return value;
}

/** What a kind of value is called; a kind of which nobody told is its own name. */
function typeName(kind: string): string | Told {
  const name = TYPE_NAMES[kind];
  return name === undefined ? kind : told('reasons', `expected.${name}`);
}

const TYPE_NAMES: Readonly<Record<string, string>> = {
  object: 'object',
  record: 'object',
  array: 'list',
  tuple: 'list',
  string: 'text',
  number: 'number',
  int: 'whole.any',
  boolean: 'yes-no',
};
