// What ids promise: the form of the standard, and an order that no clock can break.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { clockTime, ID_FORM, ID_RANDOM_BYTES, newId, secondId, timeOfId } from './ids.ts';

const seed = testSeed('record ids');
const random = fc.uint8Array({ minLength: ID_RANDOM_BYTES, maxLength: ID_RANDOM_BYTES });
const now = fc.integer({ min: 0, max: 4_000_000_000_000 });

/** RFC 9562, appendix A.6: 22 February 2022 14:22:22.00 GMT−05:00, rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F. */
const RFC_EXAMPLE = '017f22e2-79b0-7cc3-98c4-dc0c0c07398f';
const RFC_TIME = Date.parse('2022-02-22T14:22:22.000-05:00');
const RFC_RANDOM = bytesOf((0xcc3n << 62n) | 0x18c4dc0c0c07398fn);

function bytesOf(bits: bigint): Uint8Array {
  return Uint8Array.from({ length: ID_RANDOM_BYTES }, (_, index) =>
    Number((bits >> BigInt(8 * (ID_RANDOM_BYTES - 1 - index))) & 0xffn),
  );
}

describe('an id', () => {
  it('is the example of RFC 9562 for its time and its random bits, field by field', () => {
    expect(newId({ now: RFC_TIME, random: RFC_RANDOM })).toBe(RFC_EXAMPLE);
    expect(RFC_TIME).toBe(0x017f22e279b0);
    expect(timeOfId(RFC_EXAMPLE)).toBe(RFC_TIME);
  });

  it('has version 7, the variant 10 and the time, whatever the random bytes', () => {
    fc.assert(
      fc.property(now, random, (now, random) => {
        const id = newId({ now, random });
        return ID_FORM.test(id) && id.charAt(14) === '7' && timeOfId(id) === now;
      }),
      { seed },
    );
  });

  it('is greater than the last one, whatever the clock does between them', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(now, random), { maxLength: 30 }), (ticks) => {
        let last = '';
        for (const [now, random] of ticks) {
          const id = newId({ now, random, ...(last === '' ? {} : { last }) });
          expect(id > last).toBe(true);
          expect(id).toMatch(ID_FORM);
          last = id;
        }
      }),
      { seed },
    );
  });

  it('comes from a clock that is set to any time a computer can have', () => {
    // The whole range of an ECMAScript time value (ECMA-262, “Time Values and Time Range”).
    const anyTime = fc.integer({ min: -8.64e15, max: 8.64e15 });
    fc.assert(
      fc.property(fc.array(fc.tuple(anyTime, random), { minLength: 2 }), (ticks) => {
        let last = '';
        for (const [now, random] of ticks) {
          const id = newId({ now: clockTime(now), random, ...(last === '' ? {} : { last }) });
          expect(id > last).toBe(true);
          expect(id).toMatch(ID_FORM);
          last = id;
        }
      }),
      { seed },
    );
  });

  it('goes on to the next millisecond where the last one has used up its bits', () => {
    const last = '017f22e2-79b0-7fff-bfff-ffffffffffff';
    const next = newId({ now: RFC_TIME, random: new Uint8Array(ID_RANDOM_BYTES), last });
    expect(next).toBe('017f22e2-79b1-7000-8000-000000000000');
  });

  it('is greater than a second id of the same millisecond', () => {
    fc.assert(
      fc.property(random, fc.string(), (random, text) => {
        const last = secondId(RFC_EXAMPLE, text);
        return newId({ now: RFC_TIME, random, last }) > last;
      }),
      { seed },
    );
  });
});

describe('a second id', () => {
  it('follows from the first id and the text, keeps the time, and has version 8', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (one, other) => {
        const id = secondId(RFC_EXAMPLE, one);
        expect(id).toMatch(ID_FORM);
        expect([id.charAt(14), timeOfId(id)]).toEqual(['8', RFC_TIME]);
        expect(secondId(RFC_EXAMPLE, other) === id).toBe(one === other);
      }),
      { seed },
    );
  });
});
