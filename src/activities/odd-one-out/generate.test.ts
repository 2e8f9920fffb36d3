// The promises of made tasks, over parameters and seeds, checked without the solver where that can be.
import { describe, expect, test } from 'vitest';
import {
  ATTRIBUTES,
  attributesOf,
  categoryOf,
  differencesOf,
  directionRelation,
  type Figure,
  fairlyDifferent,
  formOf,
  pairLikeness,
  sameFigure,
} from '../../figures/index.ts';
import { oddOneOut } from './index.ts';
import { LADDER } from './ladder.ts';
import { limits } from './limits.ts';
import { mainColourOf } from './solve-pictures.ts';
import { PARAMETERS, type Parameters } from './task.ts';
import { COLOUR, GREY, goodValues, type Made, made, seeds, valuesAt } from './tasks-to-test.ts';

function split({ printed, answer }: Made): { odd: Figure; others: readonly Figure[] } {
  const odd = printed.figures[answer.odd] as Figure;
  return { odd, others: printed.figures.filter((_, place) => place !== answer.odd) };
}

const isOfLooks = ({ content }: Parameters) => content !== 'picture-kinds';

describe('R1 R11 every content', () => {
  test.each(PARAMETERS.content.values)(
    'R1 every step with %s is proven in both prints',
    (content) => {
      for (const style of [COLOUR, GREY]) {
        for (const { values: rung } of LADDER) {
          for (const likeness of PARAMETERS.likeness.values) {
            const values = { ...rung, content, likeness };
            if (limits(values, style).length > 0) continue;
            for (const seed of seeds(4)) {
              const proof = oddOneOut.prove(made(values, seed, style));
              expect(proof, `${JSON.stringify(values)}, seed ${seed}`).toEqual({ proven: true });
            }
          }
        }
      }
    },
  );

  test('R11 any values that are not refused are proven, and the number of figures is kept', () => {
    for (const [seed, values] of goodValues(300)) {
      const task = made(values, seed);
      const said = `${JSON.stringify(values)}, seed ${seed}`;
      expect(task.printed.figures.length, said).toBe(values.figures);
      expect(oddOneOut.prove(task), said).toEqual({ proven: true });
    }
  });
});

describe('R2 R3 the odd one and the others', () => {
  test('R2 some other differs from the odd one in one field of the attribute alone', () => {
    for (const [seed, values] of goodValues(200, isOfLooks)) {
      const { odd, others } = split(made(values, seed));
      const fewest = others.map((other) => Object.keys(differencesIn(odd, other)));
      expect(
        fewest.some((names) => names.length === 1),
        `seed ${seed}`,
      ).toBe(true);
    }
  });

  test('R2 an attribute that is named is the one that differs', () => {
    for (const [seed, values] of goodValues(150, ({ odd }) => odd !== 'any')) {
      const { odd, others } = split(made(values, seed));
      const field = values.odd as keyof Figure;
      for (const other of others) expect(other[field], `seed ${seed}`).not.toBe(odd[field]);
    }
  });

  test('R2 any: each attribute of the content comes to be the odd one', () => {
    for (const content of ['shapes-and-colours', 'shapes-colours-and-sizes'] as const) {
      const values = valuesAt(12, { content, layout: 'grid', figures: 6 });
      const told = seeds(60).flatMap((seed) => {
        const { odd, others } = split(made(values, seed));
        return ATTRIBUTES.filter((field) => others.every((other) => other[field] !== odd[field]));
      });
      expect([...new Set(told)].sort()).toEqual([...attributesOf(content)].sort());
    }
  });

  test('R3 each of the others has its exact like, and not all are alike where something changes', () => {
    for (const [seed, values] of goodValues(150, (values) => values.vary && isOfLooks(values))) {
      const { others } = split(made(values, seed));
      const keys = others.map((other) => JSON.stringify(other));
      for (const key of keys) {
        expect(keys.filter((other) => other === key).length, `seed ${seed}`).toBeGreaterThan(1);
      }
      expect(new Set(keys).size, `seed ${seed}`).toBeGreaterThan(1);
    }
  });

  test('R3 where nothing changes, all the others print alike', () => {
    for (const [seed, values] of goodValues(100, (values) => !values.vary && isOfLooks(values))) {
      const { others } = split(made(values, seed));
      const [first] = others;
      expect(
        others.every((other) => first && sameFigure(first, other)),
        `seed ${seed}`,
      ).toBe(true);
    }
  });

  test('R12 the odd one stands at every place about equally often', () => {
    const counts = [0, 0, 0, 0];
    for (const seed of seeds(400)) {
      const { answer } = made(valuesAt(2), seed);
      counts[answer.odd] = (counts[answer.odd] ?? 0) + 1;
    }
    for (const count of counts) expect(count).toBeGreaterThan(65);
  });
});

