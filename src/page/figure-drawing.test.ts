// Figures on the page: inside their cell, in the right inks, and marked in grey print.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Bounds, flattenPath, type Path, pathBounds } from '../base/index.ts';
import { DOT_LAYOUTS, FILLS, type Figure, FORMS, isSign, SHAPES } from '../figures/index.ts';
import { COLOUR_NAMES, contrastOf, greyOf, hexOf } from '../palette/index.ts';
import { drawFigure, OUTLINE_MM } from './figure-drawing.ts';
import { INK, WHITE } from './ink.ts';
import type { PrintStyle } from './print-style.ts';
import type { Group, SceneNode, Shape } from './scene.ts';

const COLOUR = { print: 'colour' } as const;
const GREY = { print: 'grey' } as const;
const SAVING = { print: 'colour', ink: 'saving' } as const;
const SAVING_GREY = { print: 'grey', ink: 'saving' } as const;

/** All shapes of a drawing with the clips that they are under. */
function shapesOf(
  node: SceneNode,
  clips: readonly Path[] = [],
): readonly (readonly [Shape, readonly Path[]])[] {
  if (node.kind === 'text') return [];
  if (node.kind === 'shape') return [[node, clips]];
  const under = node.clip ? [...clips, node.clip] : clips;
  return node.children.flatMap((child) => shapesOf(child, under));
}

/** The rectangle that can be inked: a clipped shape counts by its clip. */
function inkBounds([{ path, stroke }, clips]: readonly [Shape, readonly Path[]]): Bounds {
  const clip = clips.at(-1);
  if (clip) return pathBounds(clip);
  const { left, top, right, bottom } = pathBounds(path);
  const reach = (stroke?.widthMm ?? 0) / 2;
  return { left: left - reach, top: top - reach, right: right + reach, bottom: bottom + reach };
}

function partOf(drawing: Group, role: string): Group | undefined {
  return drawing.children.find(
    (node): node is Group => node.kind === 'group' && node.role === role,
  );
}

function paintsOf(drawing: Group): ReadonlySet<string> {
  const shapes = shapesOf(drawing).map(([shape]) => shape);
  return new Set(
    shapes
      .flatMap(({ fill, stroke }) => [fill, stroke?.colour])
      .filter((paint) => paint !== undefined),
  );
}

const plainForm = fc.constantFrom(...FORMS.filter((form) => form !== 'dots'));
const look = {
  colour: fc.option(fc.constantFrom(...COLOUR_NAMES), { nil: undefined }),
  size: fc.constantFrom(0.2, 0.4, 0.62, 0.8, 1),
  turn: fc.integer({ min: 0, max: 359 }),
  mirrored: fc.boolean(),
};
const figures: fc.Arbitrary<Figure> = fc.oneof(
  fc
    .record({ form: plainForm, fill: fc.constantFrom(...FILLS), ...look })
    .map((figure): Figure => (isSign(figure.form) ? { ...figure, fill: 'solid' } : figure)),
  fc.record({
    form: fc.constant('dots' as const),
    count: fc.integer({ min: 1, max: 6 }),
    layout: fc.constantFrom(...DOT_LAYOUTS),
    ...look,
  }),
);

