// Pictures on the page: their own colours, greys as light as these, and an ink line round the whole.
import { describe, expect, it } from 'vitest';
import { pathBounds } from '../base/index.ts';
import { type Figure, PICTURES, partsOf } from '../figures/index.ts';
import { contrastOf } from '../palette/index.ts';
import { drawFigure, THIN_OUTLINE_MM } from './figure-drawing.ts';
import { INK } from './ink.ts';
import type { SceneNode, Shape } from './scene.ts';

const CELL_MM = 20;

function shapesOf(node: SceneNode): readonly Shape[] {
  if (node.kind === 'text') return [];
  return node.kind === 'shape' ? [node] : node.children.flatMap(shapesOf);
}

function drawn(figure: Figure, print: 'colour' | 'grey'): readonly Shape[] {
  return shapesOf(drawFigure(figure, 0, 0, CELL_MM, { print }));
}

describe('a picture on the page', () => {
  it('shows each part in its own colour, after a line of ink round all', () => {
    for (const form of PICTURES) {
      const [line, ...parts] = drawn({ form }, 'colour');
      expect(line?.fill, form).toBe(undefined);
      expect(line?.stroke).toEqual({ colour: INK, widthMm: 2 * THIN_OUTLINE_MM });
      expect(parts.map(({ fill }) => fill)).toEqual(partsOf({ form }).map(({ fill }) => fill));
    }
  });

  it('shows greys alone in grey print, each as light as its colour', () => {
    for (const form of PICTURES) {
      const colours = drawn({ form }, 'colour').slice(1);
      drawn({ form }, 'grey')
        .slice(1)
        .forEach(({ fill = INK }, part) => {
          expect(fill, form).toMatch(/^#([0-9a-f]{2})\1\1$/);
          // A step of one in 255 changes a contrast by less than a twentieth of it.
          const ratio = contrastOf(fill, colours[part]?.fill ?? INK);
          expect(ratio, `${form} ${fill}`).toBeLessThan(1.05);
        });
    }
  });

  it('stays in its cell, however small or turned', () => {
    for (const form of PICTURES) {
      for (const figure of [{ form }, { form, turn: 45 }, { form, size: 0.3, turn: 200 }]) {
        const reach = (CELL_MM / 2) * (figure.size ?? 1);
        for (const { path, stroke } of drawn(figure, 'colour')) {
          const { left, right, top, bottom } = pathBounds(path);
          const far = Math.max(-left, right, -top, bottom) + (stroke?.widthMm ?? 0) / 2;
          expect(far, JSON.stringify(figure)).toBeLessThanOrEqual(reach + 1e-6);
        }
      }
    }
  });

  it('is one flat area with its line where it has a colour or is filled: its shadow', () => {
    expect(drawn({ form: 'picture-cat', fill: 'solid' }, 'colour').map(({ fill }) => fill)).toEqual(
      [INK],
    );
    const [, area] = drawn({ form: 'picture-cat', colour: 'blue' }, 'colour');
    expect(area?.fill).toMatch(/^#/);
    expect(drawn({ form: 'picture-cat', colour: 'blue' }, 'colour').length).toBe(2);
  });

  it('to save ink is white inside a line of each part’s own colour, parts with holes but filled', () => {
    for (const form of PICTURES) {
      const style = { print: 'colour', ink: 'saving' } as const;
      const [, ...shapes] = shapesOf(drawFigure({ form }, 0, 0, CELL_MM, style));
      const colours = shapes.flatMap(({ fill, stroke, rule }) =>
        rule === 'evenodd' ? [fill] : stroke ? [stroke.colour] : [],
      );
      expect(colours, form).toEqual(partsOf({ form }).map(({ fill }) => fill));
      const filled = shapes.filter(({ fill, rule }) => fill && rule === undefined);
      expect(new Set(filled.map(({ fill }) => fill))).toEqual(new Set(['#ffffff']));
    }
  });

  it('is said by its name', () => {
    expect(drawFigure({ form: 'picture-fir-tree' }, 0, 0, CELL_MM, { print: 'colour' }).alt).toBe(
      'fir tree',
    );
  });
});
