// The model of difficulty against the orderings that studies of children and of visual search have published.
import { describe, expect, test } from 'vitest';
import { activityOf } from '../../src/activities/index.ts';
import { type Figure, pairLikeness } from '../../src/figures/index.ts';
import { difficultyOf } from '../../src/learner/index.ts';

/** Each pair must be less like than the one after it. */
function expectRising(pairs: readonly (readonly [Figure, Figure])[]): void {
  const likeness = pairs.map(([one, other]) => pairLikeness(one, other));
  expect(likeness).toEqual([...likeness].sort((one, other) => one - other));
  expect(new Set(likeness).size, String(likeness)).toBe(likeness.length);
}

/** A key of these figures, each coloured in another way, over `count` items that go through it in turn. */
function byKey(figures: readonly Figure[], count = 12): number {
  const key = figures.map((figure, place) => ({
    figure,
    response: { kind: 'sign', sign: SIGNS[place] ?? 'sign-dot' },
  }));
  const items = Array.from({ length: count }, (_, item) => figures[item % figures.length]);
  return difficultyOf(activityOf('by-key'), { key, items }).logits;
}

const SIGNS = ['sign-dot', 'sign-upright-line', 'sign-level-line', 'sign-ring'];

function inEveryBox(boxes: readonly (readonly Figure[])[]): number {
  const printed = { boxes: boxes.map((figures) => ({ figures })) };
  return difficultyOf(activityOf('in-every-box'), printed).logits;
}

const line = (turn: number): Figure => ({ form: 'sign-upright-line', turn });
const pointing = (turn: number): Figure => ({ form: 'triangle', turn });
const dots = (count: number): Figure => ({ form: 'dots', count, layout: 'dice' });
const form = (name: string): Figure => ({ form: name as Figure['form'] });
const circle = (colour: string): Figure => ({ colour: colour as Figure['colour'] });

describe('directions', () => {
  // Rudel & Teuber 1963, J. Comp. Physiol. Psychol. 56, 892–898: order of errors, 3.5 to 8.5 years.
  test('upright and level lines are easier than an up-down pair, that than left-right, that than mirrored obliques', () => {
    expectRising([
      [line(0), line(90)],
      [pointing(0), pointing(180)],
      [pointing(90), pointing(270)],
      [line(45), line(135)],
    ]);
  });

  // Uehara 2013, Psychology 4, 736–740: both shown at once, errors at four to six.
  test('a key of up and down is easier than one of left and right', () => {
    expect(byKey([pointing(0), pointing(180)])).toBeLessThan(byKey([pointing(90), pointing(270)]));
  });

  // Corballis & Zalik 1977, J. Exp. Child Psychol. 24, 516: best when one line is upright or level.
  test('a slant is told from an upright line more easily than from the opposite slant', () => {
    expectRising([
      [line(0), line(45)],
      [line(45), line(135)],
    ]);
  });

  // 298 children of five to six who wrote from memory: half turns are very rare (mdpi.com/2227-7102/8/3/137).
  test('a letter and its half turn are mixed up less than a letter and its mirror image', () => {
    expectRising([
      [form('small-b'), form('small-q')],
      [form('small-b'), form('small-d')],
    ]);
  });
});

describe('letters', () => {
  // Gibson, Gibson, Pick & Osser 1962, J. Comp. Physiol. Psychol. 55, 897–906: break or close least.
  test('a break in the line is seen more easily than a reversal', () => {
    for (const [broken, whole] of [
      ['small-c', 'small-o'],
      ['capital-C', 'capital-O'],
    ] as const) {
      expectRising([
        [form(broken), form(whole)],
        [form('small-b'), form('small-d')],
      ]);
      expectRising([
        [form(broken), form(whole)],
        [form('small-p'), form('small-q')],
      ]);
    }
  });

  test('a key of letters that differ by a break is easier than one of mirrored letters', () => {
    expect(byKey([form('small-c'), form('small-o')])).toBeLessThan(
      byKey([form('small-b'), form('small-d')]),
    );
  });
});

describe('quantities', () => {
  // Halberda & Feigenson 2008, Dev. Psychol. 44(5) 1457–1465.
  test('one to two is easier than three to four, and that than five to six', () => {
    expectRising([
      [dots(3), dots(6)],
      [dots(3), dots(4)],
      [dots(5), dots(6)],
    ]);
    const keys = [byKey([dots(3), dots(6)]), byKey([dots(3), dots(4)]), byKey([dots(5), dots(6)])];
    expect(keys).toEqual([...keys].sort((one, other) => one - other));
    expect(new Set(keys).size).toBe(3);
  });

  // Cheung & Le Corre 2018, J. Num. Cogn. 4(2), ages 2.5 to 4.5.
  test('small sets are easier than large ones of the same ratio', () => {
    expectRising([
      [dots(1), dots(2)],
      [dots(3), dots(6)],
    ]);
  });
});

describe('search', () => {
  const single: readonly Figure[] = [circle('red'), circle('blue'), circle('yellow')];
  const joined: readonly Figure[] = [
    { form: 'circle', colour: 'red' },
    { form: 'circle', colour: 'yellow' },
    { form: 'star', colour: 'red' },
  ];

  // Treisman & Gelade 1980, Cogn. Psychol. 12, 97–136; Gerhardstein & Rovee-Collier 2002, J. Exp. Child
  // Psychol. 81(2) 194–215: the same pattern from one to three years.
  test('one feature is easier than two together', () => {
    for (const count of [6, 12, 24])
      expect(byKey(single, count)).toBeLessThan(byKey(joined, count));
  });

  test('difficulty grows more slowly with the number of figures for one feature than for two', () => {
    const growth = (figures: readonly Figure[]) => byKey(figures, 24) - byKey(figures, 6);
    expect(growth(single)).toBeGreaterThan(0);
    expect(growth(joined)).toBeGreaterThan(growth(single) + 0.1);
  });

  // Duncan & Humphreys 1989, Psychol. Rev. 96(3) 433–458.
  test('distractors like the target are harder than unlike ones', () => {
    const boxes = (target: Figure, others: readonly Figure[]) =>
      inEveryBox(others.map((other) => [target, other]));
    const oval = form('oval');
    const unlike = boxes(oval, [form('star'), form('cross'), form('arrow')]);
    const like = boxes(oval, [form('circle'), form('oblong'), form('drop')]);
    expect(like).toBeGreaterThan(unlike);
  });

  test('mixed distractors are harder than uniform ones', () => {
    const boxes = (colours: readonly string[]) =>
      inEveryBox(colours.map((colour) => [{ form: 'star' }, circle(colour)]));
    const uniform = boxes(['red', 'red', 'yellow', 'yellow']);
    const mixed = boxes(['red', 'blue', 'yellow', 'green']);
    expect(mixed).toBeGreaterThan(uniform);
  });
});
