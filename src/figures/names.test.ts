// What figures are called.
import { describe, expect, it } from 'vitest';
import { COLOUR_NAMES } from '../palette/index.ts';
import { DOT_LAYOUTS, FILLS, type Figure } from './figure.ts';
import { FORMS } from './form-names.ts';
import { colourName, figureName, fillName, formName } from './names.ts';

describe('figureName', () => {
  const names: readonly (readonly [string, Figure])[] = [
    ['red circle', { colour: 'red' }],
    ['red heart', { form: 'heart', colour: 'red' }],
    ['triangle', { form: 'triangle' }],
    ['triangle pointing up', { form: 'triangle', turn: 0 }],
    ['triangle pointing left', { form: 'triangle', turn: 270 }],
    ['triangle pointing down', { form: 'triangle', turn: 180 }],
    ['arrow pointing up', { form: 'arrow' }],
    ['arrow pointing right', { form: 'arrow', turn: 90 }],
    ['arrow pointing right', { form: 'arrow', turn: 90, mirrored: true }],
    ['arrow pointing left', { form: 'arrow', turn: 270 }],
    ['crescent open to the left', { form: 'crescent', mirrored: true }],
    ['half circle with its flat side up', { form: 'half-circle', turn: 180 }],
    ['heart upside down', { form: 'heart', turn: 180 }],
    ['square', { form: 'square', turn: 90 }],
    ['square on a corner', { form: 'square', turn: 45 }],
    ['pentagon turned 10 degrees', { form: 'pentagon', turn: 10 }],
    ['small b', { form: 'small-b' }],
    ['capital B', { form: 'capital-B' }],
    ['mirrored small b', { form: 'small-b', mirrored: true }],
    ['numeral 3', { form: 'numeral-3' }],
    ['ring', { form: 'sign-ring' }],
    ['four dots as on a die', { form: 'dots', count: 4 }],
    ['three blue dots in a row', { form: 'dots', count: 3, layout: 'row', colour: 'blue' }],
    ['one dot', { form: 'dots', count: 1, layout: 'scattered-1' }],
    [
      'little green star with upright stripes',
      { form: 'star', size: 0.4, colour: 'green', fill: 'upright-stripes' },
    ],
    ['big star in outline', { form: 'star', size: 1, fill: 'outline' }],
  ];
  it.each(names)('is "%s"', (name, figure) => {
    expect(figureName(figure)).toBe(name);
  });

  it('tells all forms, colours, fills and layouts apart, in words of Latin letters', () => {
    const figures: readonly Figure[] = [
      ...FORMS.filter((form) => form !== 'dots').map((form) => ({ form })),
      ...COLOUR_NAMES.map((colour) => ({ form: 'star' as const, colour })),
      ...FILLS.slice(1).map((fill) => ({ form: 'star' as const, fill })),
      ...DOT_LAYOUTS.flatMap((layout) =>
        [2, 3, 4, 5, 6].map((count) => ({ form: 'dots' as const, count, layout })),
      ),
      ...[0, 45, 90, 135, 180, 225, 270, 315].map((turn) => ({ form: 'triangle' as const, turn })),
    ];
    const said = figures.map((figure) => figureName(figure));
    expect(new Set(said).size).toBe(figures.length);
    for (const name of said) expect(name).toMatch(/^[A-Za-z0-9Ññ ]+$/);
  });
});

describe('the names of parts', () => {
  it('are plain words', () => {
    expect(colourName('grey')).toBe('grey');
    expect(formName('half-circle')).toBe('half circle');
    expect(fillName('slanted-stripes')).toBe('with slanted stripes');
  });
});