/** Differences in what a child looks at; ink and outline follow from them. */
function differencesIn(one: Figure, other: Figure): Partial<Record<string, unknown>> {
  const {
    outlineShare: _share,
    dotRatio: _dots,
    turnedOutlineShare,
    ...rest
  } = differencesOf(one, other);
  return turnedOutlineShare === undefined ? rest : { ...rest, form: true };
}

describe('R7 R8 likeness and directions', () => {
  test('R7 figures that differ can fairly be told apart', () => {
    for (const [seed, values] of goodValues(150, isOfLooks)) {
      const { odd, others } = split(made(values, seed));
      for (const other of others) expect(fairlyDifferent(odd, other), `seed ${seed}`).toBe(true);
    }
  });

  test.each([
    'colours',
    'shapes',
    'sizes',
    'directions',
    'small-letters',
    'dot-quantities',
  ] as const)('R7 near %s are more alike than far ones', (content) => {
    const [far, near] = (['far', 'near'] as const).map((likeness) => {
      const likenesses = seeds(60).map((seed) => {
        const { odd, others } = split(made(valuesAt(2, { content, likeness }), seed));
        return pairLikeness(odd, others[0] as Figure);
      });
      return likenesses.reduce((sum, value) => sum + value, 0);
    });
    expect(near).toBeGreaterThan(far as number);
  });

  const isMirrored = (one: Figure, other: Figure) =>
    ['left-right', 'opposite-obliques'].includes(directionRelation(one, other) ?? '');

  test('R8 without mirrors no two figures of a task are mirror images of each other', () => {
    const wanted = ({ content, mirrors }: Parameters) =>
      content.startsWith('directions') && !mirrors;
    for (const [seed, values] of goodValues(120, wanted)) {
      const { figures } = made(values, seed).printed;
      const pairs = figures.flatMap((one) => figures.map((other) => isMirrored(one, other)));
      expect(pairs, `seed ${seed}`).not.toContain(true);
    }
  });

  test('R8 with mirrors the odd direction is the mirror image, and no step has them', () => {
    const wanted = ({ content, mirrors }: Parameters) => content === 'directions' && mirrors;
    for (const [seed, values] of goodValues(40, wanted)) {
      const { odd, others } = split(made(values, seed));
      for (const other of others) expect(isMirrored(odd, other), `seed ${seed}`).toBe(true);
    }
    expect(LADDER.every(({ values }) => !values.mirrors)).toBe(true);
  });
});

describe('R9 R10 dots and pictures', () => {
  test('R9 all numbers of a task have one ink, or all dots one size', () => {
    for (const seed of seeds(60)) {
      const { figures } = made(valuesAt(4, { content: 'dot-quantities' }), seed).printed;
      const inks = figures.map(({ count = 1, dotSize = 1 }) => count * dotSize ** 2);
      const isOneInk = Math.max(...inks) / Math.min(...inks) < 1.02;
      const isOneSize = figures.every(({ dotSize = 1 }) => dotSize === 1);
      expect(isOneInk || isOneSize, `seed ${seed}`).toBe(true);
    }
  });

  test('R10 all pictures differ, all but one are of one kind, and far and near mean colour', () => {
    for (const [seed, values] of goodValues(80, ({ content }) => content === 'picture-kinds')) {
      const { odd, others } = split(made(values, seed));
      const forms = [odd, ...others].map(formOf);
      expect(new Set(forms).size, `seed ${seed}`).toBe(values.figures);
      const kinds = new Set(others.map((other) => categoryOf(formOf(other))));
      expect(kinds.size, `seed ${seed}`).toBe(1);
      expect(kinds.has(categoryOf(formOf(odd))), `seed ${seed}`).toBe(false);
      const isShared = others.some((other) => mainColourOf(other) === mainColourOf(odd));
      expect(isShared, `seed ${seed}`).toBe(values.likeness === 'near');
    }
  });
});
