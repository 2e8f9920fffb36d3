// What counts as the same figure, as different, and as fairly different.
import { describe, expect, it } from 'vitest';
import { FAIR_DE00, worstDifferenceDe00 } from '../palette/index.ts';
import { differencesOf, fairlyDifferent, sameFigure } from './differences.ts';
import { type DOT_LAYOUTS, FILLS, type Figure } from './figure.ts';
import { SHAPES } from './form-names.ts';
import { TURNABLE } from './pools.ts';

describe('sameFigure', () => {
  const same: readonly (readonly [string, Figure, Figure])[] = [
    [
      'defaults that are absent and stated',
      { form: 'star' },
      { form: 'star', size: 1, turn: 0, mirrored: false, fill: 'solid' },
    ],
    ['no form and a circle', { colour: 'red' }, { form: 'circle', colour: 'red' }],
    ['a circle however turned', { form: 'circle' }, { form: 'circle', turn: 77, mirrored: true }],
    ['a square turned by 90 degrees', { form: 'square' }, { form: 'square', turn: 90 }],
    ['a star turned by a fifth', { form: 'star' }, { form: 'star', turn: 72 }],
    ['a heart mirrored', { form: 'heart' }, { form: 'heart', mirrored: true }],
    [
      'a crescent mirrored and one turned half round',
      { form: 'crescent', mirrored: true },
      { form: 'crescent', turn: 180 },
    ],
    [
      'a plus turned by 45 degrees and an oblique cross',
      { form: 'sign-plus', turn: 45 },
      { form: 'sign-oblique-cross' },
    ],
    [
      'an upright line laid down and a level one',
      { form: 'sign-upright-line', turn: 90 },
      { form: 'sign-level-line' },
    ],
    ['ink and black', { form: 'heart' }, { form: 'heart', colour: 'black' }],
    [
      'white and an outline',
      { form: 'heart', colour: 'white' },
      { form: 'heart', fill: 'outline' },
    ],
    [
      'one dot in two layouts',
      { form: 'dots', count: 1 },
      { form: 'dots', count: 1, layout: 'row' },
    ],
    [
      'four dots of a die turned by 90 degrees',
      { form: 'dots', count: 4 },
      { form: 'dots', count: 4, turn: 90 },
    ],
  ];
  it.each(same)('takes %s for the same', (_, one, other) => {
    expect(sameFigure(one, other)).toBe(true);
    expect(sameFigure(other, one)).toBe(true);
  });

  const different: readonly (readonly [string, Figure, Figure])[] = [
    ['two colours', { colour: 'red' }, { colour: 'blue' }],
    ['two forms', { form: 'circle' }, { form: 'oval' }],
    ['two sizes', { form: 'star', size: 0.9 }, { form: 'star' }],
    ['a triangle up and down', { form: 'triangle' }, { form: 'triangle', turn: 180 }],
    ['a triangle turned by a third', { form: 'triangle' }, { form: 'triangle', turn: 120 }],
    ['an oval lying and standing', { form: 'oval' }, { form: 'oval', turn: 90 }],
    ['b and d', { form: 'small-b' }, { form: 'small-d' }],
    ['b and b mirrored', { form: 'small-b' }, { form: 'small-b', mirrored: true }],
    ['a small and a capital c', { form: 'small-c' }, { form: 'capital-C' }],
    ['three dots and four', { form: 'dots', count: 3 }, { form: 'dots', count: 4 }],
    ['a dot sign and a circle, which is bigger', { form: 'sign-dot' }, { form: 'circle' }],
    ['a diamond and a square on its corner', { form: 'diamond' }, { form: 'square', turn: 45 }],
  ];
  it.each(different)('takes %s for different', (_, one, other) => {
    expect(sameFigure(one, other)).toBe(false);
    expect(sameFigure(other, one)).toBe(false);
  });
});

describe('differencesOf', () => {
  it('is empty for two equal figures of any form', () => {
    for (const form of SHAPES)
      expect(differencesOf({ form, turn: 30 }, { form, turn: 30 })).toEqual({});
  });

  it('gives the worst colour difference of the palette', () => {
    expect(differencesOf({ colour: 'red' }, { colour: 'green' })).toEqual({
      colourDe00: worstDifferenceDe00('red', 'green'),
    });
  });

  it('gives the least turn: 90 degrees between right and up, 45 between two squares 135 apart', () => {
    expect(differencesOf({ form: 'arrow', turn: 90 }, { form: 'arrow' }).turnDeg).toBe(90);
    expect(differencesOf({ form: 'arrow', turn: 300 }, { form: 'arrow', turn: 30 }).turnDeg).toBe(
      90,
    );
    expect(differencesOf({ form: 'square', turn: 135 }, { form: 'square' }).turnDeg).toBe(45);
  });

  it('gives the ratio of sizes and of counts, the bigger over the smaller', () => {
    const sizes = differencesOf({ form: 'star', size: 0.5 }, { form: 'star', size: 0.75 });
    expect(sizes).toEqual({ sizeRatio: 1.5 });
    expect(differencesOf({ form: 'dots', count: 6 }, { form: 'dots', count: 4 })).toEqual({
      countRatio: 1.5,
    });
  });

  it('names a mirroring that no turn undoes', () => {
    expect(differencesOf({ form: 'small-b' }, { form: 'small-b', mirrored: true }).mirrored).toBe(
      true,
    );
    expect(differencesOf({ form: 'crescent' }, { form: 'crescent', mirrored: true }).turnDeg).toBe(
      180,
    );
  });

  it('names a layout only where the dots lie otherwise', () => {
    const dots = (count: number, layout: (typeof DOT_LAYOUTS)[number]): Figure => ({
      form: 'dots',
      count,
      layout,
    });
    expect(differencesOf(dots(3, 'dice'), dots(3, 'row')).layout).toBe(true);
    expect(differencesOf(dots(1, 'dice'), dots(1, 'row'))).toEqual({});
  });
});

