// The solver by itself: hand-made pages, an independent search, and pages with one rule broken.
import { describe, expect, test } from 'vitest';
import { said } from '../../../tests/said.ts';
import { type Random, randomFrom } from '../../base/index.ts';
import type { Figure, FormId } from '../../figures/index.ts';
import type { ColourName } from '../../palette/index.ts';
import { faultIn } from '../told-in.ts';
import { byKey } from './index.ts';
import { solve as findings } from './solve.ts';
import type { Answer, Entry, Printed, Response } from './task.ts';
import { type Made, made, seeds, valuesAt } from './tasks-to-test.ts';

const solve = (...page: Parameters<typeof findings>) => said(findings(...page));

const FORMS: readonly FormId[] = ['square', 'star', 'heart'];
const COLOURS: readonly ColourName[] = ['red', 'blue', 'yellow'];
const SIZES = [1, 0.5];
const SIGNS: readonly Response[] = [
  { kind: 'sign', sign: 'sign-plus' },
  { kind: 'sign', sign: 'sign-wave' },
  { kind: 'sign', sign: 'sign-ring' },
];

function anyFigure(random: Random): Figure {
  return { form: random.pick(FORMS), colour: random.pick(COLOURS), size: random.pick(SIZES) };
}

/** Two or order different figures as key and up to four items, good or not. */
function anyPage(random: Random): Printed {
  const figures: Figure[] = [];
  const count = random.int(2, 3);
  while (figures.length < count) {
    const figure = anyFigure(random);
    if (!figures.some((other) => JSON.stringify(other) === JSON.stringify(figure))) {
      figures.push(figure);
    }
  }
  const key = figures.map(
    (figure, place): Entry => ({ figure, response: SIGNS[place] as Response }),
  );
  const items = Array.from({ length: random.int(1, 4) }, () =>
    random.int(0, 2) > 0 ? random.pick(figures) : anyFigure(random),
  );
  return { key, items };
}

/** By trying all vectors: an entry will do for an item if some set of properties that sorts the key says so. */
function bruteAnswers({ key, items }: Printed): string[] {
  const fields = ['form', 'colour', 'size'] as const;
  const masks = [0, 1, 2, 3, 4, 5, 6, 7];
  const seen = (figure: Figure, mask: number) =>
    fields.map((field, bit) => (mask & (1 << bit) ? figure[field] : '')).join();
  const sorting = masks.filter(
    (mask) => new Set(key.map((entry) => seen(entry.figure, mask))).size === key.length,
  );
  const vectors: number[][] = [];
  for (let number = 0; number < key.length ** items.length; number++) {
    const vector = items.map((_, item) => Math.floor(number / key.length ** item) % key.length);
    const isGood = vector.every((place, item) =>
      sorting.some(
        (mask) => seen(items[item] as Figure, mask) === seen(key[place]?.figure as Figure, mask),
      ),
    );
    if (isGood) vectors.push(vector);
  }
  return vectors.map((vector) => vector.join()).sort();
}

function replaced<T>(list: readonly T[], at: number, value: T): readonly T[] {
  return list.map((other, index) => (index === at ? value : other));
}

function withItem({ printed, answer }: Made, item: number, figure: Figure): Made {
  return { answer, printed: { ...printed, items: replaced(printed.items, item, figure) } };
}

/** The same key with items put in another order of entries, each as the key shows it. */
function inOrder({ printed }: Made, answer: Answer): Made {
  return {
    answer,
    printed: { ...printed, items: answer.map((place) => printed.key[place]?.figure as Figure) },
  };
}

function withKey({ printed, answer }: Made, change: (key: readonly Entry[]) => Entry[]): Made {
  return { answer, printed: { ...printed, key: change(printed.key) } };
}

const reasonOf = (task: Made) => {
  const proof = byKey.prove(task);
  return proof.proven ? 'proven' : `${proof.reason}: ${faultIn('en', proof.detail)}`;
};

