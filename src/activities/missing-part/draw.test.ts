// The drawn page measured: pieces as large as the hole, figures of one size, the answer in the hole.
import { describe, expect, test } from 'vitest';
import { blankBetween, boundsOf, groupsOf } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import { type Group, HOME_PAPERS, sheetArea } from '../../page/index.ts';
import { draw, room } from './draw.ts';
import { anyTasks, COLOUR, type Made, rightOf } from './tasks-to-test.ts';

const ALL = anyTasks(60, testSeed('missing-part, drawing'));
const CHOSEN = ALL.filter(({ printed }) => printed.offered);

function pageOf({ printed, answer }: Made, grownMm: number, withAnswer = false): Group {
  const least = room(printed);
  const size = { widthMm: least.widthMm + grownMm, heightMm: least.heightMm + grownMm };
  return withAnswer ? draw(printed, size, COLOUR, answer) : draw(printed, size, COLOUR);
}

function onlyOf(page: Group, role: string): Group {
  const [only] = groupsOf(page, role);
  if (!only) throw new Error(`no ${role} is drawn`);
  return only;
}

describe.each([0, 35])('on the drawn page, %i mm grown', (grownMm) => {
  test('R9 every piece is as large as the hole', () => {
    for (const made of CHOSEN) {
      const page = pageOf(made, grownMm);
      const hole = boundsOf(onlyOf(page, 'hole'));
      for (const piece of groupsOf(page, 'piece').map(boundsOf)) {
        expect(piece.right - piece.left, made.name).toBeCloseTo(hole.right - hole.left, 6);
        expect(piece.bottom - piece.top, made.name).toBeCloseTo(hole.bottom - hole.top, 6);
      }
    }
  });

  test('R9 the figures of the field keep clear of the hole and of each other', () => {
    for (const made of ALL) {
      const page = pageOf(made, grownMm);
      const hole = boundsOf(onlyOf(page, 'hole'));
      const figures = groupsOf(onlyOf(page, 'field'), 'place')
        .filter(({ children }) => children.length > 0)
        .map(boundsOf);
      for (const [index, one] of figures.entries()) {
        expect(blankBetween(one, hole), made.name).toBeGreaterThan(1.5);
        for (const other of figures.slice(index + 1)) {
          expect(blankBetween(one, other), made.name).toBeGreaterThan(3);
        }
      }
    }
  });

  test('R10 pieces stand 11 mm from the field and 6 mm from each other, or more', () => {
    for (const made of CHOSEN) {
      const page = pageOf(made, grownMm);
      const field = boundsOf(onlyOf(page, 'field'));
      const pieces = groupsOf(page, 'piece').map(boundsOf);
      for (const [index, one] of pieces.entries()) {
        expect(blankBetween(one, field), made.name).toBeGreaterThan(10.9);
        for (const other of pieces.slice(index + 1)) {
          expect(blankBetween(one, other), made.name).toBeGreaterThan(5.9);
        }
      }
    }
  });
});

test('R10 pieces to be joined to the hole stand in one line beside or below the field', () => {
  const joined = CHOSEN.filter(({ values }) => values.response === 'join');
  expect(joined.length).toBeGreaterThan(5);
  for (const made of joined) {
    const page = pageOf(made, 0);
    const field = boundsOf(onlyOf(page, 'field'));
    const pieces = groupsOf(page, 'piece').map(boundsOf);
    const isBeside = pieces.every(({ left }) => left > field.right);
    const side = isBeside ? 'left' : 'top';
    for (const piece of pieces) {
      expect(piece[side], made.name).toBeCloseTo(pieces[0]?.[side] ?? 0, 6);
    }
  }
});

test('R5 the answer fills the hole and marks the right piece', () => {
  for (const made of ALL) {
    const page = pageOf(made, 0, true);
    const hole = boundsOf(onlyOf(page, 'hole'));
    const filling = boundsOf(onlyOf(page, 'filling'));
    expect(
      filling.left > hole.left && filling.right < hole.right && filling.top > hole.top,
      made.name,
    ).toBe(true);
    const [, mark] = onlyOf(page, 'answer').children;
    const piece = groupsOf(page, 'piece')[rightOf(made)];
    expect(mark === undefined, made.name).toBe(piece === undefined);
    if (!mark || !piece) continue;
    const marked = boundsOf({ kind: 'group', children: [mark] });
    expect(blankBetween(marked, boundsOf(piece)), made.name).toBeLessThan(1);
  }
});

test('every task fits an upright sheet', () => {
  for (const made of ALL) {
    const { widthMm, heightMm } = room(made.printed);
    for (const paper of HOME_PAPERS) {
      const area = sheetArea(paper, 'portrait');
      expect(widthMm, made.name).toBeLessThanOrEqual(area.width);
      expect(heightMm, made.name).toBeLessThanOrEqual(area.height);
    }
  }
});
