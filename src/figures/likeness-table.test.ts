// The table of outline distances against the measure itself.
import { describe, expect, it } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { randomFrom } from '../base/index.ts';
import { CONTENT_IDS, formsOf } from './contents.ts';
import type { FormId } from './form-names.ts';
import { pairNumber, tabledShares } from './likeness-table.ts';
import { measureOutlineShare, measureTurnedShare } from './outline-distance.ts';

const seed = testSeed('likeness table');
const SAMPLES_A_POOL = 6;

describe('the table of outline distances', () => {
  it('holds every pair of every content that draws forms', () => {
    for (const content of CONTENT_IDS) {
      const forms = formsOf(content);
      forms.forEach((one, index) => {
        for (const other of forms.slice(index + 1)) {
          const shares = tabledShares(one, other);
          expect(shares, `${one} ${other}`).not.toBe(undefined);
          expect(shares?.turned ?? 1).toBeLessThanOrEqual(shares?.plain ?? 0);
        }
      });
    }
  });

  it('agrees with the measure on a sample of every pool', () => {
    const random = randomFrom(seed);
    for (const content of CONTENT_IDS.filter((id) => formsOf(id).length > 1)) {
      for (let sample = 0; sample < SAMPLES_A_POOL; sample++) {
        const [one = 'circle', other = 'circle'] = random.sample<FormId>(formsOf(content), 2);
        const measured = {
          plain: measureOutlineShare({ form: one }, { form: other }),
          turned: measureTurnedShare({ form: one }, { form: other }),
        };
        expect(tabledShares(one, other), `${one} ${other}, seed ${seed}`).toEqual(measured);
        expect(tabledShares(other, one)).toEqual(measured);
      }
    }
  });

  it('numbers every pair once', () => {
    const numbers = [0, 1, 2, 3, 4, 5].flatMap((first) =>
      [1, 2, 3, 4, 5]
        .filter((second) => second > first)
        .map((second) => pairNumber(first, second, 6)),
    );
    expect(numbers).toEqual(Array.from({ length: 15 }, (_, index) => index));
  });

  it('holds nothing of a form and itself, nor of forms that never meet', () => {
    expect(tabledShares('circle', 'circle')).toBe(undefined);
    expect(tabledShares('circle', 'dots')).toBe(undefined);
  });
});
