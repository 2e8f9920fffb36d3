// Counts of what the arrangement can come to, against counts derived by hand.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { randomFrom } from '../../base/index.ts';
import { arrangeBoxes } from './arrangement.ts';

function choose(n: number, k: number): number {
  if (k < 0 || k > n) return 0;
  return k === 0 ? 1 : (choose(n - 1, k - 1) * n) / k;
}

/**
 * Ordered boxes of `size` out of `colours`, exactly one of which is in all `boxes`. Fix that one (`colours`
 * ways); of the boxes that hold it, take away those that share one more, put back those that share two
 * more, and so on: j shared ones leave each box `size` − j of `colours` − j to choose.
 */
function countBySieve(colours: number, size: number, boxes: number): number {
  const terms = Array.from({ length: size }, (_, index) => index + 1).map(
    (j) => (-1) ** (j - 1) * choose(colours - 1, j - 1) * choose(colours - j, size - j) ** boxes,
  );
  return colours * terms.reduce((sum, term) => sum + term, 0);
}

function subsets(items: readonly number[], size: number): readonly (readonly number[])[] {
  if (size === 0) return [[]];
  return items.flatMap((item, index) =>
    subsets(items.slice(index + 1), size - 1).map((rest) => [item, ...rest]),
  );
}

/** All ordered boxes with exactly one colour in every box, by trying every way. */
function listByTrying(colours: number, size: number, boxes: number): readonly string[] {
  const all = Array.from({ length: colours }, (_, index) => index);
  const choices = subsets(all, size);
  let ways: readonly (readonly (readonly number[])[])[] = [[]];
  for (let box = 0; box < boxes; box++) {
    ways = ways.flatMap((way) => choices.map((choice) => [...way, choice]));
  }
  return ways
    .filter((way) => all.filter((colour) => way.every((box) => box.includes(colour))).length === 1)
    .map(nameOf);
}

function nameOf(boxes: readonly (readonly number[])[]): string {
  return boxes.map((box) => [...box].sort((a, b) => a - b).join('')).join(' ');
}

/** What comes out over many seeds when the figures are given colours at random out of so many. */
function reached(
  colours: number,
  size: number,
  boxes: number,
  nearMisses: readonly number[],
  runs: number,
): Set<string> {
  const random = randomFrom(testSeed('in-every-box, arrangements'));
  const all = Array.from({ length: colours }, (_, index) => index);
  const found = new Set<string>();
  for (let run = 0; run < runs; run++) {
    const numbers = { boxes, figures: size, shared: 1, nearMisses: random.pick(nearMisses) };
    const arranged = arrangeBoxes(numbers, colours, random);
    const colourOf = random.shuffle(all);
    found.add(nameOf(arranged.map((box) => box.map((figure) => colourOf[figure] ?? -1))));
  }
  return found;
}

describe('R12 the tasks of two colours a box in three boxes, out of four', () => {
  test('the sieve and trying every way both count 96 of 216', () => {
    expect(choose(4, 2) ** 3).toBe(216);
    expect(countBySieve(4, 2, 3)).toBe(96);
    expect(listByTrying(4, 2, 3).length).toBe(96);
  });

  test('all 96 come out, and nothing else', () => {
    const found = reached(4, 2, 3, [0, 1], 4000);
    expect([...found].sort()).toEqual([...listByTrying(4, 2, 3)].sort());
  });
});

describe('R12 the tasks of three colours a box in three boxes, out of five', () => {
  test('the sieve and trying every way both count 570 of 1000', () => {
    expect(choose(5, 3) ** 3).toBe(1000);
    expect(countBySieve(5, 3, 3)).toBe(570);
    expect(listByTrying(5, 3, 3).length).toBe(570);
  });

  test('all those come out in which no two boxes are the same (R8), and nothing else', () => {
    const apart = listByTrying(5, 3, 3).filter((way) => new Set(way.split(' ')).size === 3);
    const found = reached(5, 3, 3, [2, 3], 9000);
    expect([...found].sort()).toEqual(apart.sort());
  });
});

/**
 * Whether boxes that hold the same figures can be avoided. Boxes that lack a near miss differ, for each near
 * miss is missing from one box only. The others, at least `boxes` − `nearMisses` of them, hold all near
 * misses and fill up with `free` figures of the rest, of which there are at most `rest`.
 */
function canDiffer(boxes: number, others: number, nearMisses: number, pool: number): boolean {
  const free = others - nearMisses;
  if (free < 0) return true;
  const rest = Math.min(boxes * others - nearMisses * (boxes - 1), pool - nearMisses);
  return choose(rest, free) >= boxes - nearMisses;
}

test('R8 boxes hold the same figures only where the numbers force it', () => {
  const random = randomFrom(testSeed('in-every-box, boxes alike'));
  let [free, forced] = [0, 0];
  for (const pool of [5, 8, 13]) {
    for (let boxes = 3; boxes <= 6; boxes++) {
      for (let others = 1; others <= 7; others++) {
        for (let nearMisses = 0; nearMisses * (boxes - 1) <= boxes * others; nearMisses++) {
          const places = boxes * others - nearMisses * (boxes - 1);
          if (Math.ceil(places / (boxes - 2)) > pool - nearMisses) continue;
          const numbers = { boxes, figures: others + 1, shared: 1, nearMisses };
          const arranged = arrangeBoxes(numbers, pool + 1, random);
          const differ = new Set(arranged.map((box) => nameOf([box]))).size === boxes;
          const expected = canDiffer(boxes, others, nearMisses, pool);
          expect(differ, `${JSON.stringify(numbers)} of ${pool + 1}`).toBe(expected);
          if (expected) free++;
          else forced++;
        }
      }
    }
  }
  expect(Math.min(free, forced)).toBeGreaterThan(10);
});

/**
 * Whether one comes from any box to any other by figures that both lack. Six boxes that each lack two of six
 * figures, each figure missing from two boxes, make rings of boxes. Were the roomiest boxes filled first and
 * no more, three figures in turn would be missing from six different boxes, so that every ring would be even;
 * two rings of three are reached by exchanges alone.
 */
function areJoined(boxes: readonly (readonly number[])[], figures: number): boolean {
  const lacking = boxes.map((box) =>
    Array.from({ length: figures }, (_, figure) => figure).filter((one) => !box.includes(one)),
  );
  const reached = new Set([0]);
  for (let round = 0; round < boxes.length; round++) {
    for (const [index, lacks] of lacking.entries()) {
      const isNext = [...reached].some((known) =>
        lacking[known]?.some((one) => lacks.includes(one)),
      );
      if (isNext) reached.add(index);
    }
  }
  return reached.size === boxes.length;
}

test('R12 arrangements that filling boxes in turn never gives come out too', () => {
  const random = randomFrom(testSeed('in-every-box, rings'));
  const numbers = { boxes: 6, figures: 5, shared: 1, nearMisses: 0 };
  const arranged = Array.from({ length: 300 }, () => arrangeBoxes(numbers, 7, random));
  const ringsOfThree = arranged.filter((boxes) => !areJoined(boxes, 7));
  expect(ringsOfThree.length).toBeGreaterThan(0);
});
