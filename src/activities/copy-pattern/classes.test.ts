// Models are counted by class and compared with published counts.
import { describe, expect, it } from 'vitest';
import type { Figure } from '../../figures/index.ts';
import { classOf } from './classes.ts';
import type { Cells, Model } from './task.ts';

const DOT: Figure = { form: 'circle' };

function modelOf(side: number, number: number): Model {
  const cells: Cells = Array.from({ length: side * side }, (_, place) =>
    Math.floor(number / 2 ** place) % 2 === 1 ? DOT : null,
  );
  return { rows: side, columns: side, cells };
}

function classes(side: number) {
  return Array.from({ length: 2 ** (side * side) }, (_, number) => classOf(modelOf(side, number)));
}

describe('R11 models are classed by what leaves them looking the same', () => {
  const three = classes(3);
  const kept = (name: string) => three.filter((one) => one.kept.some((own) => own === name)).length;

  it('36 classes of 3 by 3 have no symmetry, each with eight members (OEIS A054407)', () => {
    expect(three.filter(({ symmetry }) => symmetry === 'none')).toHaveLength(36 * 8);
  });

  it('no 2 by 2 model is without symmetry (OEIS A054407)', () => {
    expect(classes(2).filter(({ symmetry }) => symmetry === 'none')).toHaveLength(0);
  });

  it('64 of 3 by 3 equal their left–right mirror image: three free columns of which two are one', () => {
    expect(kept('mirror-left-right')).toBe(2 ** 6);
    expect(kept('mirror-up-down')).toBe(2 ** 6);
    expect(kept('mirror-falling')).toBe(2 ** 6);
    expect(kept('mirror-rising')).toBe(2 ** 6);
  });

  it('32 of 3 by 3 survive a half turn and 8 a quarter turn: five and three free orbits', () => {
    expect(kept('turn-180')).toBe(2 ** 5);
    expect(kept('turn-90')).toBe(2 ** 3);
    expect(kept('turn-270')).toBe(2 ** 3);
  });

  it('elements are counted: 1, 9, 36, 84, 126 and back (Pascal’s triangle, row 9)', () => {
    const counts = Array.from(
      { length: 10 },
      (_, count) => three.filter(({ elements }) => elements === count).length,
    );
    expect(counts).toEqual([1, 9, 36, 84, 126, 126, 84, 36, 9, 1]);
  });

  it('colours break a symmetry that the filled cells have', () => {
    const pair = (left: Figure, right: Figure): Model => ({
      rows: 2,
      columns: 2,
      cells: [left, right, null, null],
    });
    const [red, blue]: Figure[] = [{ colour: 'red' }, { colour: 'blue' }];
    expect(classOf(pair(red ?? DOT, red ?? DOT))).toMatchObject({ symmetry: 'mirror', colours: 1 });
    expect(classOf(pair(red ?? DOT, blue ?? DOT))).toMatchObject({ symmetry: 'none', colours: 2 });
  });

  it('slanted lines change places in a mirror: one alone on 2 by 3 points has no symmetry', () => {
    const rising: Figure = { form: 'sign-upright-line', turn: 45 };
    const cells: Cells = Array.from({ length: 11 }, (_, place) => (place === 7 ? rising : null));
    expect(classOf({ rows: 2, columns: 3, cells })).toMatchObject({
      symmetry: 'none',
      elements: 1,
    });
  });
});
