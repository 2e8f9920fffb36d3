// The distance of outlines, against areas worked out by hand.
import { describe, expect, it } from 'vitest';
import { SHAPES } from './form-names.ts';
import { outlineShare, turnedOutlineShare } from './outline-distance.ts';

describe('outlineShare', () => {
  it('of a circle and a square is 1 less the best overlap that plane geometry allows', () => {
    // A disc of radius 1 and a square of half side h share π − 4(arccos h − h√(1 − h²)) for h from 0.71 to 1.
    const overlaps = Array.from({ length: 29 }, (_, index) => {
      const h = 0.71 + index / 100;
      const common = Math.PI - 4 * (Math.acos(h) - h * Math.sqrt(1 - h * h));
      return common / (Math.PI + 4 * h * h - common);
    });
    const share = outlineShare({ form: 'circle' }, { form: 'square' });
    expect(share).toBeCloseTo(1 - Math.max(...overlaps), 1);
    expect(Math.abs(share - (1 - Math.max(...overlaps)))).toBeLessThan(0.02);
  });

  it('of a level and a standing oblong of sides 2 and 1.1 is 1 − 1.21 / 3.19', () => {
    const share = outlineShare({ form: 'oblong' }, { form: 'oblong', turn: 90 });
    expect(Math.abs(share - (1 - 1.21 / 3.19))).toBeLessThan(0.02);
  });

  it('of an oblong of sides 2 and 1.1 and a square is 1 less the best overlap over the square’s side', () => {
    const overlaps = Array.from({ length: 90 }, (_, index) => {
      const side = 1.1 + index / 100;
      return (1.1 * side) / (2.2 + side * side - 1.1 * side);
    });
    const share = outlineShare({ form: 'oblong' }, { form: 'square' });
    expect(Math.abs(share - (1 - Math.max(...overlaps)))).toBeLessThan(0.03);
  });

  it('is the same both ways round, 0 to itself, and between 0 and 1', () => {
    for (const one of SHAPES) {
      expect(outlineShare({ form: one }, { form: one })).toBe(0);
      for (const other of SHAPES) {
        const share = outlineShare({ form: one }, { form: other });
        expect(share).toBe(outlineShare({ form: other }, { form: one }));
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
      }
    }
  });

  it('takes no notice of size, colour or fill of shapes', () => {
    const plain = outlineShare({ form: 'heart' }, { form: 'star' });
    const other = outlineShare(
      { form: 'heart', size: 0.4, colour: 'red' },
      { form: 'star', fill: 'spots' },
    );
    expect(other).toBe(plain);
  });
});

describe('turnedOutlineShare', () => {
  it('is small where a letter turns into another: b d, p q, n u, 6 9', () => {
    const pairs = [
      ['small-b', 'small-d'],
      ['small-p', 'small-q'],
      ['small-b', 'small-q'],
      ['small-n', 'small-u'],
      ['numeral-6', 'numeral-9'],
    ] as const;
    for (const [one, other] of pairs) {
      const upright = outlineShare({ form: one }, { form: other });
      const turned = turnedOutlineShare({ form: one }, { form: other });
      expect(turned, `${one} ${other}`).toBeLessThan(0.25);
      expect(upright, `${one} ${other}`).toBeGreaterThan(turned + 0.1);
    }
  });

  it('is never more than the share as the figures lie', () => {
    for (const one of SHAPES) {
      for (const other of SHAPES) {
        const turned = turnedOutlineShare({ form: one }, { form: other });
        expect(turned).toBeLessThanOrEqual(outlineShare({ form: one }, { form: other }));
      }
    }
  });
});
