// What a pack from codes promises: the very sheets, in the order of the codes, or every code that is none.
import { describe, expect, it } from 'vitest';
import type { ActivityId } from '../activities/index.ts';
import { packOfCodes } from './pack-of-codes.ts';
import { makeSheet, type Sheet } from './sheet.ts';
import { DEFAULT_PAGE } from './sheet-spec.ts';

const [BOXES, KEY, ROW] = [
  sheetOf('in-every-box', 1),
  sheetOf('by-key', 2),
  sheetOf('continue-row', 3),
];

function sheetOf(activity: ActivityId, seed: number): Sheet {
  const made = makeSheet({
    ...{ activity, step: 2, values: {}, seed, tasks: 2, page: DEFAULT_PAGE },
    print: 'grey',
  });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value;
}

function placesOf(codes: readonly string[]): readonly (readonly [string, string])[] {
  const pack = packOfCodes(codes);
  return pack.ok ? [] : pack.refusals.map(({ at, code }) => [at, code] as const);
}

describe('a pack from codes', () => {
  it('has the very sheets in the order of the codes, each as often as it is listed', () => {
    const sheets = [ROW, BOXES, KEY, BOXES];
    const told: (readonly number[])[] = [];
    const pack = packOfCodes(
      sheets.map(({ code }) => code.toLowerCase()),
      (made, all) => told.push([made, all]),
    );
    expect(pack).toEqual({ ok: true, value: { sheets } });
    expect(told).toEqual([0, 1, 2, 3, 4].map((made) => [made, 4]));
  });

  it('names every code that is none, by its place where there are several, and that there is none', () => {
    const wrong = `${KEY.code.slice(0, -1)}${KEY.code.endsWith('2') ? '3' : '2'}`;
    expect(placesOf([BOXES.code, wrong, 'e'])).toEqual([
      ['sheet 2 › sheet code', 'wrong-check'],
      ['sheet 3 › sheet code', 'wrong-check'],
    ]);
    expect(placesOf([wrong])).toEqual([['sheet code', 'wrong-check']]);
    expect(placesOf([])).toEqual([['sheet codes', 'missing']]);
  });
});
