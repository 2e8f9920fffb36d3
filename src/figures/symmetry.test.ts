// Turns and mirrorings that cannot be seen, checked against the outlines themselves.
import { describe, expect, it } from 'vitest';
import { type Figure, formOf } from './figure.ts';
import { FORMS, type FormId, isPicture, isShape, isSign, PICTURES } from './form-names.ts';
import { outlineOf } from './outline.ts';
import { overlapShare, rasterOf, spreadOf, WHOLE_CELL } from './raster.ts';
import { mirrorTurnDeg, stanceOf, symmetryTurnDeg } from './symmetry.ts';

const DRAWN = FORMS.filter((form) => isShape(form) || isSign(form));
const WRITTEN = FORMS.filter(
  (form) => !isShape(form) && !isSign(form) && !isPicture(form) && form !== 'dots',
);

/** The inked cells about the middle of the ink for letters, which stand on a baseline; else of the cell. */
function rasterAbout(figure: Figure) {
  const outline = outlineOf(figure);
  const raster = rasterOf(outline, WHOLE_CELL);
  const form = formOf(figure);
  if (isShape(form) || isSign(form)) return raster;
  const { x, y } = spreadOf(raster);
  return rasterOf(outline, { x, y, side: 1 });
}

/** Share of joint ink that a form and itself so placed do not share, letters moved by a cell at most. */
function change(form: FormId, turn: number, mirrored: boolean): number {
  const [plain, placed] = [rasterAbout({ form }), rasterAbout({ form, turn, mirrored })];
  const moves = isShape(form) || isSign(form) ? [0] : [-1, 0, 1];
  const shares = moves.flatMap((dx) => moves.map((dy) => overlapShare(plain, placed, dx, dy)));
  return 1 - Math.max(...shares);
}

describe('symmetryTurnDeg', () => {
  it('leaves shapes and signs exactly where they were', () => {
    for (const form of DRAWN) {
      const step = Math.max(symmetryTurnDeg(form), 30);
      for (let turn = step; turn < 360; turn += step) {
        expect(change(form, turn, false), `${form} turned ${turn}`).toBeLessThan(0.1);
      }
    }
  });

  it('misses no turn of 15 degrees that leaves a shape or sign as it was', () => {
    for (const form of DRAWN) {
      const step = symmetryTurnDeg(form);
      for (let turn = 15; turn < 360; turn += 15) {
        if (turn % step === 0) continue;
        const seen = change(form, turn, false);
        expect(seen, `${form} turned ${turn}`).toBeGreaterThan(form === 'hexagon' ? 0.05 : 0.03);
      }
    }
  });

  it('turns letters and numerals to something that looks the same', () => {
    for (const form of WRITTEN.filter((written) => symmetryTurnDeg(written) === 180)) {
      expect(change(form, 180, false), form).toBeLessThan(0.4);
    }
  });

  it('misses no letter or numeral that a half turn leaves as it was', () => {
    for (const form of WRITTEN.filter((written) => symmetryTurnDeg(written) === 360)) {
      expect(change(form, 180, false), form).toBeGreaterThan(0.15);
    }
  });
});

describe('mirrorTurnDeg', () => {
  it('undoes the mirroring of shapes and signs exactly', () => {
    for (const form of DRAWN) {
      const turn = mirrorTurnDeg(form);
      if (turn !== undefined) expect(change(form, turn, true), form).toBeLessThan(0.05);
    }
  });

  it('undoes the mirroring of letters and numerals nearly', () => {
    for (const form of WRITTEN) {
      const turn = mirrorTurnDeg(form);
      if (turn !== undefined) expect(change(form, turn, true), form).toBeLessThan(0.35);
    }
  });

  it('is absent only where no quarter turn undoes the mirroring', () => {
    for (const form of [...DRAWN, ...WRITTEN]) {
      if (mirrorTurnDeg(form) !== undefined) continue;
      for (const turn of [0, 90, 180, 270]) {
        expect(change(form, turn, true), `${form} turned ${turn}`).toBeGreaterThan(0.12);
      }
    }
  });

  it('undoes the mirroring of pictures nearly, in their outlines too', () => {
    for (const form of PICTURES) {
      const turn = mirrorTurnDeg(form);
      if (turn !== undefined) expect(change(form, turn, true), form).toBeLessThan(0.06);
    }
  });

  it('is absent for pictures whose two sides a child tells apart', () => {
    for (const form of ['picture-duck', 'picture-car', 'picture-snail', 'picture-teapot']) {
      expect(mirrorTurnDeg(form as FormId), form).toBe(undefined);
    }
  });

  it('is 0 exactly for forms that are their own mirror image', () => {
    const turns = (...forms: FormId[]) => forms.map(mirrorTurnDeg);
    expect(turns('heart', 'arrow', 'capital-A')).toEqual([0, 0, 0]);
    expect(turns('crescent', 'leaf', 'small-b')).not.toContain(0);
  });
});

describe('stanceOf', () => {
  it('takes out turns that cannot be seen: a square turned by 90 lies as before', () => {
    expect(stanceOf({ form: 'square', turn: 90 })).toEqual(stanceOf({ form: 'square' }));
    expect(stanceOf({ form: 'circle', turn: 123 })).toEqual(stanceOf({ form: 'circle' }));
  });

  it('gives the turn that a mirrored figure could be drawn with instead', () => {
    for (const form of DRAWN) {
      for (const turn of [0, 45, 90, 200]) {
        const stance = stanceOf({ form, turn, mirrored: true });
        const [mirrored, stood] = [
          { form, turn, mirrored: true },
          { form, ...stance },
        ].map((figure) => rasterOf(outlineOf(figure), WHOLE_CELL));
        if (!mirrored || !stood) throw new Error('no raster');
        expect(overlapShare(mirrored, stood, 0, 0), `${form} turned ${turn}`).toBeGreaterThan(0.9);
      }
    }
  });
});