describe('R1 one entry for each item', () => {
  test('R1 all answers are those that an independent search over all vectors finds', () => {
    for (const seed of seeds(250)) {
      const page = anyPage(randomFrom(seed));
      const found = solve(page).answers.map((answer) => answer.join());
      expect([...found].sort(), `seed ${seed}`).toEqual(
        bruteAnswers(page).slice(0, Math.max(20, found.length)),
      );
    }
  });

  test('R1 an item like one entry in form and like another in colour has two answers', () => {
    const [plus, wave] = SIGNS as [Response, Response];
    const page: Printed = {
      key: [
        { figure: { form: 'square', colour: 'red' }, response: plus },
        { figure: { form: 'star', colour: 'blue' }, response: wave },
      ],
      items: [{ form: 'square', colour: 'blue' }],
    };
    expect(solve(page).answers).toEqual([[0], [1]]);
  });

  test('R1 an item turned so that it looks like another letter of the key is not one thing only', () => {
    const page: Printed = {
      key: [
        { figure: { form: 'small-b' }, response: { kind: 'ring', colour: 'red' } },
        { figure: { form: 'small-q' }, response: { kind: 'ring', colour: 'blue' } },
      ],
      items: [{ form: 'small-b', turn: 180 }],
    };
    expect(solve(page).answers.length).toBeGreaterThan(1);
  });

  test('R1 a wrong key is found out, wherever it is wrong', () => {
    const task = made(valuesAt(10), 5);
    task.answer.forEach((place, item) => {
      const wrong = { ...task, answer: replaced(task.answer, item, (place + 1) % 4) };
      expect(reasonOf(wrong)).toMatch(/^wrong/);
    });
  });

  test('R1 an item that is like no figure of the key is named', () => {
    const task = withItem(made(valuesAt(8), 1), 4, { form: 'hexagon', fill: 'solid', turn: 45 });
    expect(reasonOf(task)).toBe('unfit: item 5 is like no figure of the key');
  });

  test('R1 an item that already shows what another entry gets is ambiguous', () => {
    const task = made(valuesAt(2), 1);
    const [first, second] = task.printed.key as [Entry, Entry];
    if (second.response.kind !== 'colour-in') throw new Error('step 2 colours in');
    const item = task.answer.indexOf(0);
    const mixed = withItem(task, item, { ...first.figure, colour: second.response.colour });
    expect(reasonOf(mixed)).toMatch(/^ambiguous/);
  });
});

