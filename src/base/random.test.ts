import { describe, expect, test } from 'vitest';
import { MAX_SEED, randomFrom } from './random.ts';

describe('random', () => {
  test('a seed fixes every choice', () => {
    const draw = (seed: number) => {
      const random = randomFrom(seed);
      return [
        random.int(0, 1000),
        random.pick('abcdef'.split('')),
        random.shuffle([1, 2, 3, 4, 5]),
        random.fork().int(0, 1e6),
      ];
    };
    for (const seed of [0, 1, 2 ** 31, MAX_SEED]) expect(draw(seed)).toEqual(draw(seed));
    expect(draw(1)).not.toEqual(draw(2));
  });

  test('a shuffle keeps the items and reaches every order about equally often', () => {
    const random = randomFrom(3);
    const counts = new Map<string, number>();
    for (let round = 0; round < 6000; round++) {
      const order = random.shuffle(['a', 'b', 'c']).join('');
      counts.set(order, (counts.get(order) ?? 0) + 1);
    }
    expect([...counts.keys()].toSorted()).toEqual(['abc', 'acb', 'bac', 'bca', 'cab', 'cba']);
    // 1000 expected, standard deviation 29: six of them is far outside chance
    for (const count of counts.values()) expect(Math.abs(count - 1000)).toBeLessThan(174);
  });

  test('neighbouring seeds begin as differently as any others', () => {
    const firsts = Array.from({ length: 4000 }, (_, seed) => randomFrom(seed).int(0, 3));
    for (const value of [0, 1, 2, 3]) {
      // 1000 expected, standard deviation 27: six of them is far outside chance
      expect(Math.abs(firsts.filter((first) => first === value).length - 1000)).toBeLessThan(164);
    }
    const repeats = firsts.filter((first, seed) => first === firsts[seed + 4]).length;
    expect(Math.abs(repeats - 1000)).toBeLessThan(164);
  });

  test('asking for more than there is says so', () => {
    expect(() => randomFrom(1).sample([1, 2], 3)).toThrow('expected at least 3 items, got 2');
    expect(() => randomFrom(1).pick([])).toThrow('expected at least one item');
  });
});
