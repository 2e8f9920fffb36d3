// What is refused, against an independent list of what can be made; and the ladder for every content.
import { describe, expect, test } from 'vitest';
import { randomFrom, told } from '../../base/index.ts';
import { poolSize } from './contents.ts';
import { inEveryBox } from './index.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type BoxValues, PARAMETERS } from './task.ts';

const COLOUR = { print: 'colour' } as const;
const GREY = { print: 'grey' } as const;
const CONTENTS = PARAMETERS.content.values;
/** Contents with six different figures or fewer, which do not fill every step. */
const SMALL_POOLS: readonly string[] = [
  'dot-quantities',
  'sizes',
  'directions',
  'devanagari-numerals',
  'arabic-indic-numerals',
];
/** By measuring pages: of more boxes some task is wider than an upright sheet. */
const MOST_BOXES: Readonly<Record<string, number>> = { sizes: 4, directions: 5 };
const [FIRST] = LADDER.map((step) => step.values);

function valuesWith(changes: Partial<BoxValues>): BoxValues {
  if (!FIRST) throw new Error('the ladder has no first step');
  return { ...FIRST, ...changes };
}

/** Whether some number of rest figures, each in 1 to boxes − 2 boxes, takes exactly the places left. */
function canBeMade({ boxes, figures, shared, nearMisses, content, layout }: BoxValues): boolean {
  if (boxes > (MOST_BOXES[content] ?? 6) || (layout === 'loose' && figures < 3)) return false;
  const left = boxes * (figures - shared) - nearMisses * (boxes - 1);
  if (shared >= figures || left < 0) return false;
  for (let rest = 0; rest <= poolSize(content, COLOUR) - shared - nearMisses; rest++) {
    if (rest <= left && left <= rest * (boxes - 2)) return true;
  }
  return false;
}

function* allNumbers(): Generator<BoxValues> {
  for (const content of [
    'colours',
    'dot-quantities',
    'directions',
    'shapes-and-colours',
  ] as const) {
    for (let boxes = 2; boxes <= 6; boxes++) {
      for (let figures = 2; figures <= 8; figures++) {
        for (let shared = 1; shared <= 3; shared++) {
          for (let nearMisses = 0; nearMisses <= 14; nearMisses++) {
            yield valuesWith({ content, boxes, figures, shared, nearMisses });
          }
        }
      }
    }
  }
}

describe('R11 refusals', () => {
  test('name exactly the numbers that no task has, and all others give a task', () => {
    let made = 0;
    for (const values of allNumbers()) {
      const isRefused = limitsOf(values, COLOUR).length > 0;
      expect(isRefused, JSON.stringify(values)).toBe(!canBeMade(values));
      if (isRefused) continue;
      inEveryBox.generate(values, randomFrom(made), COLOUR);
      made++;
    }
    expect(made).toBeGreaterThan(300);
  });

  test('give a range whose every number would do, and none outside it', () => {
    for (const values of allNumbers()) {
      const [refusal] = limitsOf(values, COLOUR);
      if (refusal?.code !== 'out-of-range') continue;
      const name = refusal.at.split(' › ')[1];
      const where = JSON.stringify(values);
      expect(refusal.at).toMatch(/^in-every-box › (boxes|shared|figures|nearMisses)$/);
      expect(refusal.min, where).toBeLessThanOrEqual(refusal.max);
      expect(refusal.got, where).toBe(values[name as keyof BoxValues]);
      if (name !== 'nearMisses') continue;
      for (let count = 0; count <= 14; count++) {
        const fits = count >= refusal.min && count <= refusal.max;
        expect(canBeMade({ ...values, nearMisses: count }), `${where}, ${count}`).toBe(fits);
      }
    }
  });

  test('R2 with two boxes name the one number of near misses that there can be', () => {
    const read = inEveryBox.read(1, { boxes: 2, figures: 3, nearMisses: 1 }, COLOUR);
    expect(read).toEqual({
      ok: false,
      refusals: [
        {
          code: 'out-of-range',
          at: 'in-every-box › nearMisses',
          got: 1,
          min: 4,
          max: 4,
          because: told('in-every-box', 'no.two-boxes'),
        },
      ],
    });
  });

  test('R8 do not let all figures of a box be shared', () => {
    const read = inEveryBox.read(1, { figures: 3, shared: 3 }, COLOUR);
    expect(read.ok ? [] : read.refusals).toMatchObject([
      { code: 'out-of-range', at: 'in-every-box › shared', got: 3, min: 1, max: 2 },
    ]);
  });

  test('name the most figures that a small pool can fill', () => {
    // Two boxes share 1 of 6 quantities; the other 5 fill two places in each box and leave one over.
    const values = { content: 'dot-quantities', boxes: 2, figures: 4, nearMisses: 6 };
    const read = inEveryBox.read(1, values, COLOUR);
    expect(read.ok ? [] : read.refusals).toMatchObject([
      { code: 'out-of-range', at: 'in-every-box › figures', got: 4, min: 2, max: 3 },
    ]);
  });

  test('R9 allow stickers for colours in coloured print alone, and name the nearest response', () => {
    for (const content of CONTENTS) {
      for (const style of [COLOUR, GREY]) {
        const values = valuesWith({ content, response: 'sticker', nearMisses: 1 });
        const refusals = limitsOf(values, style);
        const isFine = content === 'colours' && style === COLOUR;
        expect(refusals, `${content}, ${style.print}`).toMatchObject(
          isFine
            ? []
            : [
                {
                  code: 'not-a-choice',
                  at: 'in-every-box › response',
                  got: 'sticker',
                  choices: ['point', 'ring'],
                  nearest: 'ring',
                },
              ],
        );
      }
    }
  });
});

describe('the ladder', () => {
  test('starts at two colours in three boxes with one shared, then three, then two shared among four', () => {
    const numbers = LADDER.map(({ values }) => [values.boxes, values.figures, values.shared]);
    expect(numbers[0]).toEqual([3, 2, 1]);
    expect(numbers[1]).toEqual([3, 3, 1]);
    expect(numbers.findIndex(([, figures, shared]) => figures === 4 && shared === 2)).toBe(5);
    expect(LADDER.length).toBeGreaterThanOrEqual(10);
  });

  test.each(CONTENTS)(
    'gives proven tasks of %s at every step that its pool has figures for',
    (content) => {
      for (const [index, { values }] of LADDER.entries()) {
        const changed = { ...values, content };
        const read = inEveryBox.read(index + 1, { content }, COLOUR);
        expect(read.ok, `step ${index + 1}`).toBe(canBeMade(changed));
        if (!SMALL_POOLS.includes(content)) expect(read.ok, `step ${index + 1}`).toBe(true);
        if (!read.ok) continue;
        for (let seed = 0; seed < 4; seed++) {
          const task = inEveryBox.generate(read.value, randomFrom(seed), COLOUR);
          expect(inEveryBox.prove(task), `step ${index + 1}, seed ${seed}`).toEqual({
            proven: true,
          });
        }
      }
    },
  );

  test('has the fewest steps that six quantities cannot fill', () => {
    const refused = LADDER.filter(
      ({ values }) => limitsOf({ ...values, content: 'dot-quantities' }, COLOUR).length > 0,
    );
    expect(refused.length).toBeLessThanOrEqual(LADDER.length / 3);
  });
});
