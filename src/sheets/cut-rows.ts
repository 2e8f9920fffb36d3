// Things of different sizes to cut out, in rows down as many pages as they need.
import type { Size } from '../activities/index.ts';
import type { Area } from '../page/index.ts';
import { CUT_GAP_MM } from './cut-page.ts';

/** Between neighbours where that needs no further page, in mm; by eye. */
const EASY_GAP_MM = 14;

export interface PlacedItem<T> {
  readonly item: T;
  /** Which of the given lists it comes from, from 0. */
  readonly list: number;
  /** Whether it is the first of its list. */
  readonly isFirst: boolean;
  readonly place: Area;
}

interface Row<T extends Size> {
  readonly list: number;
  readonly isFirst: boolean;
  readonly items: T[];
  widthMm: number;
}

/** Each list begins a row of its own; all rows together stand in the middle of the width, from the top down. */
export function placedInRows<T extends Size>(
  lists: readonly (readonly T[])[],
  area: Area,
): readonly (readonly PlacedItem<T>[])[] {
  const tight = pagesOf(lists, area, CUT_GAP_MM);
  const easy = pagesOf(lists, area, EASY_GAP_MM);
  return easy.length > tight.length ? tight : easy;
}

function pagesOf<T extends Size>(
  lists: readonly (readonly T[])[],
  area: Area,
  gapMm: number,
): readonly (readonly PlacedItem<T>[])[] {
  const rows = lists.flatMap((items, list) => rowsOf(items, list, area.width, gapMm));
  const widest = Math.max(0, ...rows.map(({ widthMm }) => widthMm));
  const left = area.left + Math.max(0, (area.width - widest) / 2);
  const pages: PlacedItem<T>[][] = [];
  let top = area.top;
  for (const row of rows) {
    const heightMm = Math.max(...row.items.map((item) => item.heightMm));
    const isFull = top > area.top && top + heightMm > area.top + area.height;
    if (isFull || pages.length === 0) {
      pages.push([]);
      top = area.top;
    }
    pages[pages.length - 1]?.push(...placed(row, left, top, gapMm));
    top += heightMm + gapMm;
  }
  return pages;
}

function rowsOf<T extends Size>(
  items: readonly T[],
  list: number,
  widthMm: number,
  gapMm: number,
): readonly Row<T>[] {
  const rows: Row<T>[] = [];
  for (const item of items) {
    const row = rows[rows.length - 1];
    if (row && row.widthMm + gapMm + item.widthMm <= widthMm) {
      row.items.push(item);
      row.widthMm += gapMm + item.widthMm;
    } else {
      rows.push({ list, isFirst: rows.length === 0, items: [item], widthMm: item.widthMm });
    }
  }
  return rows;
}

function placed<T extends Size>(
  { list, isFirst, items }: Row<T>,
  from: number,
  top: number,
  gapMm: number,
): readonly PlacedItem<T>[] {
  let left = from;
  return items.map((item, index) => {
    const place = { left, top, width: item.widthMm, height: item.heightMm };
    left += item.widthMm + gapMm;
    return { item, list, isFirst: isFirst && index === 0, place };
  });
}
