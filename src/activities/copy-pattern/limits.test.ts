// What cannot be asked for is refused, naming what can.
import { describe, expect, it } from 'vitest';
import type { Refusal } from '../../base/index.ts';
import { copyPattern } from './index.ts';

const COLOUR = { print: 'colour' } as const;

/** The refusals of step 8 (3 by 3, four dots of two colours without symmetry, two boxes) with changes. */
function refusalsOf(changes: Readonly<Record<string, unknown>>): readonly Refusal[] {
  const read = copyPattern.read(8, changes, COLOUR);
  return read.ok ? [] : read.refusals;
}

const DOTS = { content: 'dots', response: 'draw', kinds: 1, joined: false } as const;
const LINES = { content: 'lines', response: 'draw-line', kinds: 1, joined: false } as const;

describe('limits', () => {
  it('accepts the step as it is', () => {
    expect(refusalsOf({})).toEqual([]);
  });

  it.each([
    ['dots', 'sticker', 'draw'],
    ['lines', 'draw', 'draw-line'],
    ['filled-cells', 'sticker', 'colour-in'],
    ['colours', 'draw', 'sticker'],
  ])('R13 %s with the response %s are refused, naming %s', (content, response, nearest) => {
    const refusals = refusalsOf({ content, response });
    expect(refusals[0]).toMatchObject({
      code: 'not-a-choice',
      at: 'copy-pattern › response',
      got: response,
      nearest,
    });
  });

  it('R4 dots and lines of several colours are refused', () => {
    for (const base of [DOTS, LINES]) {
      expect(refusalsOf({ ...base, kinds: 3 })).toMatchObject([
        { code: 'out-of-range', at: 'copy-pattern › kinds', got: 3, min: 1, max: 1 },
      ]);
    }
  });

  it('R4 more kinds than elements are refused', () => {
    expect(refusalsOf({ elements: 2, kinds: 3, symmetry: 'any' })).toMatchObject([
      { at: 'copy-pattern › kinds', got: 3, min: 1, max: 2 },
    ]);
  });

  it('only lines can be slanted', () => {
    expect(refusalsOf({ slanted: true })).toMatchObject([
      { at: 'copy-pattern › slanted', got: true },
    ]);
    expect(refusalsOf({ ...LINES, slanted: true })).toEqual([]);
  });

  // Sources: no 2 × 2 two-valued square without symmetry (OEIS A054407); by hand for 3 × 3: one filled cell
  // lies on a mirror line wherever it is, and so does one empty cell.
  it('R12 no two-valued model of 2 by 2 is without symmetry: the other symmetries are named', () => {
    expect(refusalsOf({ ...DOTS, rows: 2, columns: 2, elements: 2 })).toMatchObject([
      {
        code: 'not-a-choice',
        at: 'copy-pattern › symmetry',
        got: 'none',
        choices: ['any', 'mirror'],
        nearest: 'any',
      },
    ]);
  });

  it('R12 without symmetry, 3 by 3 takes 2 to 7 elements', () => {
    for (const elements of [1, 8, 20]) {
      expect(refusalsOf({ ...DOTS, elements })).toMatchObject([
        { code: 'out-of-range', at: 'copy-pattern › elements', got: elements, min: 2, max: 7 },
      ]);
    }
  });

  it('R12 with numbers of elements that have gaps each of them is named', () => {
    // On 3 by 4 cells a half turn moves every cell, so that turned models have even numbers.
    const refusals = refusalsOf({ ...DOTS, columns: 4, symmetry: 'turn', elements: 5 });
    expect(refusals).toMatchObject([
      {
        code: 'not-a-choice',
        at: 'copy-pattern › elements',
        got: 5,
        choices: ['2', '4', '6', '8', '10'],
        nearest: '4',
      },
    ]);
  });

  it('R3 a model that would be alike everywhere is refused', () => {
    expect(refusalsOf({ ...DOTS, symmetry: 'any', elements: 9 })).toMatchObject([
      { min: 1, max: 8 },
    ]);
    expect(refusalsOf({ symmetry: 'any', elements: 9, kinds: 2 })).toEqual([]);
    expect(refusalsOf({ ...LINES, symmetry: 'any', elements: 12 })).toMatchObject([
      { min: 1, max: 11 },
    ]);
  });

  it('R8 a single element cannot be given', () => {
    expect(refusalsOf({ elements: 1, kinds: 1, symmetry: 'any', givens: 'some' })).toMatchObject([
      { code: 'not-a-choice', at: 'copy-pattern › givens', got: 'some', choices: ['none'] },
    ]);
  });

  it('R8 more boxes than ways to begin them are refused', () => {
    const three = { elements: 3, symmetry: 'any', givens: 'most' } as const;
    expect(refusalsOf({ ...three, boxes: 3 })).toEqual([]);
    expect(refusalsOf({ ...three, boxes: 4 })).toMatchObject([
      { code: 'out-of-range', at: 'copy-pattern › boxes', got: 4, min: 1, max: 3 },
    ]);
    expect(refusalsOf({ ...three, givens: 'none', boxes: 6 })).toEqual([]);
  });

  it('the range that a refusal names is accepted, and what lies beside it is not', () => {
    for (const rows of [2, 3]) {
      for (const symmetry of ['any', 'mirror', 'turn', 'none']) {
        const base = { ...DOTS, rows, columns: 3, symmetry };
        const [refusal] = refusalsOf({ ...base, elements: 25 });
        const accepted = Array.from({ length: 25 }, (_, index) => index + 1).filter(
          (elements) => refusalsOf({ ...base, elements }).length === 0,
        );
        expect(accepted.map(String)).toEqual(allowedBy(refusal));
      }
    }
  });
});

function allowedBy(refusal: Refusal | undefined): readonly string[] {
  if (refusal?.code === 'not-a-choice') return refusal.choices;
  if (refusal?.code !== 'out-of-range')
    throw new Error('expected a refusal that names what is allowed');
  const { min, max } = refusal;
  return Array.from({ length: max - min + 1 }, (_, index) => String(min + index));
}
