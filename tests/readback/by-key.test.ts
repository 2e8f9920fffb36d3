// Reads printed sheets of by-key back from pixels: the key, the items, which entry each item matches.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../seed.ts';
import { inReadingOrder, outermost } from './boxes.ts';
import { type Look, lookAt, ONE_FORM, type Region, silhouetteDifference } from './looks.ts';
import { type PrintedSheet, printSheets } from './printed-sheets.ts';
import { type Area, areasOf, isInked, isInside, pixelAt, type Raster } from './raster.ts';

const SHEETS = 72;
const DPI = 120;

describe('by-key', () => {
  test(`${SHEETS} printed sheets give, from their pixels alone, the answers of their keys`, async () => {
    const seed = testSeed('by-key read back');
    const wanted = Array.from({ length: SHEETS }, (_, index) => ({
      activity: 'by-key' as const,
      step: 1 + (index % 18),
      seed: seed + index,
    }));
    for (const sheet of await printSheets(wanted, DPI)) {
      expect(readAnswer(sheet), JSON.stringify(sheet.wanted)).toEqual(sheet.tasks[0]?.answer);
    }
  });
});

function readAnswer({ raster }: PrintedSheet): number[] {
  const { areas } = areasOf(raster, isInked);
  const [strip, ...items] = outermost(areas).sort((one, other) => one.top - other.top);
  if (!strip) return [];
  const entries = outermost(areas.filter((area) => isInside(area, strip)));
  const key = entries
    .sort((one, other) => one.left - other.left)
    .map((area) => lookOf(raster, area));
  return inReadingOrder(items).map((area) => bestEntry(lookOf(raster, area), key));
}

/** The entry that looks most like the item; colour is asked only where silhouettes do not settle the key. */
function bestEntry(item: Look, key: readonly Look[]): number {
  const isSettled = key.every((one, index) =>
    key.slice(index + 1).every((other) => silhouetteDifference(one, other) > ONE_FORM),
  );
  const distances = key.map((entry) => {
    const colour = isSettled || entry.colour === item.colour ? 0 : 1;
    return silhouetteDifference(item, entry) + colour;
  });
  return distances.indexOf(Math.min(...distances));
}

/** The figure of a unit: above the rule of a card, inside a ring, or the whole. */
function lookOf(raster: Raster, area: Area): Look {
  const card = figureOnCard(raster, area);
  if (card) return lookAt(raster, card);
  if (!isRing(raster, area)) return lookAt(raster, area);
  const x = (area.left + area.right) / 2;
  const y = (area.top + area.bottom) / 2;
  const radius = (area.right - area.left) / 2 - (2.3 / 25.4) * raster.dpi;
  return lookAt(raster, area, (px, py) => Math.hypot(px - x, py - y) < radius);
}

/** Where the figure stands on a card: above the line that goes all the way across; undefined: no card. */
function figureOnCard(raster: Raster, { left, top, right, bottom }: Area): Region | undefined {
  const inkedShare = (y: number) => {
    let inked = 0;
    for (let x = left; x <= right; x++) if (isInked(pixelAt(raster, x, y))) inked++;
    return inked / (right - left + 1);
  };
  // Past the line of the frame and the curve of its corners.
  const inset = Math.round((1.3 / 25.4) * raster.dpi);
  const from = Math.round(top + 0.35 * (bottom - top));
  const to = Math.round(bottom - 0.15 * (bottom - top));
  const isFrame = inkedShare(top + 1) > 0.7 && inkedShare(from - 4) < 0.99;
  for (let y = from; isFrame && y < to; y++) {
    if (inkedShare(y) > 0.98) {
      return { left: left + inset, top: top + inset, right: right - inset, bottom: y - 3 };
    }
  }
  return undefined;
}

/** A round band whose blank inside holds something else. */
function isRing(raster: Raster, { left, right, top, bottom }: Area): boolean {
  const inset = Math.round((3 / 25.4) * raster.dpi);
  const middle = Math.round((top + bottom) / 2);
  const isBlank = (x: number) => !isInked(pixelAt(raster, x, middle));
  const isRound = Math.abs(right - left - (bottom - top)) < 3;
  const hasBands = hasBand(raster, left, 1, middle) && hasBand(raster, right, -1, middle);
  return isRound && hasBands && isBlank(left + inset) && isBlank(right - inset);
}

/** The band of a ring is about 1.8 mm wide where a line across its middle meets it. */
function hasBand(raster: Raster, from: number, inward: 1 | -1, y: number): boolean {
  const width = Math.round((1.3 / 25.4) * raster.dpi);
  const pixels = Array.from({ length: width }, (_, step) =>
    pixelAt(raster, from + inward * step, y),
  );
  return pixels.every(isInked);
}
