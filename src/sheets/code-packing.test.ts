// What packing promises: whatever goes in comes out, and nothing else does.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digitsNeeded, packFields, unpack } from './code-packing.ts';

const field = fc
  .integer({ min: 1, max: 2 ** 32 })
  .chain((radix) =>
    fc.record({ radix: fc.constant(radix), value: fc.integer({ min: 0, max: radix - 1 }) }),
  );
const fields = fc.array(field, { minLength: 1, maxLength: 12 });

describe('packing', () => {
  it('gives every field back', () => {
    fc.assert(
      fc.property(fields, (given) => {
        const unpacking = unpack(packFields(given));
        expect(given.map(({ radix }) => unpacking.take(radix))).toEqual(
          given.map(({ value }) => value),
        );
        expect(unpacking.isSpent()).toBe(true);
      }),
    );
  });

  it('takes as many digits for the smallest numbers as for the largest', () => {
    const radices = [64, 12, 7];
    const smallest = radices.map((radix) => ({ radix, value: 0 }));
    const largest = radices.map((radix) => ({ radix, value: radix - 1 }));
    expect(packFields(smallest)).toHaveLength(digitsNeeded(radices));
    expect(packFields(largest)).toHaveLength(digitsNeeded(radices));
  });

  it('needs no digit more than the numbers fill', () => {
    expect(digitsNeeded([1])).toBe(0);
    expect(digitsNeeded([2])).toBe(1);
    expect(digitsNeeded([23])).toBe(1);
    expect(digitsNeeded([24])).toBe(2);
    expect(digitsNeeded([23, 23])).toBe(2);
    expect(digitsNeeded([23, 23, 2])).toBe(3);
  });

  it('is not spent where digits hold more than the fields, or there are more digits', () => {
    const over = unpack([22, 22]);
    over.take(23);
    over.take(22);
    expect(over.isSpent()).toBe(false);
    const long = unpack([0, 0, 5]);
    long.take(23);
    expect(long.isSpent()).toBe(false);
  });

  it.each([-1, 4, 1.5, Number.NaN])('throws for %s in a field of four', (value) => {
    expect(() => packFields([{ value, radix: 4 }])).toThrow(/code packing/);
  });
});
