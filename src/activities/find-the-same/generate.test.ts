// Promises of the generator over its whole range of values, each checked by comparing printed figures field by field.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import {
  attributesOf,
  directionRelation,
  type Figure,
  fairlyDifferent,
} from '../../figures/index.ts';
import { PARAMETERS } from './task.ts';
import { anyTasks, type Made, taskOf, valuesAt } from './tasks-to-test.ts';

const MADE = anyTasks(300, testSeed('find-the-same, generated tasks'));

/** The fields of a figure that carry an attribute; dots of another number may be of another size. */
const FIELDS = {
  colour: ['colour'],
  form: ['form'],
  size: ['size'],
  turn: ['turn'],
  count: ['count', 'dotSize'],
  fill: ['fill'],
} as const;

function fieldsOf({ values }: Made): readonly (readonly (keyof Figure)[])[] {
  return attributesOf(values.content).map((attribute) => FIELDS[attribute]);
}

/** In how many attributes two figures differ. */
function differingIn(made: Made, one: Figure, other: Figure): number {
  return fieldsOf(made).filter((fields) => fields.some((field) => one[field] !== other[field]))
    .length;
}

function isMirrored(one: Figure, other: Figure): boolean {
  const relation = directionRelation(one, other);
  return relation === 'left-right' || relation === 'opposite-obliques';
}

describe('every task of valid values', () => {
  test('R1 has the wanted number of choices, of which the key alone is the model', () => {
    for (const { values, printed, answer, name } of MADE) {
      const model = JSON.stringify(printed.model);
      const alike = printed.choices.flatMap((choice, place) =>
        JSON.stringify(choice) === model ? [place] : [],
      );
      expect(printed.choices.length, name).toBe(values.choices);
      expect(alike, name).toEqual([answer]);
    }
  });

  test('R2 has no wrong choice that is not fairly different from the model', () => {
    for (const { printed, wrong, name } of MADE) {
      for (const figure of wrong) {
        const isFair =
          fairlyDifferent(printed.model, figure) && fairlyDifferent(figure, printed.model);
        expect(isFair, `${name}: ${JSON.stringify([printed.model, figure])}`).toBe(true);
      }
    }
  });

  test('R3 has figures that share all but what the content names', () => {
    for (const made of MADE) {
      const named = fieldsOf(made).flat();
      const rest = made.printed.choices.map((figure) =>
        JSON.stringify(
          Object.entries(figure).filter(([field]) => !named.includes(field as keyof Figure)),
        ),
      );
      expect(new Set(rest).size, made.name).toBe(1);
    }
  });

  test('R4 has exactly the wanted number of near misses', () => {
    for (const made of MADE) {
      const { values, printed, wrong, name } = made;
      const differing = wrong.map((figure) => differingIn(made, printed.model, figure));
      const near = differing.filter((count) => count === 1).length;
      const isSingle = attributesOf(values.content).length === 1;
      expect(near, name).toBe(isSingle ? values.choices - 1 : values.nearMisses);
    }
  });

  test('R5 has wrong choices that are all alike, or no two of them', () => {
    for (const { values, wrong, name } of MADE) {
      const kinds = new Set(wrong.map((figure) => JSON.stringify(figure))).size;
      expect(kinds, name).toBe(values.mixed ? wrong.length : 1);
    }
  });

  test('R6 has each value of the model on a wrong choice too, where near misses are as many as attributes', () => {
    let checked = 0;
    for (const made of MADE) {
      const { values, printed, wrong, name } = made;
      const fields = fieldsOf(made);
      if (!values.mixed || fields.length === 1 || values.nearMisses < fields.length) continue;
      checked++;
      for (const [field] of fields) {
        if (!field) throw new Error('an attribute without a field');
        expect(
          wrong.some((figure) => figure[field] === printed.model[field]),
          name,
        ).toBe(true);
      }
    }
    expect(checked).toBeGreaterThan(30);
  });

  test('R8 has a mirror image of the model where it is asked for, and nowhere else', () => {
    for (const { values, printed, wrong, name } of MADE) {
      const mirrored = wrong.filter((figure) => isMirrored(printed.model, figure));
      expect(mirrored.length > 0, name).toBe(values.mirrors !== 'none');
    }
    for (const mirrors of PARAMETERS.mirrors.values) {
      expect(
        MADE.some(({ values }) => values.mirrors === mirrors),
        mirrors,
      ).toBe(true);
    }
  });
});

describe('over many tasks', () => {
  const CHOICES = 4;
  const RUNS = 400;
  /** Five standard deviations of a share of a quarter or a half in so many throws. */
  const slack = (share: number) => 5 * Math.sqrt((share * (1 - share)) / RUNS);
  const runsOf = (changes: Parameters<typeof valuesAt>[1]) =>
    Array.from({ length: RUNS }, (_, seed) => taskOf(valuesAt(3, changes), seed));

  test('R7 the match stands in each place equally often', () => {
    const places = runsOf({ content: 'capitals' }).map(({ answer }) => answer);
    for (let place = 0; place < CHOICES; place++) {
      const share = places.filter((other) => other === place).length / RUNS;
      expect(Math.abs(share - 1 / CHOICES), `place ${place}`).toBeLessThan(slack(1 / CHOICES));
    }
  });

  test.each(['near', 'far'] as const)(
    'R6 of sizes drawn %s the biggest is the match no more often than any other',
    (likeness) => {
      const tasks = runsOf({ content: 'sizes', likeness });
      const share = tasks.filter(({ printed }) => printed.model.size === 1).length / RUNS;
      expect(Math.abs(share - 1 / CHOICES)).toBeLessThan(slack(1 / CHOICES));
    },
  );

  test('R6 with room for far choices, guessing at the most or least in common is right as by chance', () => {
    const chance = 1 / 6;
    const tasks = Array.from({ length: RUNS }, (_, seed) => taskOf(valuesAt(10), seed));
    for (const extreme of [Math.max, Math.min]) {
      const right = tasks.map((made) => {
        const { choices } = made.printed;
        const shared = choices.map((one) =>
          choices.reduce((sum, other) => sum + 2 - differingIn(made, one, other), 0),
        );
        const wanted = extreme(...shared);
        const ties = shared.filter((count) => count === wanted).length;
        return shared[made.answer] === wanted ? 1 / ties : 0;
      });
      const share = right.reduce((sum, next) => sum + next, 0) / RUNS;
      expect(share).toBeLessThan(chance + slack(chance));
    }
  });

  test('R6 with four choices and two near misses no choice has more in common with the rest than another', () => {
    for (const made of runsOf({ nearMisses: 2 }).slice(0, 60)) {
      const { choices } = made.printed;
      const shared = choices.map((one) =>
        choices.reduce((sum, other) => sum + 2 - differingIn(made, one, other), 0),
      );
      expect(new Set(shared).size, made.name).toBe(1);
    }
  });
});
