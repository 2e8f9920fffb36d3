// Figures from files: what is taken and what is refused.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COLOUR_NAMES } from '../palette/index.ts';
import { FILLS } from './figure.ts';
import { figureSchema } from './figure-schema.ts';
import { FORMS, isSign } from './form-names.ts';

const reads = (value: unknown) => figureSchema.safeParse(value).success;

describe('figureSchema', () => {
  it('takes a figure of every form', () => {
    for (const form of FORMS) {
      expect(reads(form === 'dots' ? { form, count: 3 } : { form }), form).toBe(true);
    }
  });

  it('takes every combination of values within their ranges and gives it back unchanged', () => {
    const figures = fc.record(
      {
        form: fc.constantFrom(...FORMS.filter((form) => form !== 'dots' && !isSign(form))),
        colour: fc.constantFrom(...COLOUR_NAMES),
        size: fc.double({ min: 0.2, max: 1, noNaN: true }),
        turn: fc.integer({ min: 0, max: 359 }),
        mirrored: fc.boolean(),
        fill: fc.constantFrom(...FILLS),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(figures, (figure) => {
        expect(figureSchema.parse(figure)).toEqual(figure);
      }),
    );
  });

  it('refuses a form that is no text before anything looks at it as one', () => {
    const looking = figureSchema.refine(({ form }) => !form?.startsWith('picture-'));
    for (const form of [7, {}, [], true, null])
      expect(looking.safeParse({ form }).success).toBe(false);
  });

  const refused: readonly (readonly [string, unknown])[] = [
    ['an unknown field', { form: 'circle', hue: 3 }],
    ['an unknown form', { form: 'blob' }],
    ['a letter that is none', { form: 'capital-AA' }],
    ['a form of the prototype', { form: 'constructor' }],
    ['an unknown colour', { colour: 'teal' }],
    ['no size', { size: 0 }],
    ['too small a size', { size: 0.1 }],
    ['too large a size', { size: 1.01 }],
    ['a size that is no number', { size: Number.NaN }],
    ['a size in words', { size: '1' }],
    ['a full turn', { turn: 360 }],
    ['a turn back', { turn: -90 }],
    ['a turn between degrees', { turn: 0.5 }],
    ['an infinite turn', { turn: Number.POSITIVE_INFINITY }],
    ['dots without a count', { form: 'dots' }],
    ['seven dots', { form: 'dots', count: 7 }],
    ['a count for a star', { form: 'star', count: 2 }],
    ['a layout for a star', { form: 'star', layout: 'row' }],
    ['an unknown layout', { form: 'dots', count: 2, layout: 'ring' }],
    ['a texture on dots', { form: 'dots', count: 2, fill: 'waves' }],
    ['a texture on a sign', { form: 'sign-tick', fill: 'waves' }],
    ['a list', []],
    ['nothing', null],
    [
      'a field that stands for the prototype',
      JSON.parse('{"__proto__": {"form": "circle"}, "x": 1}'),
    ],
  ];
  it.each(refused)('refuses %s', (_, value) => {
    expect(reads(value)).toBe(false);
  });

  it('says where the fault is', () => {
    const { error } = figureSchema.safeParse({ form: 'star', count: 2 });
    expect(error?.issues.map((issue) => issue.path)).toEqual([['count']]);
  });
});
