// What a guide promises: a household ruler does, nothing touches, and what is made is what would be printed.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import type { Bounds } from '../base/index.ts';
import type { SceneNode } from '../page/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import { taskGroups } from '../sheets/index.ts';
import { blanksBetween, isWithin } from './bounds.ts';
import type { Guide } from './guide.ts';
import { guideOf, sheetOf, sheetsOfAll } from './guides-to-test.ts';
import { isStanding } from './piece.ts';

const seed = testSeed('by hand');
const APART_MM = 3;
const NEAR_MM = 0.01;

const isWhole = (mm: number) => Math.abs(mm / 5 - Math.round(mm / 5)) < 1e-9;

describe.each(sheetsOfAll(seed))('$id', ({ sheets }) => {
  const all = sheets().map((sheet) => guideOf(sheet));
  // Others are copied as they are printed.
  const guides = all.filter(({ copied }) => copied === undefined);
  const name = ({ sheet }: Guide) => sheet.code;

  test('every line, corner and middle is a whole 5 mm from the left and the top edge', () => {
    for (const guide of guides) {
      const { placements, boxes, lines } = guide;
      const lengths = [
        ...boxes.flatMap(({ leftMm, topMm, widthMm, heightMm }) => [
          leftMm,
          topMm,
          widthMm,
          heightMm,
        ]),
        ...lines.flatMap(({ from, to }) => [...from, ...to]),
        ...placements
          .filter(({ inside, isPatch }) => inside === undefined && !isPatch)
          .flatMap(({ xMm, yMm }) => [xMm, yMm]),
        ...placements
          .filter(({ isPatch }) => isPatch)
          .flatMap(({ xMm, yMm, widthMm, heightMm }) => [xMm - widthMm / 2, yMm - heightMm / 2]),
      ];
      expect(
        lengths.filter((mm) => !isWhole(mm)),
        name(guide),
      ).toEqual([]);
    }
  });

  test('what stands apart in print stands at least 3 mm apart, in the same order and on the page', () => {
    for (const guide of guides) expect(faultsOfPlaces(guide), name(guide)).toEqual([]);
  });

  test('what stands in a box in print stands in the same box', () => {
    for (const guide of guides) expect(strays(guide), name(guide)).toEqual([]);
  });

  test('every figure of the sheet is made once: dots as stickers or drawn, all others drawn', () => {
    for (const guide of all) {
      const { sheet } = guide;
      const printed = taskGroups(sheet, false).flatMap(figuresIn);
      const made = guide.laid.flatMap(({ piece: { node } }) => figuresIn(node));
      expect(made.sort(), sheet.code).toEqual(printed.sort());
      const numbers = guide.placements.map(({ number }) => number);
      expect(numbers).toEqual(numbers.map((_, index) => index + 1));
    }
  });

  test('stickers come first, colour by colour, and small before large', () => {
    for (const { placements, sheet } of all) {
      const keys = placements.map(({ isSticker, colour, widthMm }) => [
        isSticker ? 0 : 1,
        colour === 'own' ? COLOUR_NAMES.length : COLOUR_NAMES.indexOf(colour),
        isSticker ? widthMm : 0,
      ]);
      const sorted = [...keys].sort(byParts);
      expect(keys, sheet.code).toEqual(sorted);
    }
  });
});

function byParts(one: readonly number[], other: readonly number[]): number {
  const index = one.findIndex((value, place) => value !== other[place]);
  return index === -1 ? 0 : (one[index] ?? 0) - (other[index] ?? 0);
}

/** What the figures drawn are called, by the words for those who cannot see them. */
function figuresIn(node: SceneNode): string[] {
  if (node.kind !== 'group') return [];
  if (node.shows) return [node.alt ?? ''];
  return node.children.flatMap(figuresIn);
}

