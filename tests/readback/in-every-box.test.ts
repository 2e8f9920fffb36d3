// Reads printed sheets of in-every-box back from pixels: boxes, colours, the answer.
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../src/figures/index.ts';
import { hexOf } from '../../src/palette/index.ts';
import { testSeed } from '../seed.ts';
import { tasksOf } from './boxes.ts';
import { lookAt } from './looks.ts';
import { FROM_BOTH_SIDES, IN_BOTH_INKS, type PrintedSheet, printSheets } from './printed-sheets.ts';

const SHEETS = 80;
const DPI = 80;

describe('in-every-box', () => {
  test.each([...IN_BOTH_INKS, ...FROM_BOTH_SIDES.slice(1)])(
    `${SHEETS} sheets, %s, give from their pixels alone the answers of their keys`,
    async (_, way) => {
      const seed = testSeed('in-every-box read back');
      const wanted = Array.from({ length: SHEETS }, (_, index) => ({
        activity: 'in-every-box' as const,
        step: 1 + (index % 15),
        seed: seed + index,
        ...way,
      }));
      for (const sheet of await printSheets(wanted, DPI)) {
        const meant = sheet.tasks.map((task) => keyColours(task.answer as { figures: Figure[] }));
        expect(readAnswers(sheet), JSON.stringify(sheet.wanted)).toEqual(meant.sort());
      }
    },
  );
});

function keyColours({ figures }: { figures: readonly Figure[] }): string {
  return figures
    .map(({ colour = 'black' }) => hexOf(colour))
    .sort()
    .join(' ');
}

/** The colours that are in every box of each group of boxes, the groups in any order. */
function readAnswers({ raster }: PrintedSheet): string[] {
  return tasksOf(raster)
    .map((task) => {
      const boxes = task
        .filter(({ inside }) => inside.length > 0)
        .map(({ inside }) => new Set(inside.map((dot) => lookAt(raster, dot).colour)));
      return [...(boxes[0] ?? [])].filter((colour) => boxes.every((box) => box.has(colour)));
    })
    .map((shared) => shared.sort().join(' '))
    .sort();
}
