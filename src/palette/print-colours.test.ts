// Promises of the print palette as a whole.
import { describe, expect, it } from 'vitest';
import { COLOUR_NAMES, FIGURE_COLOURS } from './colour-names.ts';
import {
  contrastOf,
  differenceDe00,
  greyOf,
  type Hex,
  hexOf,
  MODELS,
  worstDifferenceDe00,
} from './index.ts';
import { asSeen } from './seen-to-test.ts';

const pairs = COLOUR_NAMES.flatMap((one, index) =>
  COLOUR_NAMES.slice(index + 1).map((other) => [one, other] as const),
);

describe('print palette', () => {
  it.each(COLOUR_NAMES)('%s is a colour of 8 bits a channel', (name) => {
    expect(hexOf(name)).toMatch(/^#[0-9a-f]{6}$/);
  });

  it('differs by at least 11 between any two, white included, to every sight served', () => {
    for (const [one, other] of pairs) {
      expect(worstDifferenceDe00(one, other), `${one}, ${other}`).toBeGreaterThanOrEqual(11);
    }
  });

  it('differs by at least 25 between any two to normal sight', () => {
    for (const [one, other] of pairs) {
      expect(differenceDe00(hexOf(one), hexOf(other)), `${one}, ${other}`).toBeGreaterThan(25);
    }
  });

  it('keeps grey free of any tint and white as the paper', () => {
    expect(hexOf('grey')).toMatch(/^#(..)\1\1$/);
    expect(hexOf('white')).toBe('#ffffff');
  });

  it('leaves white out of the colours of figures, and nothing else', () => {
    expect([...FIGURE_COLOURS, 'white']).toEqual([...COLOUR_NAMES]);
  });
});

describe('greyOf', () => {
  // One step of 8 bits moves the contrast by less than 1.02 anywhere on the scale.
  it.each(COLOUR_NAMES)('%s becomes a grey of equal luminance', (name) => {
    expect(greyOf(name)).toMatch(/^#(..)\1\1$/);
    expect(contrastOf(greyOf(name), hexOf(name))).toBeLessThan(1.02);
  });

  it.each(['grey', 'black', 'white'] as const)('%s, a grey already, stays as it is', (name) => {
    expect(greyOf(name)).toBe(hexOf(name));
  });
});

describe('a colour as it is seen', () => {
  const greys = Array.from({ length: 256 }, (_, level): Hex => {
    const channel = level.toString(16).padStart(2, '0');
    return `#${channel}${channel}${channel}`;
  });

  it.each(MODELS)('leaves every grey as it is to protan and deutan sight by %s', (model) => {
    for (const grey of greys) {
      expect(asSeen(grey, 'protan', model)).toBe(grey);
      expect(asSeen(grey, 'deutan', model)).toBe(grey);
    }
  });

  it('changes nothing for normal sight', () => {
    for (const name of COLOUR_NAMES) expect(asSeen(hexOf(name), 'normal')).toBe(hexOf(name));
  });

  it('throws where a model does not speak about a sight', () => {
    expect(() => asSeen('#ff0000', 'tritan', 'vienot-light')).toThrow('tritan');
  });

  it.each(['#fff', '#12345g', '#12345678'] as const)('throws for %s, which is no colour', (hex) => {
    expect(() => asSeen(hex, 'normal')).toThrow(hex);
  });
});
