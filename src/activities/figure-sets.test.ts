// Sets of figures: all different, and of several attributes none can be left out of sight.
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../base/index.ts';
import { attributesOf, CONTENT_IDS, fairlyDifferent, formsOf } from '../figures/index.ts';
import { drawFigureSet, mostInSet, redrawNearSizes } from './figure-sets.ts';

const COLOUR = { print: 'colour' } as const;
const mostOf = () => 3;

describe('drawFigureSet', () => {
  it('gives figures of which every two are fairly different', () => {
    for (const content of CONTENT_IDS) {
      const most = Math.min(6, mostInSet({ content, mostOf }));
      for (let count = 1; count <= most; count++) {
        const source = { content, mostOf, forms: formsOf(content) };
        const figures = drawFigureSet(source, count, randomFrom(count), COLOUR);
        expect(figures.length, content).toBe(count);
        figures.forEach((one, index) => {
          for (const other of figures.slice(index + 1)) {
            const said = `${content}: ${JSON.stringify([one, other])}`;
            expect(fairlyDifferent(one, other), said).toBe(true);
          }
        });
      }
    }
  });

  it('with more figures than attributes, has two figures that differ in each attribute alone', () => {
    for (const content of CONTENT_IDS.filter((id) => attributesOf(id).length > 1)) {
      const looked = attributesOf(content);
      for (let count = looked.length + 1; count <= 8; count++) {
        const source = { content, mostOf, forms: formsOf(content), redraw: redrawNearSizes };
        const figures = drawFigureSet(source, count, randomFrom(count), COLOUR);
        const differing = figures.flatMap((one) =>
          figures.map((other) => looked.filter((each) => one[each] !== other[each])),
        );
        const alone = new Set(differing.filter((each) => each.length === 1).flat());
        expect([...alone].sort(), `${content}, ${count}`).toEqual([...looked].sort());
      }
    }
  });

  it('says how many there are when asked for more', () => {
    const source = {
      content: 'shapes-and-colours',
      mostOf: () => 2,
      forms: formsOf('shapes'),
    } as const;
    expect(mostInSet(source)).toBe(4);
    expect(() => drawFigureSet(source, 5, randomFrom(1), COLOUR)).toThrow('expected 1 to 4, got 5');
  });
});