describe('R2–R8 a page with one rule broken is unfit', () => {
  const sound = made(valuesAt(8), 3);
  const order = sound.answer;

  test('the pages that are broken below are sound before', () => {
    expect(reasonOf(sound)).toBe('proven');
    expect(reasonOf(inOrder(sound, [0, 1, 1, 2, 2, 0, 2, 1, 0, 2, 1, 0]))).toBe('proven');
  });

  test('R2 two figures of the key that look alike', () => {
    const task = withKey(sound, ([first, second, ...rest]) => [
      first as Entry,
      { ...(second as Entry), figure: { ...(first as Entry).figure, turn: 5 } },
      ...rest,
    ]);
    expect(reasonOf(task)).toMatch(/^unfit: .* look too alike$/);
  });

  test('R2 a key of one entry', () => {
    const task = withKey(sound, ([first]) => [first as Entry]);
    expect(reasonOf(task)).toMatch(/^unfit: a key of one entry/);
  });

  test('R3 two entries with one response', () => {
    const task = withKey(sound, ([first, second, ...rest]) => [
      first as Entry,
      { ...(second as Entry), response: (first as Entry).response },
      ...rest,
    ]);
    expect(reasonOf(task)).toMatch(/^unfit: .* responses that look too alike$/);
  });

  test('R3 responses of two kinds', () => {
    const task = withKey(sound, ([first, ...rest]) => [
      { ...(first as Entry), response: { kind: 'ring', colour: 'red' } },
      ...rest,
    ]);
    expect(reasonOf(task)).toMatch(/^unfit: .* responses of different kinds$/);
  });

  test('R3 a black sticker beside figures of ink, which are black already, unless they are outlines', () => {
    const pageOf = (fill: 'solid' | 'outline') => {
      const key: Entry[] = [
        { figure: { form: 'heart', fill }, response: { kind: 'sticker', colour: 'black' } },
        { figure: { form: 'star', fill }, response: { kind: 'sticker', colour: 'red' } },
      ];
      const answer = [0, 0, 1, 0, 1, 1];
      const items = answer.map((place) => key[place]?.figure as Figure);
      return { printed: { key, items }, answer };
    };
    expect(reasonOf(pageOf('solid'))).toMatch(/^unfit: what one of .* gets/);
    expect(reasonOf(pageOf('outline'))).toBe('proven');
  });

  test('R3 a sign that looks like the figure of another entry', () => {
    const key: Entry[] = [
      { figure: { form: 'circle' }, response: { kind: 'sign', sign: 'sign-plus' } },
      { figure: { form: 'star' }, response: { kind: 'sign', sign: 'sign-ring' } },
    ];
    const answer = [0, 0, 1, 0, 1, 1];
    const items = answer.map((place) => key[place]?.figure as Figure);
    expect(reasonOf({ printed: { key, items }, answer })).toMatch(/^unfit: what one of .* gets/);
  });

  test('R4 an entry that no item asks for', () => {
    const task = inOrder(sound, [0, 1, 0, 0, 1, 1, 0, 1, 1, 0, 0, 1]);
    expect(reasonOf(task)).toBe('unfit: no item asks for place 3 of the key');
  });

  test('R5 three running along the rows, or down the columns alone', () => {
    const rows = inOrder(sound, [0, 1, 1, 1, 2, 0, 2, 0, 1, 2, 0, 2]);
    expect(reasonOf(rows)).toMatch(/^unfit: .* times running along the rows$/);
    const columns = inOrder(sound, [0, 1, 2, 1, 0, 2, 1, 2, 0, 1, 2, 1]);
    expect(reasonOf(columns)).toMatch(/^unfit: .* times running down the columns$/);
  });

  test('R6 the order of the key, its reverse, or one order over and over', () => {
    const [forwards, backwards] = [
      [0, 1, 2],
      [2, 1, 0],
    ];
    for (const unit of [forwards, backwards]) {
      const task = inOrder(sound, [...unit, ...unit, ...unit, ...unit]);
      expect(reasonOf(task)).toMatch(/^unfit: the items follow the order of the key/);
    }
    const unit = [1, 0, 2, 0, 2, 1];
    expect(reasonOf(inOrder(sound, [...unit, ...unit]))).toBe(
      'unfit: the items repeat one order along the rows',
    );
  });

  test('R6 the order of the key down the columns', () => {
    const columns = 4;
    const answer = Array.from({ length: 12 }, (_, place) => {
      const [row, column] = [Math.floor(place / columns), place % columns];
      return (column * 3 + row) % 3;
    });
    expect(reasonOf(inOrder(sound, answer))).toMatch(/^unfit/);
    const page = { ...inOrder(sound, [0, 1, 2, 0, 1, 2, 0, 1]).printed, columns: undefined };
    expect(solve(page).faults.join()).toMatch(/order of the key along the rows/);
  });

  test('R7 a size that goes with the answer', () => {
    const plain = inOrder(sound, order);
    const sizes = [0.76, 0.56, 0.5];
    const task = {
      ...plain,
      printed: {
        ...plain.printed,
        items: plain.printed.items.map((figure, item) => ({
          ...figure,
          size: sizes[order[item] as number] as number,
        })),
      },
    };
    expect(reasonOf(task)).toBe('unfit: the size of an item gives its answer away');
  });

  test('R8 some items just as in the key and others not', () => {
    const plain = inOrder(sound, order);
    const shrunk = [0, 1, 2].map((place) => order.indexOf(place));
    const task = shrunk.reduce(
      (page, item) => withItem(page, item, { ...(page.printed.items[item] as Figure), size: 0.56 }),
      plain,
    );
    expect(reasonOf(task)).toBe('unfit: some items look just as in the key and others do not');
  });
});
