// What the generator promises, over every kind of row and over all contents.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { randomFrom } from '../../base/index.ts';
import { attributesOf, type Figure, fairlyDifferent, figureName } from '../../figures/index.ts';
import { generate } from './generate.ts';
import { continueRow } from './index.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type Answer, PARAMETERS, type Printed, type RowValues } from './task.ts';

const COLOUR = { print: 'colour' } as const;

interface Made {
  readonly name: string;
  readonly values: RowValues;
  readonly printed: Printed;
  readonly answer: Answer;
}

function make(values: RowValues, seed: number): Made {
  const made = generate(values, randomFrom(seed), COLOUR);
  return { ...made, values, name: JSON.stringify({ ...values, seed }) };
}

function valuesAt(step: number, changes: Partial<RowValues>): RowValues {
  const rung = LADDER[step - 1];
  if (!rung) throw new Error(`no step ${step}`);
  return { ...rung.values, ...changes };
}

function counted(min: number, max: number): readonly number[] {
  return Array.from({ length: max - min + 1 }, (_, index) => min + index);
}

/** Every row of colours, and of shapes in colours with a unit each, that is not refused. */
function everyRow(seed: number): readonly Made[] {
  const { unit, second, shown, missing, gap } = PARAMETERS;
  return unit.values.flatMap((first) =>
    second.values.flatMap((other) =>
      counted(shown.min, shown.max).flatMap((figures) =>
        counted(missing.min, missing.max).flatMap((empty) =>
          gap.values.flatMap((where) => {
            const row = { unit: first, second: other, shown: figures, missing: empty, gap: where };
            const values = valuesAt(1, {
              ...row,
              content: other === 'same' ? 'colours' : 'shapes-and-colours',
              response: other === 'same' ? 'colour-in' : 'draw',
            });
            return limitsOf(values, COLOUR).length > 0 ? [] : [make(values, seed)];
          }),
        ),
      ),
    ),
  );
}

const ROWS = everyRow(testSeed('continue-row, every row'));

/** Tasks of every step with every content and response that are not refused. */
function everyContent(seed: number): readonly Made[] {
  const { content, response } = PARAMETERS;
  return LADDER.flatMap((_, index) =>
    content.values.flatMap((look) =>
      response.values.flatMap((deed) => {
        const missing = deed === 'ring' ? { missing: 1 } : {};
        const values = valuesAt(index + 1, { content: look, response: deed, ...missing });
        return limitsOf(values, COLOUR).length > 0 ? [] : [make(values, seed + index)];
      }),
    ),
  );
}

const TASKS = everyContent(testSeed('continue-row, every content'));

/** The row with its answer in place. */
function filled({ printed, answer }: Made): readonly Figure[] {
  const rest = [...answer.figures];
  return printed.row.map((figure) => figure ?? rest.shift() ?? {});
}

function letterAt(unit: string, place: number): string {
  return unit.charAt(place % unit.length);
}

describe('R1 every row', () => {
  test('is its unit over and over, the key in its empty places', () => {
    for (const made of ROWS) {
      const { unit, second } = made.values;
      const row = filled(made);
      for (const [place, figure] of row.entries()) {
        for (const [at, other] of row.slice(0, place).entries()) {
          const isSame = letterAt(unit, place) === letterAt(unit, at);
          if (second === 'same') expect(figure.colour === other.colour, made.name).toBe(isSame);
          else {
            const isOther = letterAt(second, place) === letterAt(second, at);
            expect([figure.form === other.form, figure.colour === other.colour], made.name).toEqual(
              [isSame, isOther],
            );
          }
        }
      }
    }
  });

  test('shows the wanted number of figures, and as many empty places side by side', () => {
    for (const { values, printed, name } of ROWS) {
      const places = printed.row.flatMap((figure, place) => (figure ? [] : [place]));
      expect(places, name).toEqual(counted(places[0] ?? 0, (places[0] ?? 0) + values.missing - 1));
      expect(printed.row.length - places.length, name).toBe(values.shown);
      const isAtEnd = places.at(-1) === printed.row.length - 1;
      expect(isAtEnd, name).toBe(values.gap === 'end');
    }
  });

  test('shows every unit whole at least twice, without an empty place in it', () => {
    for (const { values, printed, name } of ROWS) {
      const before = printed.row.indexOf(null);
      const after = printed.row.length - before - values.missing;
      const units = [values.unit, values.second].filter((unit) => unit !== 'same');
      for (const { length } of units) {
        const whole = Math.floor(before / length) + Math.floor(after / length);
        expect(whole, name).toBeGreaterThanOrEqual(2);
      }
    }
  });
});

