// Patterns are found exactly where a slow second way finds them, and every class is reached.
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../base/index.ts';
import { findPattern, type Pattern, type Wanted } from './models.ts';
import type { SymmetryWish } from './parameters.ts';

// A second, slow way to all patterns: every filling of every place, judged by its picture in half steps.

interface Spot {
  readonly x: number;
  readonly y: number;
  /** Direction of a line as the sign of its slope: 0 level, 9 upright, 1 falling, -1 rising; cells have 5. */
  readonly way: number;
}

interface Sides {
  readonly rows: number;
  readonly columns: number;
}

const NETS = {
  grid: ({ rows, columns }: Sides) => spots(rows, columns, 0, 0, 5),
  lattice: ({ rows, columns }: Sides) => [
    ...spots(rows, columns - 1, 1, 0, 0),
    ...spots(rows - 1, columns, 0, 1, 9),
    ...spots(rows - 1, columns - 1, 1, 1, -1),
    ...spots(rows - 1, columns - 1, 1, 1, 1),
  ],
};

function spots(down: number, across: number, x: number, y: number, way: number): Spot[] {
  return Array.from({ length: down * across }, (_, index) => ({
    x: 2 * (index % across) + x,
    y: 2 * Math.floor(index / across) + y,
    way,
  }));
}

/** The eight moves of a square, or the four of a rectangle, as lists of places; the first stands still. */
function moves(
  net: readonly Spot[],
  { rows, columns }: Sides,
): { mirror: boolean; to: number[] }[] {
  const [width, height] = [2 * columns - 2, 2 * rows - 2];
  const tilt = (way: number) => (Math.abs(way) === 1 ? -way : way);
  const swap = (way: number) => (way === 0 ? 9 : way === 9 ? 0 : way);
  const all = [false, true].flatMap((over) =>
    [false, true].flatMap((across) =>
      [false, true].map((down) => ({
        mirror: (Number(over) + Number(across) + Number(down)) % 2 === 1,
        isStill: !over && !across && !down,
        isFit: !over || rows === columns,
        to: net.map((spot) => {
          let { x, y, way } = spot;
          if (over) [x, y, way] = [y, x, swap(way)];
          if (across) [x, way] = [width - x, tilt(way)];
          if (down) [y, way] = [height - y, tilt(way)];
          return net.findIndex((other) => other.x === x && other.y === y && other.way === way);
        }),
      })),
    ),
  );
  return all.filter(({ isStill, isFit }) => isFit && !isStill);
}

function isSameAfter(pattern: Pattern, to: readonly number[]): boolean {
  return pattern.every((content, place) => content === pattern[to[place] ?? 0]);
}

function symmetryOf(pattern: Pattern, all: ReturnType<typeof moves>): SymmetryWish {
  const kept = all.filter(({ to }) => isSameAfter(pattern, to));
  if (kept.some(({ mirror }) => mirror)) return 'mirror';
  return kept.length > 0 ? 'turn' : 'none';
}

/** Ends of a line, or the cell, as points of the lattice in half steps. */
function ends({ x, y, way }: Spot): readonly string[] {
  if (way === 5) return [`${x} ${y}`];
  if (way === 0) return [`${x - 1} ${y}`, `${x + 1} ${y}`];
  if (way === 9) return [`${x} ${y - 1}`, `${x} ${y + 1}`];
  return [`${x - 1} ${y - way}`, `${x + 1} ${y + way}`];
}

function isJoined(pattern: Pattern, net: readonly Spot[]): boolean {
  const filled = net.filter((_, place) => pattern[place] !== null);
  const touch = (one: Spot, other: Spot) =>
    one.way === 5
      ? Math.max(Math.abs(one.x - other.x), Math.abs(one.y - other.y)) <= 2
      : ends(one).some((end) => ends(other).includes(end));
  const labels = filled.map((_, index) => index);
  for (let round = 0; round < filled.length; round++) {
    filled.forEach((one, i) => {
      filled.forEach((other, j) => {
        if (touch(one, other)) labels[i] = labels[j] = Math.min(labels[i] ?? 0, labels[j] ?? 0);
      });
    });
  }
  return labels.every((label) => label === 0);
}

