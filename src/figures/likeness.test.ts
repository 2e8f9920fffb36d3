// Look-alikes and the drawing of forms without any.
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../base/index.ts';
import { CAPITALS, type FormId, NUMERALS, SHAPES, SIGNS, SMALL_LETTERS } from './form-names.ts';
import { areLookAlikes, drawForms, floorOf, mostForms } from './likeness.ts';
import { outlineShare, turnedOutlineShare } from './outline-distance.ts';

/** From memory: pairs that five-year-olds confuse most, Popp 1964, The Reading Teacher 17, 221–226. */
const CONFUSED = 'pq bd bq dp bp hu il ce dh hn nu'.split(' ');
/** Common practice: look-alikes across letters and numerals. */
const PRACTICE =
  'MW VA Il I1 l1 O0 o0 Oo Cc Ss Xx Vv Ww Zz Pp Kk Uu 69 mw nr uv EF OQ CG S5 Z2 B8'.split(' ');

function formFor(character: string): FormId {
  if (/\d/.test(character)) return `numeral-${character}`;
  const isSmall = character === character.toLowerCase();
  return isSmall ? `small-${character}` : `capital-${character}`;
}

describe('areLookAlikes', () => {
  it('knows the letters and numerals that beginning readers mix up', () => {
    for (const [one = '', other = ''] of [...CONFUSED, ...PRACTICE]) {
      expect(areLookAlikes(formFor(one), formFor(other)), `${one} ${other}`).toBe(true);
    }
  });

  it('leaves letters alone that nobody mixes up', () => {
    for (const [one = '', other = ''] of 'ox ks mt AO SW TB 27 14 gk'.split(' ')) {
      expect(areLookAlikes(formFor(one), formFor(other)), `${one} ${other}`).toBe(false);
    }
  });

  it('lets the plain shapes stand together, and keeps those apart that need counting of corners', () => {
    const plain = [
      'circle',
      'square',
      'triangle',
      'heart',
      'star',
      'cross',
      'oval',
      'oblong',
    ] as const;
    plain.forEach((one, index) => {
      for (const other of plain.slice(index + 1)) {
        expect(areLookAlikes(one, other), `${one} ${other}`).toBe(false);
      }
    });
    expect(areLookAlikes('circle', 'hexagon')).toBe(true);
    expect(areLookAlikes('pentagon', 'hexagon')).toBe(true);
  });

  it('lets an upright and a level line stand together, but not a dot and a circle', () => {
    expect(areLookAlikes('sign-upright-line', 'sign-level-line')).toBe(false);
    expect(areLookAlikes('sign-dot', 'circle')).toBe(true);
  });

  it('is the same both ways round', () => {
    for (const one of NUMERALS) {
      for (const other of NUMERALS) {
        expect(areLookAlikes(one, other)).toBe(areLookAlikes(other, one));
      }
    }
  });
});

/** The two lines, which are one form turned, are compared as they lie. */
function shareOf(one: FormId, other: FormId): number {
  const areLines = one.endsWith('-line') && other.endsWith('-line');
  const share = areLines ? outlineShare : turnedOutlineShare;
  return share({ form: one }, { form: other });
}

describe('drawForms', () => {
  const pools = { SHAPES, SIGNS, CAPITALS, SMALL_LETTERS, NUMERALS };

  it('gives different forms, every two at least the floor apart, for every count that the pool holds', () => {
    for (const [name, pool] of Object.entries<readonly FormId[]>(pools)) {
      for (let count = 0; count <= mostForms(pool); count++) {
        const forms = drawForms(randomFrom(count), pool, count);
        expect(forms.length, `${name}, seed ${count}`).toBe(count);
        forms.forEach((one, index) => {
          for (const other of forms.slice(index + 1)) {
            const share = shareOf(one, other);
            expect(share, `${one} ${other}, seed ${count}`).toBeGreaterThanOrEqual(
              floorOf(one, other),
            );
          }
        });
      }
    }
  });

  it('draws every form of a pool sooner or later', () => {
    for (const pool of [SHAPES, SMALL_LETTERS]) {
      const drawn = new Set<FormId>();
      for (let seed = 0; seed < 200; seed++) {
        for (const form of drawForms(randomFrom(seed), pool, 4)) drawn.add(form);
      }
      expect(pool.filter((form) => !drawn.has(form))).toEqual([]);
    }
  });

  it('gives the same forms for the same seed', () => {
    expect(drawForms(randomFrom(7), SHAPES, 6)).toEqual(drawForms(randomFrom(7), SHAPES, 6));
  });

  it('says how many the pool holds when asked for more', () => {
    const most = mostForms(NUMERALS);
    expect(() => drawForms(randomFrom(1), NUMERALS, most + 1)).toThrow(`expected 0 to ${most}`);
  });
});

describe('mostForms', () => {
  it('agrees with trying every set of numerals', () => {
    let most = 0;
    for (let set = 0; set < 2 ** NUMERALS.length; set++) {
      const forms = NUMERALS.filter((_, index) => (set >> index) & 1);
      const isFree = forms.every((one, index) =>
        forms.slice(index + 1).every((other) => !areLookAlikes(one, other)),
      );
      if (isFree) most = Math.max(most, forms.length);
    }
    expect(mostForms(NUMERALS)).toBe(most);
  });

  it('finds at least twelve shapes and twelve letters of either case for one task', () => {
    for (const pool of [SHAPES, CAPITALS, SMALL_LETTERS]) {
      expect(mostForms(pool)).toBeGreaterThanOrEqual(12);
    }
  });
});