test('R2 R3 R4 R5 every row that is not refused is read one way by the solver', () => {
  expect(ROWS.length).toBeGreaterThan(400);
  for (const { printed, answer, name } of ROWS) {
    expect(continueRow.prove({ printed, answer }), name).toEqual({ proven: true });
  }
});

test('R1 R7 every step with every content and response is proven', () => {
  const contents = new Set(TASKS.map(({ values }) => values.content));
  expect([...contents].sort()).toEqual([...PARAMETERS.content.values].sort());
  for (const { printed, answer, name } of TASKS) {
    expect(continueRow.prove({ printed, answer }), name).toEqual({ proven: true });
  }
});

test('R5 signs are certain in every row of four with a gap in the middle, whatever signs are drawn', () => {
  const values = valuesAt(12, { content: 'signs', response: 'point', second: 'same' });
  expect(limitsOf(values, COLOUR)).toEqual([]);
  for (let seed = 0; seed < 300; seed++) {
    const { printed, answer, name } = make(values, seed);
    expect(continueRow.prove({ printed, answer }), name).toEqual({ proven: true });
  }
});

test('R6 any two different figures can be told apart fairly', () => {
  const known = new Set<string>();
  for (const { printed, name } of TASKS) {
    const figures = [...printed.row, ...(printed.offered ?? [])].flatMap((figure) => figure ?? []);
    const looks = [...new Set(figures.map((figure) => JSON.stringify(figure)))].sort();
    for (const [index, one] of looks.entries()) {
      for (const other of looks.slice(index + 1)) {
        if (known.has(one + other)) continue;
        known.add(one + other);
        const pair = [JSON.parse(one) as Figure, JSON.parse(other) as Figure] as const;
        expect(fairlyDifferent(...pair), `${name}: ${pair.map((f) => figureName(f))}`).toBe(true);
      }
    }
  }
});

describe('R7 what is offered', () => {
  const offers = TASKS.filter(({ printed }) => printed.offered);

  test('holds all that is missing, nothing twice and something wrong', () => {
    expect(offers.length).toBeGreaterThan(100);
    for (const { values, printed, answer, name } of offers) {
      const looks = (printed.offered ?? []).map((figure) => JSON.stringify(figure));
      const missing = new Set(answer.figures.map((figure) => JSON.stringify(figure)));
      expect(new Set(looks).size, name).toBe(values.choices);
      expect(looks.filter((look) => missing.has(look)).length, name).toBe(missing.size);
      expect(missing.size, name).toBeLessThan(values.choices);
    }
  });

  test('stands below only where the child points or rings', () => {
    for (const { values, printed, name } of TASKS) {
      const isChosen = values.response === 'point' || values.response === 'ring';
      expect(printed.offered !== undefined, name).toBe(isChosen);
    }
  });
});

test('R8 stickers and colouring in go with figures that differ in colour alone', () => {
  for (const { values, printed, name } of TASKS) {
    if (values.response !== 'sticker' && values.response !== 'colour-in') continue;
    expect(attributesOf(values.content), name).toEqual(['colour']);
    const rest = printed.row.map((figure) => figure && JSON.stringify({ ...figure, colour: 0 }));
    expect(new Set(rest.filter((look) => look !== null)).size, name).toBe(1);
  }
});

test('R12 the right figure stands in each offered place equally often', () => {
  const values = valuesAt(1, { choices: 4 });
  const places = counted(1, 800).map((seed) => {
    const { printed, answer } = make(values, seed);
    const right = JSON.stringify(answer.figures[0]);
    return (printed.offered ?? []).findIndex((figure) => JSON.stringify(figure) === right);
  });
  for (const place of counted(0, 3)) {
    const share = places.filter((other) => other === place).length / places.length;
    // A quarter is expected; five standard deviations of 800 throws are 0.077.
    expect(Math.abs(share - 0.25), `place ${place}`).toBeLessThan(0.077);
  }
});
