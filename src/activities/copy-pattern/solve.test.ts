// The solver gives the one answer of a sound page and says what is wrong with others.
import { describe, expect, it } from 'vitest';
import { said } from '../../../tests/said.ts';
import { randomFrom } from '../../base/index.ts';
import type { Figure } from '../../figures/index.ts';
import type { Values } from '../parameters.ts';
import { copyPattern } from './index.ts';
import { solve as findings, lookalikesOf } from './solve.ts';
import { type Answer, answerSchema, type Cells, type Printed, printedSchema } from './task.ts';

const solve = (...page: Parameters<typeof findings>) => said(findings(...page));

const red: Figure = { form: 'circle', colour: 'red' };
const blue: Figure = { form: 'circle', colour: 'blue' };
const LEVEL: Figure = { form: 'sign-level-line' };
const UPRIGHT: Figure = { form: 'sign-upright-line' };
const RISING: Figure = { form: 'sign-upright-line', turn: 45 };
const FALLING: Figure = { form: 'sign-upright-line', turn: 135 };

/** Red top left, blue beside it, red below: no symmetry. One box has the first, the other the last. */
const DOTS: Cells = [red, blue, null, red, null, null];
const page: Printed = {
  model: { rows: 2, columns: 3, cells: DOTS },
  boxes: [
    { cells: [red, null, null, null, null, null] },
    { cells: [null, null, null, red, null, null] },
  ],
};

/** On 2 by 2 points: level above and below, upright left and right, rising, falling. */
const FLAG: Cells = [LEVEL, null, UPRIGHT, null, RISING, null];
const lines: Printed = {
  model: { rows: 2, columns: 2, cells: FLAG },
  boxes: [{ cells: [LEVEL, null, null, null, null, null] }],
};

function withBox(cells: Cells, from = page): Printed {
  return { ...from, boxes: [{ cells }, ...from.boxes.slice(1)] };
}

function withModel(cells: Cells, from = page): Printed {
  const empty = { cells: cells.map(() => null) };
  return { ...from, model: { ...from.model, cells }, boxes: [empty] };
}

function generated(values: Values, seed: number): { printed: Printed; answer: Answer } {
  const task = copyPattern.generate(values, randomFrom(seed), { print: 'colour' });
  return { printed: printedSchema.parse(task.printed), answer: answerSchema.parse(task.answer) };
}

function faultsOf(printed: Printed): string {
  return solve(printed).faults.join('; ');
}