function faultsOfPlaces({ laid, page }: Guide): string[] {
  const standing = laid.filter(({ piece }) => isStanding(piece) && piece.rides === undefined);
  const faults = standing
    .filter(
      ({ bounds }) =>
        !isWithin(bounds, { left: 0, top: 0, right: page.widthMm, bottom: page.heightMm }, 0),
    )
    .map(({ bounds }) => `off the page: ${JSON.stringify(bounds)}`);
  for (const [i, one] of standing.entries()) {
    for (const other of standing.slice(i + 1)) {
      const was = blanksBetween(
        one.piece.from ?? one.piece.bounds,
        other.piece.from ?? other.piece.bounds,
      );
      const is = blanksBetween(one.bounds, other.bounds);
      if (Math.max(was.across, was.down) <= 0) continue;
      if (Math.max(is.across, is.down) < APART_MM - NEAR_MM) {
        faults.push(`too near: ${JSON.stringify([one.bounds, other.bounds])}`);
      }
      if (turnedRound(one, other))
        faults.push(`out of order: ${JSON.stringify([one.bounds, other.bounds])}`);
    }
  }
  return faults;
}

type Made = Guide['laid'][number];

/** Whether one of a row or a column has passed the other. */
function turnedRound(one: Made, other: Made): boolean {
  const [a, b] = [one.piece.from ?? one.piece.bounds, other.piece.from ?? other.piece.bounds];
  const was = blanksBetween(a, b);
  if (was.across > 0 && was.down < 0) {
    return a.left < b.left !== one.bounds.left < other.bounds.left;
  }
  if (was.down > 0 && was.across < 0) {
    return a.top < b.top !== one.bounds.top < other.bounds.top;
  }
  return false;
}

/** Pieces that have left the box that they are printed in; of a folded page, its part. */
function strays(guide: Guide): string[] {
  const { laid, folds } = guide;
  const boxes = laid.filter(({ piece }) => piece.kind === 'box');
  const inBoxes = boxes.flatMap((box) =>
    laid
      .filter(({ piece }) => isStanding(piece) && isWithin(piece.bounds, box.piece.bounds, 0.5))
      .filter(({ bounds }) => !isWithin(bounds, box.bounds, NEAR_MM))
      .map(({ bounds }) => `out of its box: ${JSON.stringify(bounds)}`),
  );
  const onCrease = laid
    .filter(({ bounds }) => folds.some((fold) => crosses(bounds, fold.direction, fold.atMm)))
    .map(({ bounds }) => `on a crease: ${JSON.stringify(bounds)}`);
  return [...inBoxes, ...onCrease];
}

function crosses(bounds: Bounds, direction: 'across' | 'down', atMm: number): boolean {
  const [from, to] =
    direction === 'across' ? [bounds.left, bounds.right] : [bounds.top, bounds.bottom];
  return from < atMm + APART_MM && to > atMm - APART_MM;
}

describe('the plainest sheet', () => {
  test.each([1, 2, 3, 4, 5])(
    'three boxes, one task, seed %i: folded, about two minutes',
    (each) => {
      const guide = guideOf(sheetOf('in-every-box', 1, each, { tasks: 1 }));
      expect(guide.sheet.tasks).toHaveLength(1);
      expect(guide.folds.map(({ of }) => of)).toEqual([3, 3]);
      expect(guide.boxes).toEqual([]);
      expect(guide.minutes).toBeGreaterThanOrEqual(1.5);
      expect(guide.minutes).toBeLessThanOrEqual(2.5);
    },
  );
});

describe('stickers at hand', () => {
  test('of any size that has room are used for all dots', () => {
    const sheet = sheetOf('in-every-box', 1, 1, { tasks: 1 });
    for (const stickerMm of [6, 12, 20]) {
      const { placements } = guideOf(sheet, { stickerMm });
      expect(placements.map(({ widthMm }) => widthMm)).toEqual(placements.map(() => stickerMm));
    }
  });

  test('change nothing on a sheet without dots', () => {
    const sheet = sheetOf('odd-one-out', 4, 1, { tasks: 1 });
    expect(guideOf(sheet, { stickerMm: 40 }).placements).toEqual(guideOf(sheet).placements);
  });
});
