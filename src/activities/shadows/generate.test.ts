// Promises of the generator over its whole range of values, each checked on what is printed.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import {
  directionRelation,
  type Figure,
  formOf,
  isPicture,
  outlineShare,
  turnedOutlineShare,
} from '../../figures/index.ts';
import { type Answer, SHADOW_CONTENTS } from './task.ts';
import { anyTasks, taskOf, valuesAt } from './tasks-to-test.ts';

const MADE = anyTasks(300, testSeed('shadows, generated tasks'));

/** Form and turn as they are written down: the generator mirrors nothing. */
function lookOf({ form, turn = 0 }: Figure): string {
  return `${form} ${turn}`;
}

function isInOrder(answer: Answer): boolean {
  return answer.every((place, index) => place > (answer[index - 1] ?? -1));
}

describe('every task of valid values', () => {
  test('R1 has the wanted numbers, and the key names the one shadow with the form and turn of each model', () => {
    for (const { values, printed, answer, name } of MADE) {
      expect([printed.models.length, printed.shadows.length], name).toEqual([
        values.models,
        values.shadows,
      ]);
      const looks = printed.shadows.map(lookOf);
      const places = printed.models.map((model) =>
        looks.flatMap((look, place) => (look === lookOf(model) ? [place] : [])),
      );
      expect(places, name).toEqual(answer.map((place) => [place]));
    }
  });

  test('R2, R3 has no two shadows whose outlines share too much, turned or mirrored ones included', () => {
    for (const { values, printed, name } of MADE) {
      if (values.content === 'directions' || values.content === 'signs') continue;
      // The least for areas and for lines that is fair for figures; a fifth for pictures.
      const least = { pictures: 0.2, shapes: 0.15 }[String(values.content)] ?? 0.3;
      for (const [place, one] of printed.shadows.entries()) {
        for (const other of printed.shadows.slice(place + 1)) {
          const share = turnedOutlineShare({ form: one.form }, { form: other.form });
          expect(share, `${name}: ${one.form} and ${other.form}`).toBeGreaterThanOrEqual(least);
        }
      }
    }
  });

  test('R4 has shadows of solid ink, and models that are not', () => {
    for (const { printed, name } of MADE) {
      for (const { colour, fill } of printed.shadows) {
        expect([colour, fill], name).toEqual([undefined, 'solid']);
      }
      for (const model of printed.models) {
        const isOwn = isPicture(formOf(model)) && model.fill === undefined;
        expect(isOwn || model.colour !== undefined || model.fill === 'outline', name).toBe(true);
        expect(model.colour, name).not.toBe('black');
      }
    }
  });

  test('R5 has shadows of the size of the models, or none of that size, as asked for', () => {
    for (const { values, printed, name } of MADE) {
      const [model] = printed.models;
      const sizes = printed.shadows.map(({ size = 1 }) => size / (model?.size ?? 1));
      const isAsAsked = {
        same: sizes.every((ratio) => ratio === 1),
        smaller: sizes.every((ratio) => ratio < 1),
        bigger: sizes.every((ratio) => ratio > 1),
        mixed: sizes.every((ratio) => ratio < 1) && new Set(sizes).size > 1,
      };
      expect(isAsAsked[values.resize], name).toBe(true);
    }
  });

  test('R6 has shadows that are not in the order of three or more models', () => {
    for (const { values, answer, name } of MADE) {
      if (values.models > 2) expect(isInOrder(answer), name).toBe(false);
    }
  });

  test('R7 has mirror images of the first model where they are asked for, and nowhere else', () => {
    for (const { values, printed, name } of MADE) {
      const relations = printed.shadows.flatMap((one, place) =>
        printed.shadows.slice(place + 1).map((other) => directionRelation(one, other)),
      );
      const isMirrored = relations.some((relation) =>
        ['left-right', 'opposite-obliques'].includes(relation ?? ''),
      );
      expect(isMirrored, name).toBe(values.mirrors !== 'none');
    }
    expect(MADE.some(({ values }) => values.mirrors === 'slanted')).toBe(true);
  });
});

describe('over many tasks', () => {
  const RUNS = 400;

  test('R1 the shadow of one model stands in each place equally often', () => {
    const places = Array.from({ length: RUNS }, (_, seed) => taskOf(valuesAt(2), seed).answer[0]);
    for (let place = 0; place < 4; place++) {
      const share = places.filter((other) => other === place).length / RUNS;
      // Five standard deviations of a quarter in so many throws.
      expect(Math.abs(share - 0.25), `place ${place}`).toBeLessThan(5 * Math.sqrt(0.1875 / RUNS));
    }
  });

  test.each(SHADOW_CONTENTS.filter((content) => content !== 'directions'))(
    'R2 outlines of %s come nearer to each other as asked for',
    (content) => {
      const meanShare = (likeness: 'far' | 'middle' | 'near') => {
        const shares = Array.from({ length: 60 }, (_, seed) => {
          const { printed } = taskOf(valuesAt(2, { content, likeness }), seed);
          const [model] = printed.models;
          return printed.shadows.map(({ form }) => outlineShare({ form: model?.form }, { form }));
        }).flat();
        return shares.reduce((sum, share) => sum + share, 0) / shares.length;
      };
      expect(meanShare('far')).toBeGreaterThan(meanShare('middle'));
      expect(meanShare('middle')).toBeGreaterThan(meanShare('near'));
    },
  );
});
