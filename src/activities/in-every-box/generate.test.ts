// Promises of the generator over its whole range of values, each checked by counting figures in the boxes.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { randomFrom } from '../../base/index.ts';
import { attributesOf, type Figure, fairlyDifferent } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type BoxValues, PARAMETERS, type Printed } from './task.ts';

const STYLES: readonly PrintStyle[] = [{ print: 'colour' }, { print: 'grey' }];
const TASKS = 400;

interface Made {
  readonly values: BoxValues;
  readonly printed: Printed;
  readonly key: readonly Figure[];
  readonly name: string;
}

/** Tasks of values drawn from the whole range, those that are refused left out. */
function makeTasks(): readonly Made[] {
  const seed = testSeed('in-every-box, generated tasks');
  const random = randomFrom(seed);
  const made: Made[] = [];
  while (made.length < TASKS) {
    const style = random.pick(STYLES);
    const values: BoxValues = {
      // Small pools more often, since little that is asked of them can be met.
      content: random.pick([...PARAMETERS.content.values, 'directions', 'directions', 'sizes']),
      response: random.pick(PARAMETERS.response.values),
      boxes: random.int(PARAMETERS.boxes.min, PARAMETERS.boxes.max),
      figures: random.int(PARAMETERS.figures.min, PARAMETERS.figures.max),
      shared: random.int(PARAMETERS.shared.min, PARAMETERS.shared.max),
      nearMisses: random.int(0, random.pick([2, 5, 14])),
      layout: random.pick(PARAMETERS.layout.values),
      stickerMm: random.pick(PARAMETERS.stickerMm.values),
    };
    if (limitsOf(values, style).length > 0) continue;
    const { printed, answer } = generate(values, random.fork(), style);
    const name = `seed ${seed}: ${JSON.stringify(values)}`;
    made.push({ values, printed, key: answer.figures, name });
  }
  return made;
}

const MADE = makeTasks();

/** Every different figure with the number of boxes that it stands in. */
function boxCounts(printed: Printed): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { figures } of printed.boxes) {
    for (const look of new Set(figures.map((figure) => JSON.stringify(figure)))) {
      counts.set(look, (counts.get(look) ?? 0) + 1);
    }
  }
  return counts;
}

function standingIn(printed: Printed, boxes: number): readonly string[] {
  return [...boxCounts(printed)].filter(([, count]) => count === boxes).map(([look]) => look);
}

function differentFigures(printed: Printed): readonly Figure[] {
  return [...boxCounts(printed).keys()].map((look) => JSON.parse(look) as Figure);
}

describe('every task of valid values', () => {
  test('R1 exactly the wanted number of figures stand in every box, and they are the key', () => {
    for (const { values, printed, key, name } of MADE) {
      const inAll = standingIn(printed, values.boxes);
      expect(inAll.length, name).toBe(values.shared);
      expect(key.map((figure) => JSON.stringify(figure)).sort(), name).toEqual([...inAll].sort());
    }
  });

  test('R2 exactly the wanted number of figures stand in all boxes but one', () => {
    for (const { values, printed, name } of MADE) {
      expect(standingIn(printed, values.boxes - 1).length, name).toBe(values.nearMisses);
    }
  });

  test('R3 no box shows a figure twice, and R4 all hold the wanted number', () => {
    for (const { values, printed, name } of MADE) {
      expect(printed.boxes.length, name).toBe(values.boxes);
      for (const { figures } of printed.boxes) {
        expect(figures.length, name).toBe(values.figures);
        expect(new Set(figures.map((figure) => JSON.stringify(figure))).size, name).toBe(
          values.figures,
        );
      }
    }
  });

  test('R5 any two figures can be told apart fairly', () => {
    const known = new Set<string>();
    for (const { printed, name } of MADE) {
      const figures = differentFigures(printed);
      for (const [index, one] of figures.entries()) {
        for (const other of figures.slice(index + 1)) {
          const pair = JSON.stringify([one, other]);
          if (known.has(pair)) continue;
          known.add(pair);
          const isFair = fairlyDifferent(one, other) && fairlyDifferent(other, one);
          expect(isFair, `${name}: ${pair}`).toBe(true);
        }
      }
    }
  });

  test('R6 figures differ in what the content looks at alone', () => {
    for (const { values, printed, name } of MADE) {
      const looked: readonly string[] = attributesOf(values.content);
      // Dots that are fewer may be bigger, so that all have the same ink.
      const free = looked.includes('count') ? [...looked, 'dotSize'] : looked;
      const rest = differentFigures(printed).map((figure) =>
        JSON.stringify(Object.entries(figure).filter(([field]) => !free.includes(field))),
      );
      expect(new Set(rest).size, name).toBe(1);
    }
  });

  test('R6 where several things are looked at, for each of them two figures differ in that one alone', () => {
    for (const { values, printed, name } of MADE) {
      const looked = attributesOf(values.content);
      const figures = differentFigures(printed);
      if (looked.length === 1 || figures.length <= looked.length) continue;
      const differing = figures.flatMap((one) =>
        figures.map((other) => looked.filter((each) => one[each] !== other[each])),
      );
      const alone = new Set(differing.filter((each) => each.length === 1).flat());
      expect(alone.size, name).toBe(looked.length);
    }
  });

  test('R13 no box holds a vowel', () => {
    for (const { printed, name } of MADE) {
      for (const { form = '' } of differentFigures(printed)) {
        expect(form, name).not.toMatch(/^(capital|small)-[aeiouy]$/i);
      }
    }
  });

  test('R9 there are as many empty circles as shared figures where stickers are asked for, else none', () => {
    for (const { values, printed, name } of MADE) {
      const expected = values.response === 'sticker' ? values.shared : undefined;
      expect(printed.circles, name).toBe(expected);
      if (values.response === 'sticker') expect(values.content, name).toBe('colours');
    }
  });

  test('R11 the tasks cover every content, layout, response and number of boxes', () => {
    for (const parameter of ['content', 'layout', 'response'] as const) {
      const seen = new Set(MADE.map(({ values }) => values[parameter]));
      expect([...seen].sort()).toEqual([...PARAMETERS[parameter].values].sort());
    }
    expect(new Set(MADE.map(({ values }) => values.boxes)).size).toBe(5);
  });
});

test('R12 a figure of the answer is as often first in a box as any other', () => {
  const [first] = LADDER;
  if (!first) throw new Error('the ladder has no first step');
  const values: BoxValues = { ...first.values, boxes: 2, figures: 4, shared: 2, nearMisses: 4 };
  const firsts = Array.from({ length: 400 }, (_, seed) => {
    const { printed, answer } = generate(values, randomFrom(seed), { print: 'colour' });
    return answer.figures.some(({ colour }) => colour === printed.boxes[0]?.figures[0]?.colour);
  });
  const share = firsts.filter(Boolean).length / firsts.length;
  // Half are expected; five standard deviations of 400 throws are 0.125.
  expect(Math.abs(share - 0.5)).toBeLessThan(0.125);
});
