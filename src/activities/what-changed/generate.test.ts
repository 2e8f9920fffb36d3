// Promises of the generator over its whole range of values, each checked by comparing printed figures field by field.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { directionRelation, type Figure, fairlyDifferent } from '../../figures/index.ts';
import { MOST_NUDGE, PARAMETERS } from './task.ts';
import { anyTasks, type Made, taskOf, valuesAt } from './tasks-to-test.ts';

const MADE = anyTasks(400, testSeed('what-changed, generated tasks'));

interface Change {
  readonly place: number;
  readonly before: Figure | null;
  readonly after: Figure | null;
}

/** Places where the printed data are not the same text. */
function changesOf({ printed: { first, second } }: Made): readonly Change[] {
  return first.flatMap((before, place) => {
    const after = second[place] ?? null;
    return JSON.stringify(before) === JSON.stringify(after) ? [] : [{ place, before, after }];
  });
}

function fieldsApart(one: Figure, other: Figure): readonly string[] {
  const fields = ['colour', 'form', 'size', 'turn', 'fill', 'count', 'layout'] as const;
  return fields.filter((field) => one[field] !== other[field]);
}

describe('every task of valid values', () => {
  test('R1 has as many changes as wanted and told, in the places of the key', () => {
    for (const made of MADE) {
      const { values, printed, answer, name } = made;
      expect(
        changesOf(made).map(({ place }) => place),
        name,
      ).toEqual(answer);
      expect([answer.length, printed.asked], name).toEqual([values.changes, values.changes]);
      expect([printed.first.length, printed.second.length], name).toEqual([
        values.figures,
        values.figures,
      ]);
    }
  });

  test('R3 changes figures fairly, and never into their left-right mirror image', () => {
    for (const made of MADE) {
      for (const { before, after } of changesOf(made)) {
        if (!before || !after) continue;
        const told = `${made.name}: ${JSON.stringify([before, after])}`;
        expect(fairlyDifferent(before, after), told).toBe(true);
        if (made.values.kind === 'swapped') continue;
        expect(['left-right', 'opposite-obliques'], told).not.toContain(
          directionRelation(before, after),
        );
      }
    }
  });

  test('R4 changes one attribute of a figure, unless figures change places', () => {
    for (const made of MADE.filter(({ values }) => values.kind !== 'swapped')) {
      for (const { before, after } of changesOf(made)) {
        if (before && after) expect(fieldsApart(before, after).length, made.name).toBe(1);
      }
    }
  });

  test('R5 puts nothing into a place that has left another', () => {
    for (const made of MADE.filter(({ values }) => values.kind !== 'swapped')) {
      const changes = changesOf(made);
      for (const { place, after } of changes) {
        const gone = changes.filter((other) => other.place !== place && other.before);
        const left = gone.map(({ before }) => JSON.stringify(before));
        if (after) expect(left, made.name).not.toContain(JSON.stringify(after));
      }
    }
  });

  test('R6 changes places two and two where that is wanted, and tells the child', () => {
    for (const made of MADE) {
      const isSwapped = made.values.kind === 'swapped';
      expect(made.printed.told, made.name).toBe(isSwapped ? 'swaps' : 'differences');
      if (!isSwapped) continue;
      const changes = changesOf(made);
      const texts = (figures: readonly (Figure | null)[]) =>
        figures.map((figure) => JSON.stringify(figure)).sort();
      expect(texts(changes.map(({ before }) => before))).toEqual(
        texts(changes.map(({ after }) => after)),
      );
    }
  });

  test('does to figures what the kind says', () => {
    for (const made of MADE) {
      const { kind, changes } = made.values;
      const all = changesOf(made);
      const gone = all.filter(({ after }) => !after).length;
      const added = all.filter(({ before }) => !before).length;
      if (kind === 'gone') expect([gone, added], made.name).toEqual([changes, 0]);
      else if (kind === 'added') expect([gone, added], made.name).toEqual([0, changes]);
      else if (kind !== 'mixed') expect([gone, added], made.name).toEqual([0, 0]);
      else {
        expect(gone + added, made.name).toBe(Math.min(2, changes - 1));
        expect(Math.max(gone, added), made.name).toBe(1);
      }
    }
    expect(new Set(MADE.map(({ values }) => values.kind)).size).toBe(PARAMETERS.kind.values.length);
  });

  test('R8 nudges figures only where they are to stand loosely, and the same in both pictures', () => {
    for (const { values, printed, name } of MADE) {
      expect(printed.nudges?.length, name).toBe(
        values.layout === 'loose' ? values.figures : undefined,
      );
      for (const { across, down } of printed.nudges ?? []) {
        expect(Math.max(Math.abs(across), Math.abs(down)), name).toBeLessThanOrEqual(MOST_NUDGE);
      }
    }
  });
});

test('the first thing to look at changes alone where that is wanted, each in turn where any may', () => {
  for (let seed = 0; seed < 40; seed++) {
    const fieldsOf = (made: Made) =>
      changesOf(made).flatMap(({ before, after }) =>
        before && after ? fieldsApart(before, after) : [],
      );
    const changes = { content: 'shapes-colours-and-sizes', figures: 8, changes: 3 } as const;
    const first = taskOf(valuesAt(8, { ...changes, kind: 'first' }), seed);
    expect(fieldsOf(first), first.name).toEqual(['form', 'form', 'form']);
    const any = taskOf(valuesAt(8, { ...changes, kind: 'any' }), seed);
    expect([...fieldsOf(any)].sort(), any.name).toEqual(['colour', 'form', 'size']);
  }
});

test('every place changes about equally often', () => {
  const counts = Array.from({ length: 6 }, () => 0);
  for (let seed = 0; seed < 1200; seed++) {
    const { answer } = taskOf(valuesAt(3), seed);
    for (const place of answer) counts[place] = (counts[place] ?? 0) + 1;
  }
  for (const count of counts) {
    expect(count, counts.join(' ')).toBeGreaterThan(150);
    expect(count, counts.join(' ')).toBeLessThan(250);
  }
});
