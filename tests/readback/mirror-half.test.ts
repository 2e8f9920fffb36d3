// Reads printed sheets of mirror-half back from pixels: mirrors the printed part in the thick line, place by place.
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../src/figures/index.ts';
import { hexOf } from '../../src/palette/index.ts';
import { testSeed } from '../seed.ts';
import { type Bounds, inReadingOrder, middleColour, type Thing, tasksOf } from './boxes.ts';
import { isOneForm, kindsOf, lookAt } from './looks.ts';
import { type PrintedSheet, printSheets, sheetsForHands } from './printed-sheets.ts';
import type { Raster } from './raster.ts';

const STEPS = 14;
const DPI = 100;
/** What lies opposite in the mirror line does so within this, in mm. */
const OPPOSITE_MM = 0.8;

describe('mirror-half', () => {
  test('printed halves and quarters of every step, mirrored in their lines, give the picture of the key', async () => {
    const seed = testSeed('mirror-half read back');
    for (const sheet of await printSheets(sheetsForHands('mirror-half', STEPS, 2, seed), DPI)) {
      const keys = sheet.tasks.map(({ answer }) => shownBy((answer as { cells: Cells }).cells));
      expect(readAnswers(sheet), JSON.stringify(sheet.wanted)).toEqual(keys);
    }
  });
});

type Cells = readonly (Figure | null)[];

interface Part {
  readonly rows: number;
  readonly columns: number;
}

/** What is seen of cells: their colours, or where all are outlines which of them are alike. */
function shownBy(cells: Cells): string[] {
  const forms = cells.map((figure) => figure?.form ?? '');
  return cells.map((figure, place) => {
    if (figure === null) return '';
    return figure.colour ? hexOf(figure.colour) : String(forms.indexOf(forms[place] ?? ''));
  });
}

/** A cell of the whole picture, and what is printed in it: '' for nothing, a colour, or the number of a form. */
interface Cell extends Bounds {
  readonly shown: string;
  readonly isGiven: boolean;
}

/** For each task all cells of the whole picture, row by row, as they are once the mirror has been held to it. */
function readAnswers({ raster, tasks }: PrintedSheet): string[][] {
  return tasksOf(raster).map((things, index) => {
    const printed = tasks[index]?.printed as { part: Part } | undefined;
    const part = printed?.part ?? { rows: 0, columns: 0 };
    const [cross] = things;
    const isCross = things.length === 1 && cross !== undefined;
    const isLine = (thing: Thing) => isThin(raster, thing);
    const lines = isCross ? [cross] : things.filter(isLine);
    const frames = isCross ? cross.inside : things.filter((thing) => !isLine(thing));
    const [mirror, ...more] = lines;
    if (!mirror || more.length > 0) throw new Error(`${lines.length} mirror lines`);
    const cells = frames.flatMap((frame) => cellsOf(raster, frame, part));
    const given = cells.filter(({ isGiven }) => isGiven);
    expect([given.length, cells.length]).toEqual([
      part.rows * part.columns,
      frames.length * part.rows * part.columns,
    ]);
    const whole = inReadingOrder(cells).map((cell) => mirrored(raster, cell, given, mirror));
    const kinds = whole.map((shown) =>
      shown.startsWith('#') ? shown : String(whole.indexOf(shown)),
    );
    return kinds.map((kind, place) => (whole[place] === '' ? '' : kind));
  });
}

function isThin({ dpi }: Raster, { left, right, top, bottom }: Bounds): boolean {
  return Math.min(right - left, bottom - top) < (3 / 25.4) * dpi;
}

/** What the given part shows in the place of a cell, or opposite to it in the mirror line or lines. */
function mirrored(raster: Raster, cell: Cell, given: readonly Cell[], mirror: Bounds): string {
  const [x, y] = middleOf(cell);
  const [lineX, lineY] = middleOf(mirror);
  const reach = (OPPOSITE_MM / 25.4) * raster.dpi;
  const isUpright = mirror.bottom - mirror.top > (3 / 25.4) * raster.dpi;
  const isLevel = mirror.right - mirror.left > (3 / 25.4) * raster.dpi;
  const found = given.filter((other) => {
    const [otherX, otherY] = middleOf(other);
    const isAcross =
      Math.abs(otherX - x) < reach || (isUpright && Math.abs(otherX + x - 2 * lineX) < reach);
    const isDown =
      Math.abs(otherY - y) < reach || (isLevel && Math.abs(otherY + y - 2 * lineY) < reach);
    return isAcross && isDown;
  });
  const [only, ...more] = found;
  if (!only || more.length > 0) throw new Error(`${found.length} cells opposite to ${x}, ${y}`);
  return only.shown;
}

function middleOf({ left, right, top, bottom }: Bounds): [number, number] {
  return [(left + right) / 2, (top + bottom) / 2];
}

/** The cells of a frame: the places of its dots and circles if it has one in each, else equal shares of it. */
function cellsOf(raster: Raster, frame: Thing, { rows, columns }: Part): Cell[] {
  const count = rows * columns;
  const shares = Array.from({ length: count }, (_, place) => {
    const width = (frame.right - frame.left) / columns;
    const height = (frame.bottom - frame.top) / rows;
    const left = frame.left + (place % columns) * width;
    const top = frame.top + Math.floor(place / columns) * height;
    return { left, top, right: left + width, bottom: top + height };
  });
  const areas: readonly Bounds[] = frame.inside.length === count ? frame.inside : shares;
  const looks = frame.inside.map((area) => lookAt(raster, area));
  const forms = kindsOf(looks, isOneForm);
  const shown = areas.map((area) => {
    const colour = middleColour(raster, area);
    if (colour !== '#ffffff') return colour;
    const at = frame.inside.findIndex(
      (figure) => figure !== area && isWithin(middleOf(figure), area),
    );
    return at < 0 ? '' : `form ${forms[at]}`;
  });
  const isGiven = shown.some((one) => one !== '');
  return areas.map((area, place) => ({ ...area, shown: shown[place] ?? '', isGiven }));
}

function isWithin(
  [x, y]: readonly [number, number],
  { left, right, top, bottom }: Bounds,
): boolean {
  return x > left && x < right && y > top && y < bottom;
}
