// The generator by itself: what its tasks promise over seeds and over all values that go together.
import { describe, expect, test } from 'vitest';
import { type Figure, fairlyDifferent, roomIn, sameFigure } from '../../figures/index.ts';
import { initialOf } from '../../palette/index.ts';
import { lookedAt } from './contents.ts';
import { byKey } from './index.ts';
import { LADDER } from './ladder.ts';
import { limits } from './limits.ts';
import { CONTENTS } from './parameters.ts';
import type { Answer, Printed } from './task.ts';
import { COLOUR, GREY, goodValues, made, seeds, valuesAt } from './tasks-to-test.ts';

const TASKS = [
  ...goodValues(120, COLOUR).map(([seed, values]) => ({ seed, values, style: COLOUR })),
  ...CONTENTS.flatMap((content) =>
    goodValues(2, COLOUR, (values) => values.content === content).map(([seed, values]) => ({
      seed,
      values,
      style: COLOUR,
    })),
  ),
  ...goodValues(40, GREY).map(([seed, values]) => ({ seed, values, style: GREY })),
].map((made_) => ({ ...made_, ...made(made_.values, made_.seed, made_.style) }));

function countsOf(answer: Answer, entries: number): number[] {
  return Array.from({ length: entries }, (_, place) => answer.filter((p) => p === place).length);
}

function downColumns<T>(items: readonly T[], columns: number): T[] {
  const rows = Math.ceil(items.length / columns);
  const order: T[] = [];
  for (let column = 0; column < columns; column++) {
    for (let row = 0; row < rows; row++) {
      const item = items[row * columns + column];
      if (row * columns + column < items.length) order.push(item as T);
    }
  }
  return order;
}

function readings({ answer, printed }: { answer: Answer; printed: Printed }): Answer[] {
  return [answer, downColumns(answer, printed.columns ?? 1)];
}

const fieldOf = { size: 'size', colour: 'colour', form: 'form', layout: 'layout' } as const;

