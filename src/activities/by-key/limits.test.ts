// What is refused, and whether what a refusal offers instead is really possible.
import { describe, expect, test } from 'vitest';
import { saidIn } from '../../../tests/said.ts';
import { type Refusal, randomFrom } from '../../base/index.ts';
import { HOME_PAPERS, sheetArea } from '../../page/index.ts';
import { room } from './draw.ts';
import { limits } from './limits.ts';
import type { Parameters } from './parameters.ts';
import { anyValues, COLOUR, GREY, goodValues, made, seeds, valuesAt } from './tasks-to-test.ts';

const nameOf = (refusal: Refusal) => refusal.at.replace('by-key › ', '') as keyof Parameters;

/** The values with what the refusal offers in place of what it refuses. */
function offered(values: Parameters, refusal: Refusal): Parameters {
  const name = nameOf(refusal);
  if (refusal.code === 'not-a-choice') {
    const { nearest } = refusal;
    return { ...values, [name]: nearest === 'true' ? true : nearest };
  }
  if (refusal.code !== 'out-of-range') throw new Error(`unexpected ${refusal.code}`);
  const got = values[name] as number;
  return { ...values, [name]: Math.min(refusal.max, Math.max(refusal.min, got)) };
}

describe('R14 what does not go together', () => {
  test('R14 a refusal names the value, gives a reason, and offers what is possible', () => {
    for (const style of [COLOUR, GREY]) {
      for (const seed of seeds(400)) {
        const values = anyValues(randomFrom(seed));
        for (const refusal of limits(values, style)) {
          const name = nameOf(refusal);
          expect('got' in refusal && refusal.got, `seed ${seed}`).toBe(values[name]);
          expect(saidIn(refusal).because, `seed ${seed}`).toMatch(/\w+ \w+/);
          const again = limits(offered(values, refusal), style).map(nameOf);
          expect(again, `seed ${seed} ${JSON.stringify(values)} ${name}`).not.toContain(name);
        }
      }
    }
  });

  test('R14 following the offers always ends with values that are possible', () => {
    for (const seed of seeds(400)) {
      let values = anyValues(randomFrom(seed));
      for (let round = 0; round < 8; round++) {
        const [refusal] = limits(values, COLOUR);
        if (refusal) values = offered(values, refusal);
      }
      expect(limits(values, COLOUR), `seed ${seed}`).toEqual([]);
    }
  });

  test.each([
    [{ content: 'colours', response: 'ring' }, 'response'],
    [{ content: 'shapes-and-colours', response: 'sticker', entries: 4 }, 'response'],
    [{ content: 'signs', response: 'sign' }, 'response'],
    [{ content: 'shapes', response: 'ring', vary: 'colour' }, 'vary'],
    [{ content: 'shapes', response: 'sign', vary: 'form' }, 'vary'],
    [{ content: 'sizes', response: 'ring', vary: 'size' }, 'vary'],
    [{ content: 'shapes-and-sizes', response: 'ring', entries: 2 }, 'entries'],
    [{ content: 'directions', response: 'ring', entries: 4 }, 'entries'],
    [{ content: 'sizes', response: 'ring', entries: 4 }, 'entries'],
    [{ content: 'shapes', response: 'fill', entries: 6 }, 'entries'],
    [{ content: 'shapes', response: 'sticker', items: 24, stickerMm: 20 }, 'items'],
    [{ content: 'shapes', response: 'ring', balanced: false }, 'balanced'],
  ] as const)('R14 %j is refused at %s', (changes, name) => {
    expect(limits(valuesAt(1, changes), COLOUR).map(nameOf)).toEqual([name]);
  });

  test('R14 colours that vary are refused for letters where colours are printed as letters', () => {
    const values = valuesAt(8, { content: 'capitals', vary: 'colour' });
    expect(limits(values, COLOUR)).toEqual([]);
    expect(limits(values, GREY).map(nameOf)).toEqual(['vary']);
  });

  test('R14 every task that is not refused has room on an upright page of every paper', () => {
    for (const [seed, values] of goodValues(60, COLOUR)) {
      const { widthMm, heightMm } = room(made(values, seed).printed);
      for (const paper of HOME_PAPERS) {
        const { width, height } = sheetArea(paper, 'portrait');
        expect(widthMm, `seed ${seed}`).toBeLessThanOrEqual(width);
        expect(heightMm, `seed ${seed}`).toBeLessThanOrEqual(height);
      }
    }
  });
});
