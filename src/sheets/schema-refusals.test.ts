// What faults of a schema promise as refusals: the code, the path, what came, what is allowed.
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { saidIn } from '../../tests/said.ts';
import { closedObject, wholeNumber } from './schema-parts.ts';
import { refusalsOf } from './schema-refusals.ts';

const cell = z.union([z.null(), z.strictObject({ form: z.string() })]);
const schema = closedObject({
  count: wholeNumber(1, 5),
  name: z.enum(['red', 'blue']),
  cells: z.array(cell).min(1).max(3),
  kind: z.discriminatedUnion('is', [
    z.strictObject({ is: z.literal('a'), size: z.number().max(1) }),
    z.strictObject({ is: z.literal('b') }),
  ]),
});
const RIGHT = { count: 2, name: 'red', cells: [null], kind: { is: 'b' } };

function refusals(changes: Readonly<Record<string, unknown>>) {
  const given = { ...RIGHT, ...changes };
  const read = schema.safeParse(given);
  return read.success ? [] : refusalsOf(read.error, given, 'pack');
}

describe('a fault', () => {
  it('in nothing gives no refusal', () => {
    expect(refusals({})).toEqual([]);
  });

  it.each([
    [{ count: 9 }, { code: 'out-of-range', at: 'pack › count', got: 9, min: 1, max: 5 }],
    [{ count: -1e300 }, { code: 'out-of-range', got: -1e300, min: 1, max: 5 }],
    [{ count: 1.5 }, { code: 'wrong-type', got: 1.5, expected: 'a whole number from 1 to 5' }],
    [{ count: Number.NaN }, { code: 'wrong-type', got: 'NaN' }],
    [{ count: '2' }, { code: 'wrong-type', got: '2' }],
    [{ count: undefined }, { code: 'missing', expected: 'a whole number from 1 to 5' }],
    [{ name: 'rde' }, { code: 'not-a-choice', at: 'pack › name', choices: ['red', 'blue'] }],
    [{ name: undefined }, { code: 'missing', expected: 'one of red, blue' }],
    [{ cells: {} }, { code: 'wrong-type', expected: 'a list', got: 'a object' }],
    [{ cells: [] }, { code: 'unreadable', expected: 'at least 1 entries', got: 'a list of 0' }],
    [{ cells: [null, 7] }, { code: 'wrong-type', at: 'pack › cells[1]', got: 7 }],
    [
      { cells: [{ form: 3 }] },
      { code: 'wrong-type', at: 'pack › cells[0].form', expected: 'text' },
    ],
    [
      { cells: [{ form: 'x', odd: 1 }] },
      { code: 'unknown-field', at: 'pack › cells[0]', got: 'odd' },
    ],
    [{ kind: { is: 'c' } }, { code: 'not-a-choice', at: 'pack › kind.is', choices: ['a', 'b'] }],
    [
      { kind: { is: 'a', size: 2 } },
      { code: 'unreadable', at: 'pack › kind.size', expected: 'at most 1' },
    ],
    [{ extra: 1 }, { code: 'unknown-field', at: 'pack', choices: Object.keys(RIGHT) }],
  ])('%j gives the refusal that names it', (changes, expected) => {
    expect(refusals(changes).map(saidIn)[0]).toMatchObject(expected);
  });

  it('is told beside the others, none hides another', () => {
    expect(refusals({ count: 0, name: 'x' }).map(({ at }) => at)).toEqual([
      'pack › count',
      'pack › name',
    ]);
  });
});