function allPatterns(places: number, kinds: number): Pattern[] {
  const total = (kinds + 1) ** places;
  return Array.from({ length: total }, (_, number) =>
    Array.from({ length: places }, (_, place) => {
      const digit = Math.floor(number / (kinds + 1) ** place) % (kinds + 1);
      return digit === 0 ? null : digit - 1;
    }),
  );
}

type Traits = Pick<Wanted, 'elements' | 'kinds' | 'joined' | 'slanted'> & {
  readonly symmetry: SymmetryWish;
};

/** Everything that a pattern could be asked for as; undefined: it is empty or all alike. */
function traitsOf(
  pattern: Pattern,
  net: readonly Spot[],
  all: ReturnType<typeof moves>,
): Traits | undefined {
  const filled = pattern.filter((content) => content !== null);
  const slanted = net.some(({ way }, place) => Math.abs(way) === 1 && pattern[place] !== null);
  const usable = net.filter(({ way }) => slanted || Math.abs(way) !== 1).length;
  const kinds = new Set(filled).size;
  if (filled.length === 0 || (filled.length === usable && kinds === 1)) return undefined;
  const symmetry = symmetryOf(pattern, all);
  return { elements: filled.length, kinds, symmetry, slanted, joined: isJoined(pattern, net) };
}

/** All requests that some pattern meets. */
function requestsMet(kind: 'grid' | 'lattice', sides: Sides, kinds: number): Set<string> {
  const net = NETS[kind](sides);
  const all = moves(net, sides);
  const met = new Set<string>();
  for (const pattern of allPatterns(net.length, kinds)) {
    const traits = traitsOf(pattern, net, all);
    if (!traits) continue;
    for (const joined of traits.joined ? [false, true] : [false]) {
      for (const symmetry of ['any', traits.symmetry] as const)
        met.add(keyOf({ ...traits, joined, symmetry }));
    }
  }
  return met;
}

function keyOf({ elements, kinds, symmetry, joined, slanted }: Traits): string {
  return [elements, kinds, symmetry, joined, slanted].join(' ');
}

function* requests(places: number, kinds: number, slants: readonly boolean[]): Generator<Traits> {
  for (const slanted of slants) {
    for (const joined of [false, true]) {
      for (const symmetry of ['any', 'mirror', 'turn', 'none'] as const) {
        for (let count = 1; count <= kinds; count++) {
          for (let elements = count; elements <= places; elements++) {
            yield { elements, kinds: count, symmetry, joined, slanted };
          }
        }
      }
    }
  }
}

const CASES: readonly [kind: 'grid' | 'lattice', rows: number, columns: number, kinds: number][] = [
  ['grid', 2, 2, 4],
  ['grid', 2, 3, 3],
  ['grid', 3, 2, 2],
  ['grid', 3, 3, 2],
  ['grid', 2, 5, 1],
  ['grid', 3, 4, 1],
  ['lattice', 2, 2, 1],
  ['lattice', 3, 2, 1],
  ['lattice', 2, 3, 1],
];

describe('R12 a pattern is found exactly where one exists', () => {
  it.each(CASES)('in a %s of %i by %i with up to %i colours', (kind, rows, columns, kinds) => {
    const met = requestsMet(kind, { rows, columns }, kinds);
    const content = kind === 'grid' ? 'colours' : 'lines';
    const slants = kind === 'grid' ? [false] : [false, true];
    const wrong: string[] = [];
    for (const request of requests(NETS[kind]({ rows, columns }).length, kinds, slants)) {
      const found = findPattern({ ...request, content, rows, columns }, randomFrom(3));
      if ((found !== undefined) !== met.has(keyOf(request))) wrong.push(keyOf(request));
    }
    expect(wrong).toEqual([]);
    expect(met.size).toBeGreaterThan(3);
  });
});

