// Contents: every figure drawn is fairly different from every other, whatever is looked at.
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../base/index.ts';
import {
  ATTRIBUTES,
  attributesOf,
  CONTENT_IDS,
  type ContentId,
  figureAt,
  mostValues,
  type Space,
} from './contents.ts';
import {
  drawCounts,
  drawNearSizes,
  drawSizes,
  drawSpace,
  drawTurns,
  mostCounts,
} from './contents-draw.ts';
import { fairlyDifferent } from './differences.ts';
import { directionRelation } from './discriminability.ts';
import type { Figure } from './figure.ts';
import { figureSchema } from './figure-schema.ts';
import { areLookAlikes } from './likeness.ts';
import { contentName } from './names.ts';
import { TURNABLE } from './pools.ts';

const PRINTS = ['colour', 'grey'] as const;

/** Every figure of a space, the last axis first. */
function figuresIn(space: Space): readonly Figure[] {
  const places = space.axes.reduce<readonly (readonly number[])[]>(
    (before, { values }) => before.flatMap((at) => values.map((_, index) => [...at, index])),
    [[]],
  );
  return places.map((indices) => figureAt(space, indices));
}

function expectFair(figures: readonly Figure[], at: string): void {
  figures.forEach((one, index) => {
    for (const other of figures.slice(index + 1)) {
      const said = `${at}: ${JSON.stringify(one)} and ${JSON.stringify(other)}`;
      expect(fairlyDifferent(one, other), said).toBe(true);
    }
  });
}

/** As many values as one task may want: all of them, or of three attributes at most four each. */
function mostTogether(content: ContentId): number {
  const attributes = attributesOf(content);
  const most = Math.min(
    ...attributes.map((each) => mostValues(content, each, { print: 'colour' })),
  );
  return Math.min(most, attributes.length > 1 ? 4 : 12);
}

describe('attributesOf', () => {
  it('gives one, two or three different attributes of every content', () => {
    for (const content of CONTENT_IDS) {
      const attributes = attributesOf(content);
      expect(new Set(attributes).size, content).toBe(attributes.length);
      expect([1, 2, 3], content).toContain(attributes.length);
    }
  });

  it('leaves no attribute that no content looks at', () => {
    const looked = new Set(CONTENT_IDS.flatMap(attributesOf));
    expect(ATTRIBUTES.filter((attribute) => !looked.has(attribute))).toEqual([]);
  });
});

describe('mostValues', () => {
  it('gives at least four values of each attribute that a content looks at, and none of the others', () => {
    for (const content of CONTENT_IDS) {
      for (const attribute of ATTRIBUTES) {
        const most = mostValues(content, attribute, { print: 'colour' });
        const isLookedAt = attributesOf(content).includes(attribute);
        expect(isLookedAt ? most >= 4 : most === 0, `${content} ${attribute}: ${most}`).toBe(true);
      }
    }
  });

  it('gives at least ten letters of every script and forty pictures', () => {
    for (const content of CONTENT_IDS.filter((id) => /letters|capitals|small/.test(id))) {
      expect(mostValues(content, 'form', { print: 'colour' }), content).toBeGreaterThanOrEqual(10);
    }
    expect(mostValues('pictures', 'form', { print: 'colour' })).toBeGreaterThanOrEqual(40);
  });
});

describe('drawSpace', () => {
  it('gives figures of which every two are fairly different, in every content and number', () => {
    for (const content of CONTENT_IDS) {
      for (let count = 1; count <= mostTogether(content); count++) {
        for (const print of PRINTS) {
          const seed = 100 * count;
          const figures = figuresIn(drawSpace(content, randomFrom(seed), count, { print }));
          expect(figures.length).toBe(count ** attributesOf(content).length);
          expectFair(figures, `${content}, ${count} in ${print}, seed ${seed}`);
        }
      }
    }
  });

  it('can give as many values as `mostValues` says', () => {
    for (const content of CONTENT_IDS) {
      const counts = Object.fromEntries(
        attributesOf(content).map((each) => [each, mostValues(content, each, { print: 'colour' })]),
      );
      const space = drawSpace(content, randomFrom(5), counts, { print: 'colour' });
      for (const { attribute, values } of space.axes) {
        expect(values.length, `${content} ${attribute}`).toBe(counts[attribute]);
        const figures = values.map(
          (value) => ({ form: 'triangle', ...space.base, ...value }) as const,
        );
        expectFair(figures, `${content} ${attribute}`);
      }
    }
  });

  it('gives figures that a file may hold', () => {
    for (const content of CONTENT_IDS) {
      const space = drawSpace(content, randomFrom(3), mostTogether(content), { print: 'colour' });
      for (const figure of figuresIn(space)) expect(figureSchema.parse(figure)).toEqual(figure);
    }
  });

  it('gives the same for the same seed, and differs from seed to seed', () => {
    for (const content of CONTENT_IDS) {
      const said = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) =>
        JSON.stringify(drawSpace(content, randomFrom(seed), 3, { print: 'colour' })),
      );
      expect(JSON.stringify(drawSpace(content, randomFrom(1), 3, { print: 'colour' }))).toBe(
        said[0],
      );
      expect(new Set(said).size, content).toBeGreaterThan(3);
    }
  });

  it('takes an attribute that is not told for the same throughout', () => {
    const { axes } = drawSpace(
      'shapes-colours-and-sizes',
      randomFrom(1),
      { form: 3, size: 2 },
      { print: 'colour' },
    );
    expect(axes.map(({ attribute, values }) => [attribute, values.length])).toEqual([
      ['form', 3],
      ['colour', 1],
      ['size', 2],
    ]);
  });

  it('says how many there are when asked for more, none or a part', () => {
    for (const content of CONTENT_IDS) {
      const [attribute] = attributesOf(content);
      const most = mostValues(content, attribute ?? 'form', { print: 'colour' });
      for (const wrong of [most + 1, 0, 1.5]) {
        const draw = () => drawSpace(content, randomFrom(1), wrong, { print: 'colour' });
        expect(draw, `${content} ${wrong}`).toThrow('expected 1 to ');
      }
    }
  });

  it('never draws look-alike letters together', () => {
    for (const content of ['arabic-letters', 'devanagari-letters', 'cyrillic-small'] as const) {
      for (let seed = 0; seed < 20; seed++) {
        const figures = figuresIn(drawSpace(content, randomFrom(seed), 6, { print: 'colour' }));
        const forms = figures.map(({ form }) => form ?? 'circle');
        forms.forEach((one, index) => {
          const isAlone = forms.slice(index + 1).every((other) => !areLookAlikes(one, other));
          expect(isAlone, `${content}, seed ${seed}`).toBe(true);
        });
      }
    }
  });
});

