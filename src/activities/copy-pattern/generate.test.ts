// Every task that is made is proven and is what was asked for; the ladder climbs one thing at a time.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../base/index.ts';
import { copyPattern } from './index.ts';
import { limitsOf } from './limits.ts';
import { type CopyValues, GIVENS, responsesOf, SYMMETRIES } from './parameters.ts';
import { type Answer, type Cells, CONTENTS, type Printed } from './task.ts';

const COLOUR = { print: 'colour' } as const;

interface Copy {
  readonly printed: Printed;
  readonly answer: Answer;
}

function make(values: CopyValues, seed: number, print: 'colour' | 'grey' = 'colour'): Copy {
  return copyPattern.generate(values, randomFrom(seed), { print }) as Copy;
}

function filled(cells: Cells): number {
  return cells.filter((cell) => cell !== null).length;
}

const anyValues: fc.Arbitrary<CopyValues> = fc
  .record({
    content: fc.constantFrom(...CONTENTS),
    suiting: fc.nat(1),
    rows: fc.integer({ min: 2, max: 5 }),
    columns: fc.integer({ min: 2, max: 5 }),
    elements: fc.integer({ min: 1, max: 25 }),
    kinds: fc.integer({ min: 1, max: 4 }),
    boxes: fc.integer({ min: 1, max: 6 }),
    givens: fc.constantFrom(...GIVENS),
    symmetry: fc.constantFrom(...SYMMETRIES),
    joined: fc.boolean(),
    slanted: fc.boolean(),
    stickerMm: fc.constantFrom('8', '16', '25'),
  })
  .map(({ suiting, ...values }) => {
    const responses = responsesOf(values.content);
    const isInk = values.content === 'dots' || values.content === 'lines';
    return {
      ...values,
      response: responses[suiting % responses.length] ?? 'draw',
      kinds: isInk ? 1 : values.kinds,
      slanted: values.content === 'lines' && values.slanted,
    } as CopyValues;
  });

const seeds = fc.integer({ min: 0, max: 0xffffffff });