describe('the whole parameter space', () => {
  test('R1 every task of any values that are not refused is proven', () => {
    for (const { seed, values, printed, answer } of TASKS) {
      expect(byKey.prove({ printed, answer }), `seed ${seed} ${JSON.stringify(values)}`).toEqual({
        proven: true,
      });
    }
  });

  test('R1 every step is proven for 12 seeds', () => {
    for (let step = 1; step <= LADDER.length; step++) {
      for (const seed of seeds(12)) {
        const proof = byKey.prove(made(valuesAt(step), seed));
        expect(proof, `step ${step}, seed ${seed}`).toEqual({ proven: true });
      }
    }
  });

  test('every content is reached', () => {
    expect(new Set(TASKS.map(({ values }) => values.content))).toEqual(new Set(CONTENTS));
  });

  test('R2 figures of a key are fairly different, whichever is looked at first', () => {
    for (const { seed, printed } of TASKS) {
      printed.key.forEach(({ figure }, place) => {
        printed.key.forEach((other, index) => {
          if (index === place) return;
          expect(fairlyDifferent(figure, other.figure), `seed ${seed}`).toBe(true);
        });
      });
    }
  });

  test('R3 in grey print no letter to be looked at is the mark of a colour to be given', () => {
    const wanted = goodValues(
      40,
      GREY,
      ({ content, response }) =>
        (content === 'capitals' || content === 'small-letters') &&
        (response === 'ring' || response === 'colour-in' || response === 'sticker'),
    );
    for (const [seed, values] of wanted) {
      const { key } = made(values, seed, GREY).printed;
      const marks = key
        .map(({ response }) => ('colour' in response ? initialOf(response.colour) : ''))
        .join('')
        .toLowerCase();
      for (const { figure } of key) {
        expect(marks, `seed ${seed}`).not.toContain((figure.form ?? '').slice(-1).toLowerCase());
      }
    }
  });

  test('R4 every entry is asked for; counts differ by one at most, or by two and more if not balanced', () => {
    for (const { seed, values, answer } of TASKS) {
      const counts = countsOf(answer, values.entries);
      expect(answer.length).toBe(values.items);
      expect(Math.min(...counts), `seed ${seed}`).toBeGreaterThanOrEqual(1);
      const spread = Math.max(...counts) - Math.min(...counts);
      if (values.balanced) expect(spread, `seed ${seed}`).toBeLessThanOrEqual(1);
      else expect(spread, `seed ${seed}`).toBeGreaterThanOrEqual(2);
    }
  });

  test('R5 no entry three times running along the rows or down the columns', () => {
    for (const task of TASKS) {
      for (const order of readings(task)) {
        expect(order.join(''), `seed ${task.seed}`).not.toMatch(/(.)\1\1/);
      }
    }
  });

  test('R6 no order that is the key’s, its reverse, or one stretch repeated to the end', () => {
    for (const task of TASKS) {
      const { entries } = task.values;
      const forwards = '012345'.slice(0, entries).repeat(12);
      const backwards = [...'012345'.slice(0, entries)].reverse().join('').repeat(12);
      for (const order of readings(task)) {
        const text = order.join('');
        expect(forwards.startsWith(text), `seed ${task.seed}`).toBe(false);
        expect(backwards.startsWith(text), `seed ${task.seed}`).toBe(false);
        for (let period = 1; 2 * period <= text.length; period++) {
          const repeated = text.slice(0, period).repeat(text.length).slice(0, text.length);
          expect(repeated === text, `seed ${task.seed} ${text}`).toBe(false);
        }
      }
    }
  });

  test('R7 what varies is dealt evenly to each entry and is no better guide than the commonest entry', () => {
    for (const { seed, values, answer, printed } of TASKS) {
      if (values.vary === 'none') continue;
      const looks = printed.items.map((figure) => figure[fieldOf[values.vary as 'size']]);
      const kinds = [...new Set(looks)];
      const tables = kinds.map((kind) =>
        countsOf(
          answer.filter((_, item) => looks[item] === kind),
          values.entries,
        ),
      );
      const counts = countsOf(answer, values.entries);
      counts.forEach((count, place) => {
        for (const table of tables) {
          const share = count / kinds.length;
          expect(Math.abs((table[place] ?? 0) - share), `seed ${seed}`).toBeLessThan(1);
        }
      });
      const guessed = tables.reduce((sum, table) => sum + Math.max(...table), 0);
      const bound = kinds.length * Math.ceil(Math.max(...counts) / kinds.length);
      expect(guessed, `seed ${seed}`).toBeLessThanOrEqual(bound);
      expect(kinds.length, `seed ${seed}`).toBeGreaterThanOrEqual(2);
    }
  });

  test('R8 items look just as in the key, or none does', () => {
    for (const { seed, values, answer, printed } of TASKS) {
      const same = printed.items.filter((figure, item) =>
        sameFigure(figure, printed.key[answer[item] ?? -1]?.figure ?? {}),
      );
      expect(same.length, `seed ${seed}`).toBe(values.vary === 'none' ? values.items : 0);
    }
  });

  test('R15 in colour no vowel stands in a key of Latin letters', () => {
    for (const { seed, printed, style } of TASKS) {
      if (style === GREY) continue;
      for (const { figure } of printed.key) {
        expect(figure.form ?? '', `seed ${seed}`).not.toMatch(/^(capital|small)-[aeiouy]$/i);
      }
    }
  });

  test('R9 with several together, none can be left out of sight', () => {
    const several = goodValues(40, COLOUR, ({ content }) => lookedAt(content).length > 1);
    for (const [seed, values] of several) {
      const { printed } = made(values, seed);
      const looked = lookedAt(values.content);
      for (const left of looked) {
        const others = looked.filter((attribute) => attribute !== left);
        const looks = printed.key.map(({ figure }) => others.map((each) => figure[each]).join());
        expect(new Set(looks).size, `seed ${seed} ${values.content} ${left}`).toBeLessThan(
          values.entries,
        );
      }
    }
  });
});