describe('R11 a pattern is what was asked for', () => {
  const sizes = [2, 3, 4, 5].flatMap((rows) => [2, 3, 4, 5].map((columns) => ({ rows, columns })));
  it.each(sizes)('in $rows by $columns', ({ rows, columns }) => {
    for (const [content, kinds] of [
      ['colours', 3],
      ['lines', 1],
    ] as const) {
      const net = NETS[content === 'lines' ? 'lattice' : 'grid']({ rows, columns });
      const all = moves(net, { rows, columns });
      for (const request of requests(25, kinds, content === 'lines' ? [false, true] : [false])) {
        if (request.elements % 4 !== 0) continue;
        const pattern = findPattern(
          { ...request, content, rows, columns },
          randomFrom(rows * 31 + columns),
        );
        if (!pattern) continue;
        const traits = traitsOf(pattern, net, all);
        const expected = {
          ...request,
          symmetry: request.symmetry === 'any' ? traits?.symmetry : request.symmetry,
          joined: request.joined || traits?.joined,
        };
        expect(traits).toEqual(expected);
      }
    }
  });
});

/** The smallest of a pattern's images, as text: one for each class. */
function classKey(pattern: Pattern, all: ReturnType<typeof moves>): string {
  const images = all.map(({ to }) => to.map((place) => pattern[place] ?? null));
  return [pattern, ...images].map((image) => JSON.stringify(image)).sort()[0] ?? '';
}

/** The classes met by a given number of searches for each symmetry. */
function classesReached(wanted: Omit<Wanted, 'symmetry'>, seeds: number): Set<string> {
  const net = NETS[wanted.content === 'lines' ? 'lattice' : 'grid'](wanted);
  const all = moves(net, wanted);
  const reached = new Set<string>();
  for (const symmetry of ['mirror', 'turn', 'none'] as const) {
    for (let seed = 0; seed < seeds; seed++) {
      const pattern = findPattern({ ...wanted, symmetry }, randomFrom(seed));
      if (!pattern) break;
      reached.add(classKey(pattern, all));
    }
  }
  return reached;
}

describe('R12 every class is reached', () => {
  // OEIS A054247: 102 classes of 3 × 3 two-valued squares under the eight symmetries of the square; the
  // empty and the full one are refused. By filled cells: 1, 3, 8, 16, 23, 23, 16, 8, 3, 1 (their sum).
  it('of the 100 classes of 3 by 3 two-valued models that are not alike everywhere', () => {
    const counts = [1, 2, 3, 4, 5, 6, 7, 8].map(
      (elements) =>
        classesReached(
          {
            content: 'dots',
            rows: 3,
            columns: 3,
            elements,
            kinds: 1,
            joined: false,
            slanted: false,
          },
          250,
        ).size,
    );
    expect(counts).toEqual([3, 8, 16, 23, 23, 16, 8, 3]);
    expect(counts.reduce((sum, count) => sum + count) + 2).toBe(102);
  });

  it('of the joined figures of four lines on 2 by 3 points, slanted or not', () => {
    const sides = { rows: 2, columns: 3 };
    const net = NETS.lattice(sides);
    const all = moves(net, sides);
    for (const slanted of [false, true]) {
      const expected = new Set(
        allPatterns(net.length, 1)
          .filter((pattern) => {
            const traits = traitsOf(pattern, net, all);
            return traits?.elements === 4 && traits.joined && traits.slanted === slanted;
          })
          .map((pattern) => classKey(pattern, all)),
      );
      const wanted = {
        content: 'lines',
        ...sides,
        elements: 4,
        kinds: 1,
        joined: true,
        slanted,
      } as const;
      expect([...classesReached(wanted, 500)].sort()).toEqual([...expected].sort());
    }
  });
});