describe('generate', () => {
  it('R12 makes a proven task for every set of values that is not refused', () => {
    let accepted = 0;
    fc.assert(
      fc.property(anyValues, seeds, fc.boolean(), (values, seed, isGrey) => {
        if (limitsOf(values, COLOUR).length > 0) return;
        accepted += 1;
        const task = make(values, seed, isGrey ? 'grey' : 'colour');
        expect(copyPattern.prove(task)).toEqual({ proven: true });
      }),
      { numRuns: 200, seed: 20 },
    );
    expect(accepted).toBeGreaterThan(50);
  });

  it('R5 the answer is the whole of every box, equal to the model', () => {
    const { printed, answer } = make(valuesOf(11), 4);
    expect(answer).toHaveLength(printed.boxes.length);
    for (const { cells } of answer) expect(cells).toEqual(printed.model.cells);
  });

  it('R6 R7 R8 givens agree, differ from box to box, are as many as asked and leave something to do', () => {
    fc.assert(
      fc.property(
        seeds,
        fc.integer({ min: 4, max: 9 }),
        fc.constantFrom(...GIVENS),
        (seed, elements, givens) => {
          const { printed } = make({ ...valuesOf(8), elements, givens, boxes: 4 }, seed);
          const { model, boxes } = printed;
          const share = {
            none: 0,
            some: Math.floor(elements / 2),
            most: elements - Math.max(1, Math.floor(elements / 4)),
          };
          for (const { cells } of boxes) {
            expect(filled(cells)).toBe(share[givens]);
            expect(filled(cells)).toBeLessThan(filled(model.cells));
            for (const [place, cell] of cells.entries()) {
              if (cell !== null) expect(cell).toEqual(model.cells[place]);
            }
          }
          const states = new Set(boxes.map(({ cells }) => JSON.stringify(cells)));
          expect(states.size).toBe(givens === 'none' ? 1 : boxes.length);
        },
      ),
      { numRuns: 60, seed: 21 },
    );
  });

  it('R8 every choice of givens comes up, for as many boxes as there are choices', () => {
    const values: CopyValues = { ...valuesOf(8), elements: 4, givens: 'some', boxes: 6 };
    const { printed } = make(values, 1);
    // Two of four elements can be given in 6 ways, and 6 boxes take them all.
    expect(new Set(printed.boxes.map(({ cells }) => JSON.stringify(cells))).size).toBe(6);
  });

  it('R4 as many kinds occur as are asked for', () => {
    for (const kinds of [1, 2, 3, 4]) {
      const { printed } = make({ ...valuesOf(9), elements: 5, kinds }, kinds);
      const names = printed.model.cells.flatMap((cell) => cell?.colour ?? []);
      expect(new Set(names).size).toBe(kinds);
    }
  });

  it('R2 lines are told from the places that they stand in', () => {
    const { printed } = make({ ...valuesOf(14), rows: 2, columns: 3, elements: 10 }, 2);
    const places = [
      ...Array.from({ length: 4 }, () => ({ form: 'sign-level-line' })),
      ...Array.from({ length: 3 }, () => ({ form: 'sign-upright-line' })),
      ...Array.from({ length: 2 }, () => ({ form: 'sign-upright-line', turn: 45 })),
      ...Array.from({ length: 2 }, () => ({ form: 'sign-upright-line', turn: 135 })),
    ];
    for (const [place, cell] of printed.model.cells.entries()) {
      if (cell !== null) expect(cell).toEqual(places[place]);
    }
    expect(printed.model.cells).toHaveLength(places.length);
    expect(filled(printed.model.cells)).toBe(10);
  });

  it('the same seed gives the same task, another seed another one', () => {
    const [one, again, other] = [
      make(valuesOf(12), 5),
      make(valuesOf(12), 5),
      make(valuesOf(12), 6),
    ];
    expect(JSON.stringify(again)).toBe(JSON.stringify(one));
    expect(JSON.stringify(other)).not.toBe(JSON.stringify(one));
  });
});

describe('ladder', () => {
  it.each(copyPattern.ladder.map((_, index) => index + 1))(
    'step %i is proven for 25 seeds, in colour and in grey',
    (step) => {
      for (const print of ['colour', 'grey'] as const) {
        for (let seed = 0; seed < 25; seed++) {
          const proof = copyPattern.prove(make(valuesOf(step), seed, print));
          expect(proof, `step ${step}, seed ${seed}, ${print}`).toEqual({ proven: true });
        }
      }
    },
  );

  it('R14 each step changes one value, and with the content only what no longer goes with it', () => {
    const { ladder } = copyPattern;
    expect(ladder.length).toBeGreaterThanOrEqual(10);
    for (const [index, { values }] of ladder.entries()) {
      const before = ladder[index - 1]?.values;
      if (!before) continue;
      const changed = Object.keys(values).filter((name) => values[name] !== before[name]);
      const [free, ...forced] = changed.includes('content')
        ? ['content', ...changed.filter((name) => name !== 'content')]
        : changed;
      expect(free, `step ${index + 1}`).toBeDefined();
      for (const name of forced) {
        const kept = { ...values, [name]: before[name] } as CopyValues;
        expect(limitsOf(kept, COLOUR), `step ${index + 1}: ${name} could have stayed`).not.toEqual(
          [],
        );
      }
    }
  });

  it('R14 starts at two dots of one colour among four places in one box', () => {
    expect(valuesOf(1)).toMatchObject({ rows: 2, columns: 2, elements: 2, kinds: 1, boxes: 1 });
  });

  it('R14 ages never fall', () => {
    const ages = copyPattern.ladder.map(({ age }) => age);
    expect(ages).toEqual([...ages].sort());
  });
});

function valuesOf(step: number): CopyValues {
  const read = copyPattern.read(step, {}, COLOUR);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return read.value as CopyValues;
}