describe('solve', () => {
  it('R5 finds one answer, every box the whole model', () => {
    expect(solve(page)).toEqual({ answers: [[{ cells: DOTS }, { cells: DOTS }]], faults: [] });
    expect(solve(lines)).toEqual({ answers: [[{ cells: FLAG }]], faults: [] });
  });

  it('R5 a key that is not the model is wrong', () => {
    const answer = [{ cells: DOTS }, { cells: [red, red, null, red, null, null] }];
    expect(copyPattern.prove({ printed: page, answer })).toMatchObject({ reason: 'wrong' });
    expect(copyPattern.prove({ printed: page, answer: answer.slice(0, 1) })).toMatchObject({
      reason: 'wrong',
    });
  });

  it('R1 a model or box with a wrong number of cells is unfit', () => {
    expect(faultsOf(withModel([...DOTS, null]))).toMatch(
      '7 cells, which is no grid and no lattice',
    );
    expect(faultsOf(withBox([red, null, null]))).toMatch('box 1 has 3 cells, the model has 6');
  });

  it('R1 figures that are of no one content are unfit', () => {
    expect(faultsOf(withModel([{ form: 'heart' }, ...DOTS.slice(1)]))).toMatch('two kinds');
    expect(faultsOf(withModel([{ ...red, size: 0.5 }, ...DOTS.slice(1)]))).toMatch('plain');
    expect(faultsOf(withModel([{ ...red, fill: 'outline' }, ...DOTS.slice(1)]))).toMatch('plain');
    expect(
      faultsOf(withModel([{ form: 'small-k' }, { form: 'star' }, null, null, null, null])),
    ).toMatch('two kinds');
  });

  it('R2 a line in the place of another direction is unfit', () => {
    expect(faultsOf(withModel([UPRIGHT, null, UPRIGHT, null, null, null], lines))).toMatch(
      'expected a line that is level, got one that is upright',
    );
    expect(faultsOf(withModel([LEVEL, null, null, null, FALLING, null], lines))).toMatch(
      'expected a line that is rising, got one that is falling',
    );
    expect(faultsOf(withModel([LEVEL, null, null, null, RISING, FALLING], lines))).toBe('');
    expect(
      faultsOf(withModel([{ ...LEVEL, colour: 'red' }, null, UPRIGHT, null, null, null], lines)),
    ).toMatch('of ink');
    expect(
      faultsOf(withModel([{ form: 'circle' }, null, UPRIGHT, null, null, null], lines)),
    ).toMatch('expected a line');
  });

  it('R2 a line counts by how it lies, however it is written', () => {
    const other: Figure = { form: 'sign-upright-line', turn: 90 };
    expect(faultsOf(withBox([other, null, null, null, null, null], lines))).toBe('');
  });

  it('R3 an empty model and one that is alike everywhere are unfit', () => {
    expect(faultsOf(withModel(DOTS.map(() => null)))).toMatch('empty');
    expect(faultsOf(withModel(DOTS.map(() => red)))).toMatch('alike everywhere');
    expect(faultsOf(withModel([...DOTS.slice(1).map(() => red), blue]))).toBe('');
  });

  it('R3 a net with all its level and upright lines is unfit, with or without all slants', () => {
    const square = [LEVEL, LEVEL, UPRIGHT, UPRIGHT];
    expect(faultsOf(withModel([...square, null, null], lines))).toMatch('alike everywhere');
    expect(faultsOf(withModel([...square, RISING, FALLING], lines))).toMatch('alike everywhere');
    expect(faultsOf(withModel([...square, RISING, null], lines))).toBe('');
  });

  it('R4 white does not show', () => {
    expect(faultsOf(withModel([{ ...red, colour: 'white' }, ...DOTS.slice(1)]))).toMatch('white');
  });

  it('R6 a given in another place, of another colour, or where the model has nothing is unfit', () => {
    expect(faultsOf(withBox([null, null, red, null, null, null]))).toMatch(
      'box 1 disagrees with the model at place 3',
    );
    expect(faultsOf(withBox([blue, null, null, null, null, null]))).toMatch('place 1');
    expect(faultsOf(withBox([red, null, null, null, blue, null]))).toMatch('place 5');
    expect(solve(withBox([blue, null, null, null, null, null])).answers).toEqual([]);
  });

  it('R6 givens of the mirrored or turned model are named as such', () => {
    expect(faultsOf(withBox([null, blue, red, null, null, null]))).toMatch(
      'as if the model were mirrored',
    );
    expect(faultsOf(withBox([null, null, red, null, blue, null]))).toMatch(
      'as if the model were turned',
    );
    expect(faultsOf(withBox([blue, blue, null, null, null, null]))).not.toMatch('as if');
  });

  it('R7 a finished box leaves nothing to do', () => {
    expect(faultsOf(withBox(DOTS))).toMatch('box 1 leaves nothing to do');
  });

  it('R8 boxes begun in the same way are unfit, empty ones are not', () => {
    expect(faultsOf(withBox(page.boxes[1]?.cells ?? []))).toMatch(
      'box 2 is started just like box 1',
    );
    const empty = { cells: DOTS.map(() => null) };
    expect(faultsOf({ ...page, boxes: [empty, empty] })).toBe('');
  });

  it('R13 a content or response that does not suit the model is unfit', () => {
    expect(faultsOf({ ...page, content: 'filled-cells' })).toMatch('than it is said to hold');
    expect(faultsOf({ ...page, content: 'signs' })).toMatch('than it is said to hold');
    expect(faultsOf({ ...page, response: 'draw-line' })).toMatch('does not suit');
    expect(faultsOf({ ...lines, response: 'sticker' })).toMatch('does not suit');
    expect(faultsOf({ ...page, content: 'colours', response: 'colour-in' })).toBe('');
  });

  it('R1 signs, letters and turned shapes are told apart in everything that is printed', () => {
    const of = (...cells: Cells) =>
      withBox([cells[0] ?? null, null, null, null, null, null], {
        ...page,
        model: { rows: 2, columns: 3, cells: [...cells.slice(1), null, null, null] },
      });
    const [up, right]: readonly Figure[] = [{ form: 'triangle' }, { form: 'triangle', turn: 90 }];
    const hollow: Figure = { form: 'triangle', fill: 'outline' };
    for (const [one, other] of [
      [UPRIGHT, LEVEL],
      [up, right],
      [up, hollow],
      [{ form: 'small-k' }, { form: 'small-s' }],
    ] as const) {
      const fitting = of(one ?? null, one ?? null, other ?? null, null);
      expect(faultsOf({ ...fitting, boxes: fitting.boxes.slice(0, 1) })).not.toMatch('disagrees');
      expect(faultsOf(of(other ?? null, one ?? null, other ?? null, null))).toMatch('disagrees');
    }
  });

  it('R4 figures that are hard to tell apart are unfit', () => {
    const alike = [{ form: 'small-b' }, { form: 'small-d' }, null, null, null, null] as const;
    expect(faultsOf(withModel(alike))).toMatch('too alike');
  });

  it('R13 black dots are dots of ink, or coloured ones if the page says so', () => {
    const black = withModel([{ colour: 'black' }, null, null, { form: 'circle' }, null, null]);
    expect(faultsOf(black)).toBe('');
    expect(faultsOf({ ...black, content: 'dots', response: 'draw' })).toBe('');
    expect(faultsOf({ ...black, content: 'colours', response: 'sticker' })).toBe('');
  });

  it('what is optional in the file changes nothing in the answer', () => {
    const { answers } = solve({ ...page, content: 'colours', response: 'sticker', stickerMm: 13 });
    expect(answers).toEqual(solve(page).answers);
  });
});