describe('figureAt', () => {
  it('joins what all share with one value of each axis', () => {
    const space: Space = {
      base: { form: 'arrow' },
      axes: [
        { attribute: 'turn', values: [{ turn: 0 }, { turn: 180 }] },
        { attribute: 'colour', values: [{ colour: 'red' }, { colour: 'blue' }] },
      ],
    };
    expect(figureAt(space, [1, 0])).toEqual({ form: 'arrow', turn: 180, colour: 'red' });
    expect(() => figureAt(space, [2, 0])).toThrow('turn: expected 0 to 1, got 2');
    expect(() => figureAt(space, [0])).toThrow('colour: expected 0 to 1, got none');
  });
});

describe('drawTurns', () => {
  it('gives upright and level directions alone, left and right together only among all four', () => {
    for (let seed = 0; seed < 60; seed++) {
      for (const count of [1, 2, 3, 4]) {
        const turns = drawTurns(randomFrom(seed), count);
        expect(new Set(turns).size, `seed ${seed}`).toBe(count);
        expect(turns.every((turn) => turn % 90 === 0)).toBe(true);
        const hasBoth = turns.includes(90) && turns.includes(270);
        expect(hasBoth, `${count}, seed ${seed}`).toBe(count === 4);
      }
    }
  });

  it('gives no left-right mirror images among fewer than four, whatever the shape', () => {
    for (const form of TURNABLE) {
      for (let seed = 0; seed < 30; seed++) {
        for (const count of [2, 3]) {
          const figures = drawTurns(randomFrom(seed), count, form).map((turn) => ({ form, turn }));
          const relations = figures.flatMap((one) =>
            figures.map((other) => directionRelation(one, other)),
          );
          expect(relations, `${form}, seed ${seed}`).not.toContain('left-right');
        }
      }
    }
  });

  it('gives directions that are fairly different for every pointing shape', () => {
    for (const form of TURNABLE) {
      expectFair(
        [0, 90, 180, 270].map((turn) => ({ form, turn })),
        form,
      );
    }
  });
});

describe('drawSizes', () => {
  // Floors asked for: two sizes 1.6 apart, three 1.4; more at least 1.3, common practice.
  it.each([
    [2, 1.6],
    [3, 1.4],
    [4, 1.3],
    [5, 1.3],
  ])('gives %i sizes, the biggest whole, neighbours at least %f apart', (count, least) => {
    for (let seed = 0; seed < 40; seed++) {
      const sizes = [...drawSizes(randomFrom(seed), count)].sort((a, b) => b - a);
      expect(sizes[0]).toBe(1);
      expect(sizes[count - 1]).toBeGreaterThan(0.25);
      sizes.slice(1).forEach((size, index) => {
        const ratio = (sizes[index] ?? 0) / size;
        expect(ratio, `seed ${seed}`).toBeGreaterThanOrEqual(least - 0.002);
      });
      expect(Math.min(...drawNearSizes(randomFrom(seed), count))).toBeGreaterThanOrEqual(
        sizes.at(-1) ?? 1,
      );
    }
  });
});

describe('drawCounts', () => {
  it('gives numbers whose neighbours are at least as far apart as asked, and sooner or later all of them', () => {
    for (const ratio of [1.2, 1.5, 2]) {
      for (let count = 1; count <= mostCounts(ratio); count++) {
        for (let seed = 0; seed < 20; seed++) {
          const counts = [...drawCounts(randomFrom(seed), count, ratio)].sort((a, b) => a - b);
          expect(counts.length).toBe(count);
          counts.slice(1).forEach((dots, index) => {
            const apart = dots / (counts[index] ?? dots);
            expect(apart, `${ratio}, seed ${seed}`).toBeGreaterThanOrEqual(ratio);
          });
        }
      }
    }
    const drawn = new Set(
      Array.from({ length: 60 }, (_, seed) => drawCounts(randomFrom(seed), 2)).flat(),
    );
    expect([...drawn].sort()).toEqual([1, 2, 3, 4, 5, 6]);
  });

  // By hand: 1 2 4; 1 2 3 6 and the like; all six.
  it.each([
    [2, 3],
    [1.5, 4],
    [1.2, 6],
  ])('can give numbers %f apart, at most %i', (ratio, most) => {
    expect(mostCounts(ratio)).toBe(most);
  });
});

describe('contentName', () => {
  it('tells all contents apart in plain words', () => {
    const names = CONTENT_IDS.map((content) => contentName(content));
    expect(new Set(names).size).toBe(CONTENT_IDS.length);
    for (const name of names) expect(name).toMatch(/^[A-Za-z ]+$/);
    expect(contentName('capitals')).toBe('capital letters');
    expect(contentName('shapes-and-colours', 'en')).toBe('shapes in colours');
  });
});