describe('fairlyDifferent', () => {
  it('never holds for the same figure', () => {
    for (const form of SHAPES) expect(fairlyDifferent({ form }, { form })).toBe(false);
  });

  it('holds for colours exactly where the palette finds them fair', () => {
    for (const [one, other] of [
      ['red', 'green'],
      ['blue', 'purple'],
      ['yellow', 'blue'],
    ] as const) {
      const isFair = worstDifferenceDe00(one, other) >= FAIR_DE00;
      expect(fairlyDifferent({ colour: one }, { colour: other }), `${one} ${other}`).toBe(isFair);
    }
  });

  it('holds for the quarter turns of every turnable shape', () => {
    for (const form of TURNABLE) {
      for (const turn of [90, 180, 270]) {
        expect(fairlyDifferent({ form }, { form, turn }), `${form} ${turn}`).toBe(true);
      }
    }
  });

  it('does not hold for small turns, nor for turns of nearly round shapes', () => {
    expect(fairlyDifferent({ form: 'arrow' }, { form: 'arrow', turn: 20 })).toBe(false);
    expect(fairlyDifferent({ form: 'hexagon' }, { form: 'hexagon', turn: 30 })).toBe(false);
    expect(fairlyDifferent({ form: 'pentagon' }, { form: 'pentagon', turn: 180 })).toBe(false);
  });

  it('does not hold for a diamond and a square on its corner, which children call a diamond', () => {
    expect(fairlyDifferent({ form: 'diamond' }, { form: 'square', turn: 45 })).toBe(false);
    expect(fairlyDifferent({ form: 'diamond' }, { form: 'square' })).toBe(true);
  });

  it('holds for an upright and a level line, and for a plus and an oblique cross', () => {
    const lines = [{ form: 'sign-upright-line' }, { form: 'sign-level-line' }] as const;
    expect(fairlyDifferent(...lines)).toBe(true);
    expect(fairlyDifferent({ form: 'sign-plus' }, { form: 'sign-oblique-cross' })).toBe(true);
  });

  it('does not hold for mirror images, nor for letters that a turn or a mirror makes alike', () => {
    expect(fairlyDifferent({ form: 'small-b' }, { form: 'small-b', mirrored: true })).toBe(false);
    expect(fairlyDifferent({ form: 'small-b' }, { form: 'small-d' })).toBe(false);
    expect(fairlyDifferent({ form: 'numeral-6' }, { form: 'numeral-9' })).toBe(false);
    expect(fairlyDifferent({ form: 'capital-M' }, { form: 'capital-W' })).toBe(false);
  });

  it('holds for look-alikes that differ in colour', () => {
    const [b, d] = [
      { form: 'small-b', colour: 'red' },
      { form: 'small-d', colour: 'blue' },
    ] as const;
    expect(fairlyDifferent(b, d)).toBe(true);
  });

  it('holds for any two fills but never for sizes or counts below the floors', () => {
    FILLS.forEach((one, index) => {
      for (const other of FILLS.slice(index + 1)) {
        expect(fairlyDifferent({ form: 'star', fill: one }, { form: 'star', fill: other })).toBe(
          true,
        );
      }
    });
    expect(fairlyDifferent({ form: 'star' }, { form: 'star', size: 0.8 })).toBe(false);
    expect(fairlyDifferent({ form: 'star' }, { form: 'star', size: 0.6 })).toBe(true);
    expect(fairlyDifferent({ form: 'dots', count: 5 }, { form: 'dots', count: 6 })).toBe(true);
  });

  it('sees through a sign that copies a shape in outline', () => {
    const ring: Figure = { form: 'sign-ring', size: 1 };
    expect(fairlyDifferent(ring, { form: 'circle', fill: 'outline' })).toBe(false);
    expect(fairlyDifferent({ form: 'sign-square' }, { form: 'square', colour: 'white' })).toBe(
      false,
    );
  });

  it('is the same both ways round', () => {
    const figures: readonly Figure[] = [
      { colour: 'red' },
      { form: 'star', size: 0.5 },
      { form: 'small-b' },
      { form: 'small-d', mirrored: true },
      { form: 'dots', count: 3 },
      { form: 'sign-plus', turn: 45 },
      { form: 'crescent', turn: 90 },
    ];
    for (const one of figures) {
      for (const other of figures) {
        expect(fairlyDifferent(one, other)).toBe(fairlyDifferent(other, one));
      }
    }
  });
});