describe('lookalikesOf', () => {
  it('R10 names boxes whose givens would fit a mirrored or turned model too', () => {
    // Red stands top left and bottom left: upside down the model still has red there.
    expect(lookalikesOf(page)).toEqual([
      { box: 0, way: 'mirrored' },
      { box: 1, way: 'mirrored' },
    ]);
    expect(lookalikesOf(withBox([null, blue, null, null, null, null]))).toEqual([
      { box: 0, way: 'mirrored' },
      { box: 1, way: 'mirrored' },
    ]);
    expect(lookalikesOf(withBox([red, blue, null, null, null, null]))).toEqual([
      { box: 1, way: 'mirrored' },
    ]);
  });

  it('R10 an empty box fits every view, and a model that is its own only view has none', () => {
    const empty = { cells: DOTS.map(() => null) };
    expect(lookalikesOf({ ...page, boxes: [empty] }).map(({ way }) => way)).toEqual([
      'mirrored',
      'turned',
    ]);
    const cross: Cells = [null, red, null, red, red, red, null, red, null];
    const model = { rows: 3, columns: 3, cells: cross };
    expect(lookalikesOf({ model, boxes: [{ cells: cross.map(() => null) }] })).toEqual([]);
  });

  it('R10 a quarter turn takes level lines to upright ones and rising to falling', () => {
    // A level line on top and the rising slant: turned clockwise, upright on the right and falling.
    const model = { rows: 2, columns: 2, cells: [LEVEL, null, null, null, RISING, null] };
    const turned: Printed = {
      model,
      boxes: [{ cells: [null, null, null, UPRIGHT, null, FALLING] }],
    };
    expect(faultsOf(turned)).toMatch('as if the model were turned');
    const upright = { ...model, cells: [null, null, null, UPRIGHT, null, FALLING] };
    const back: Printed = {
      model: upright,
      boxes: [{ cells: [LEVEL, null, null, null, RISING, null] }],
    };
    expect(faultsOf(back)).toMatch('as if the model were turned');
    const mirrored: Printed = {
      model,
      boxes: [{ cells: [LEVEL, null, null, null, null, FALLING] }],
    };
    expect(faultsOf(mirrored)).toMatch('as if the model were mirrored');
  });
});

describe('a mutation of one thing on a generated page is noticed', () => {
  it.each([11, 14, 17])('R6 R7 at step %i', (step) => {
    const read = copyPattern.read(step, {}, { print: 'colour' });
    if (!read.ok) throw new Error('the ladder has an invalid step');
    for (let seed = 0; seed < 10; seed++) {
      const task = generated(read.value, seed);
      for (const [place, cell] of task.printed.model.cells.entries()) {
        const cells = task.printed.model.cells.map((own, at) => (at === place ? null : own));
        if (cell === null) continue;
        const model = { ...task.printed.model, cells };
        const proof = copyPattern.prove({ ...task, printed: { ...task.printed, model } });
        expect(proof, `step ${step}, seed ${seed}, place ${place + 1}`).toMatchObject({
          proven: false,
        });
      }
    }
  });
});