describe('R10 keys are drawn anew', () => {
  const pairsMet = (step: number, changes: object, partOf: (figure: Figure) => unknown) => {
    const met = new Map<unknown, Set<string>>();
    for (const seed of seeds(250)) {
      for (const { figure, response } of made(valuesAt(step, changes), seed).printed.key) {
        const part = partOf(figure);
        met.set(part, (met.get(part) ?? new Set()).add(JSON.stringify(response)));
      }
    }
    return met;
  };

  test('R10 each form meets at least four colours', () => {
    const met = pairsMet(4, { content: 'shapes' }, (figure) => figure.form);
    expect(met.size).toBeGreaterThanOrEqual(8);
    for (const [form, responses] of met) {
      expect(responses.size, String(form)).toBeGreaterThanOrEqual(4);
    }
  });

  test('R10 each direction meets at least four signs', () => {
    const met = pairsMet(8, { entries: 4, leftRight: true }, (figure) => figure.turn);
    expect([...met.keys()].sort()).toEqual([0, 180, 270, 90]);
    for (const [turn, responses] of met) {
      expect(responses.size, String(turn)).toBeGreaterThanOrEqual(4);
    }
  });
});

describe('R11 and R12 what the age can do', () => {
  const signsOf = (entries: number) => {
    const drawn = new Set<string>();
    for (const seed of seeds(120)) {
      for (const { response } of made(valuesAt(8, { entries }), seed).printed.key) {
        if (response.kind === 'sign') drawn.add(response.sign);
      }
    }
    return [...drawn].sort();
  };

  test('R11 short keys use the signs that hands learn first (order of copying ages, Gesell)', () => {
    expect(signsOf(2)).toEqual(
      ['sign-dot', 'sign-level-line', 'sign-ring', 'sign-upright-line'].sort(),
    );
    expect(signsOf(3)).toEqual(
      ['sign-dot', 'sign-level-line', 'sign-plus', 'sign-ring', 'sign-upright-line'].sort(),
    );
  });

  test('R11 textures are those that a pencil draws', () => {
    for (const [seed, values] of goodValues(40, COLOUR, ({ response }) => response === 'fill')) {
      for (const { response } of made(values, seed).printed.key) {
        expect(JSON.stringify(response)).not.toMatch(/checks|bricks/);
      }
    }
  });

  test('R11 an outline that takes a sign has room for it', () => {
    for (const [seed, values] of goodValues(40, COLOUR, ({ response }) => response === 'sign')) {
      for (const { figure } of made(values, seed).printed.key) {
        if (figure.fill !== 'outline') continue;
        expect(roomIn({ ...figure, size: 1 }).radius).toBeGreaterThanOrEqual(0.22);
      }
    }
  });

  test('R12 left and right stand in one key only where leftRight says so', () => {
    const seen = { yes: 0, no: 0 };
    const wanted = goodValues(40, COLOUR, ({ content }) => content.includes('direction'));
    for (const [seed, values] of wanted) {
      const turns = made(values, seed).printed.key.map(({ figure }) => figure.turn);
      const isMirrored = turns.includes(90) && turns.includes(270);
      if (values.content === 'directions') expect(isMirrored).toBe(values.leftRight);
      else if (isMirrored) expect(values.leftRight).toBe(true);
      seen[values.leftRight ? 'yes' : 'no']++;
    }
    expect(Math.min(seen.yes, seen.no)).toBeGreaterThan(5);
  });

  test('R12 a key of two directions is up and down', () => {
    const turns = made(valuesAt(3), 9).printed.key.map(({ figure }) => figure.turn);
    expect([...turns].sort()).toEqual([0, 180]);
  });
});

test('the ladder climbs from two entries and six items to six entries and more than twenty', () => {
  expect(LADDER[0]?.values).toMatchObject({ entries: 2, items: 6, content: 'shapes' });
  expect(LADDER.at(-1)?.values).toMatchObject({ entries: 6, vary: 'size' });
  expect(LADDER.at(-1)?.values.items).toBeGreaterThanOrEqual(20);
  for (const { values } of LADDER) {
    expect(limits(values, COLOUR)).toEqual([]);
    expect(limits(values, GREY)).toEqual([]);
  }
});