describe('drawFigure', () => {
  it('puts all ink of any figure inside its cell, in colour and in grey', () => {
    fc.assert(
      fc.property(
        figures,
        fc.constantFrom<PrintStyle>(COLOUR, GREY, SAVING, SAVING_GREY),
        fc.constantFrom(10, 14, 22),
        (figure, style, cellMm) => {
          const drawing = drawFigure(figure, 50, 80, cellMm, style);
          for (const shape of shapesOf(drawing)) {
            const { left, top, right, bottom } = inkBounds(shape);
            const furthest = Math.max(50 - left, right - 50, 80 - top, bottom - 80);
            expect(furthest).toBeLessThanOrEqual(cellMm / 2 + 0.01);
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  it('is one picture with the name of the figure', () => {
    const drawing = drawFigure({ form: 'heart', colour: 'red' }, 10, 10, 14, COLOUR);
    expect(drawing.role).toBe('figure');
    expect(drawing.alt).toBe('red heart');
  });

  it('gives every coloured shape an ink line of 0.6 mm, and fills it with the colour of its name', () => {
    for (const form of SHAPES) {
      const drawing = drawFigure({ form, colour: 'yellow' }, 10, 10, 14, COLOUR);
      expect(paintsOf(drawing)).toEqual(new Set([hexOf('yellow'), INK]));
      const lines = shapesOf(drawing).flatMap(([{ stroke }]) => (stroke ? [stroke] : []));
      expect(lines).toEqual([expect.objectContaining({ colour: INK, widthMm: OUTLINE_MM })]);
    }
  });

  it('draws a figure without colour in ink alone', () => {
    for (const form of ['star', 'capital-A', 'sign-tick'] as const) {
      expect(paintsOf(drawFigure({ form }, 10, 10, 14, COLOUR))).toEqual(new Set([INK]));
    }
  });

  it('keeps the ratio of sizes: half the size is half as wide, line included', () => {
    for (const style of [COLOUR, GREY]) {
      for (const form of ['square', 'crescent', 'capital-H', 'dots', 'sign-plus'] as const) {
        const widthAt = (size: number) => {
          const figure = {
            form,
            colour: 'red',
            size,
            ...(form === 'dots' ? { count: 4 } : {}),
          } as const;
          const body = drawFigure(figure, 0, 0, 30, style).children.filter(
            (node) => !(node.kind === 'group' && node.role === 'mark'),
          );
          const all = body.flatMap((node) => shapesOf(node)).map(inkBounds);
          return (
            Math.max(...all.map(({ right }) => right)) - Math.min(...all.map(({ left }) => left))
          );
        };
        expect(widthAt(0.5) / widthAt(1), `${form} ${style.print}`).toBeCloseTo(0.5, 1);
      }
    }
  });

  it('cuts a texture off at the outline and shows it on the colour in ink or white, whichever shows better', () => {
    for (const colour of COLOUR_NAMES) {
      const drawing = drawFigure({ form: 'circle', colour, fill: 'checks' }, 10, 10, 14, COLOUR);
      const marks = shapesOf(drawing).find(([, clips]) => clips.length > 0)?.[0];
      const ground = hexOf(colour);
      expect(contrastOf(marks?.fill ?? WHITE, ground), colour).toBeGreaterThan(2.9);
    }
  });
});

describe('drawFigure in grey print', () => {
  it('uses no colour but greys and ink, and marks every coloured figure', () => {
    for (const colour of COLOUR_NAMES) {
      const drawing = drawFigure({ form: 'star', colour }, 10, 10, 14, GREY);
      for (const paint of paintsOf(drawing)) expect([INK, WHITE, greyOf(colour)]).toContain(paint);
      expect(partOf(drawing, 'mark'), colour).toBeDefined();
    }
  });

  it('marks nothing in coloured print and nothing without a colour', () => {
    expect(
      partOf(drawFigure({ form: 'star', colour: 'red' }, 10, 10, 14, COLOUR), 'mark'),
    ).toBeUndefined();
    expect(partOf(drawFigure({ form: 'star' }, 10, 10, 14, GREY), 'mark')).toBeUndefined();
  });

  it('keeps the mark of every full-sized shape inside the shape, however it is turned', () => {
    for (const form of SHAPES) {
      for (const [index, colour] of COLOUR_NAMES.entries()) {
        const turn = (index * 45) % 360;
        const drawing = drawFigure({ form, turn, colour }, 0, 0, 14, GREY);
        const body = drawing.children.find((node): node is Shape => node.kind === 'shape');
        const mark = partOf(drawing, 'mark');
        if (!body || !mark) throw new Error(`no body or no mark: ${form}`);
        const polygon = flattenPath(body.path, 32)[0] ?? [];
        for (const [{ path }] of shapesOf(mark)) {
          for (const { x, y } of flattenPath(path, 4).flat()) {
            const winds = polygon.filter((start, index) => {
              const end = polygon[(index + 1) % polygon.length] ?? start;
              if (start.y <= y === end.y <= y) return false;
              return start.x + ((y - start.y) / (end.y - start.y)) * (end.x - start.x) > x;
            });
            expect(winds.length % 2, `${form} turned ${turn}`).toBe(1);
          }
        }
      }
    }
  });

  it('shows the mark at a contrast of at least 4 on its ground', () => {
    for (const colour of COLOUR_NAMES) {
      const drawing = drawFigure({ form: 'circle', colour }, 0, 0, 14, GREY);
      const mark = partOf(drawing, 'mark');
      const ink = mark && shapesOf(mark)[0]?.[0].fill;
      expect(contrastOf(ink ?? WHITE, greyOf(colour)), colour).toBeGreaterThan(4);
    }
  });

  it('keeps a mark beside a thin or small figure at least 0.3 mm clear of it', () => {
    const tight: readonly Figure[] = [
      { form: 'capital-W', colour: 'grey' },
      { form: 'small-g', colour: 'grey' },
      { form: 'sign-ring', colour: 'grey' },
      { form: 'sign-square', colour: 'grey' },
      { form: 'dots', count: 6, layout: 'row', colour: 'grey' },
      { form: 'dots', count: 6, layout: 'dice', colour: 'grey' },
      ...SHAPES.flatMap((form) =>
        [0, 45, 90, 135].map((turn): Figure => ({ form, turn, size: 0.6, colour: 'grey' })),
      ),
    ];
    for (const figure of tight) {
      const drawing = drawFigure(figure, 0, 0, 14, GREY);
      const mark = partOf(drawing, 'mark');
      if (!mark) throw new Error('no mark');
      const markBox = shapesOf(mark).map(inkBounds)[0] as Bounds;
      const isBeside = markBox.left > 0 && markBox.top > 0;
      const body = drawing.children
        .filter((node) => node !== mark)
        .flatMap((node) => shapesOf(node));
      const points = body.flatMap(([{ path }]) => flattenPath(path, 16).flat());
      const clear = 0.3 + Math.max(...body.map(([{ stroke }]) => (stroke?.widthMm ?? 0) / 2));
      const touching = points.filter(
        ({ x, y }) => x > markBox.left - clear && y > markBox.top - clear,
      );
      if (isBeside) expect(touching, JSON.stringify(figure)).toEqual([]);
    }
  });
});

describe('drawFigure to save ink', () => {
  /** The colour of the line along the outline, and its width where it shows, in mm. */
  function lineOf(figure: Figure, cellMm: number, style: PrintStyle) {
    const shapes = shapesOf(drawFigure(figure, 0, 0, cellMm, style));
    const isColoured = figure.colour !== undefined;
    const [line] = shapes.filter(
      ([{ stroke }, clips]) => stroke && clips.length > 0 === isColoured,
    );
    const { colour = '', widthMm = 0 } = line?.[0].stroke ?? {};
    return { colour, widthMm: isColoured ? widthMm / 2 : widthMm };
  }

  it('leaves the inside of every shape white, its line in the very colour that it was filled with', () => {
    for (const form of SHAPES) {
      for (const colour of COLOUR_NAMES.filter((name) => name !== 'white')) {
        const figure = { form, colour };
        const drawing = drawFigure(figure, 0, 0, 16, SAVING);
        const edge = colour === 'black' ? hexOf('black') : INK;
        expect(paintsOf(drawing)).toEqual(new Set([WHITE, hexOf(colour), edge]));
        const fills = shapesOf(drawing).flatMap(([{ fill }]) => (fill ? [fill] : []));
        expect(fills, `${colour} ${form}`).toEqual([WHITE]);
        expect(lineOf(figure, 16, SAVING).colour).toBe(hexOf(colour));
      }
    }
  });

  it('draws a line of at least 1 mm at every size that figures are printed in, and of 2 mm in colour on large ones', () => {
    for (const cellMm of [14.5, 16, 20, 40]) {
      expect(lineOf({ form: 'star' }, cellMm, SAVING).widthMm).toBeGreaterThanOrEqual(1);
      expect(lineOf({ form: 'star', colour: 'red' }, cellMm, SAVING).widthMm).toBeGreaterThan(1.7);
    }
    expect(lineOf({ form: 'star', colour: 'red' }, 20, SAVING).widthMm).toBeGreaterThan(2);
  });

  it('holds a colour that is lighter than 3:1 on white by a line of ink round it', () => {
    const light = COLOUR_NAMES.filter((name) => contrastOf(hexOf(name), WHITE) < 3);
    expect(light).toEqual(expect.arrayContaining(['yellow', 'pink', 'orange']));
    for (const colour of light.filter((name) => name !== 'white')) {
      const drawing = drawFigure({ form: 'heart', colour }, 0, 0, 16, SAVING);
      const [outer] = shapesOf(drawing)
        .filter(([, clips]) => clips.length === 0)
        .slice(-1);
      expect(outer?.[0].stroke?.colour, colour).toBe(INK);
    }
  });

  it('keeps the initials of grey print, in ink on the white inside', () => {
    for (const colour of COLOUR_NAMES.filter((name) => name !== 'white')) {
      const mark = partOf(drawFigure({ form: 'circle', colour }, 0, 0, 14, SAVING_GREY), 'mark');
      expect(mark && shapesOf(mark)[0]?.[0].fill, colour).toBe(INK);
    }
  });

  it('draws what is a line already, and what tells by its filling, as ever', () => {
    const figures: readonly Figure[] = [
      { form: 'capital-A' },
      { form: 'numeral-3', colour: 'red' },
      { form: 'sign-tick', colour: 'blue' },
      { form: 'dots', count: 3 },
      { form: 'circle', colour: 'white' },
      { form: 'heart', fill: 'outline', colour: 'red' },
      { form: 'star', fill: 'checks' },
    ];
    for (const figure of figures) {
      const saving = drawFigure(figure, 0, 0, 14, SAVING);
      expect(saving, JSON.stringify(figure)).toEqual(drawFigure(figure, 0, 0, 14, COLOUR));
    }
  });
});
