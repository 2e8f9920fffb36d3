// Letters and numerals as outlines: one scale and one baseline for all, so that small letters look small.
import { moveBy, type Path, pathBounds, scaleBy, transformPath } from '../base/index.ts';
import type { FormId, Letter, Numeral } from './form-names.ts';
import { CAP_HEIGHT_EM, glyphOf } from './glyphs.ts';
import { scriptOutline } from './script-letters.ts';

/**
 * Height of a capital in cell sides: the most at which the widest (W) and the deepest (g, j) stay in the
 * cell at every turn.
 */
export const CAP_HEIGHT_SHARE = 0.575;

/** Height above the baseline that lies in the middle of the cell, in ems: between capitals and descenders. */
const MIDDLE_EM = 0.335;

/** A letter with a mark above it stands lower, so that its ink stays this far inside the cell: in cell sides from its middle. */
const HIGHEST = -0.43;

/** Bold, so that a letter has room inside its outline for a colour. */
const WEIGHT = 'bold';

/** The outline of a letter or numeral in a cell of side 1 about (0, 0); fill it with the rule `nonzero`. */
export function letterOutline(form: Letter | Numeral): Path {
  const character = characterOf(form);
  const foreign = isOfScript(form) ? scriptOutline(character) : undefined;
  if (foreign) return foreign;
  const glyph = glyphOf(character, WEIGHT);
  if (!glyph) throw new Error(`figures › ${form}: expected a glyph for ${character}, got none`);
  const { left, right } = pathBounds(glyph.path);
  const scale = CAP_HEIGHT_SHARE / CAP_HEIGHT_EM;
  const centred = transformPath(glyph.path, moveBy(-(left + right) / 2, MIDDLE_EM));
  const scaled = transformPath(centred, scaleBy(scale));
  const over = HIGHEST - pathBounds(scaled).top;
  return over > 0 ? transformPath(scaled, moveBy(0, over)) : scaled;
}

/** Whether a form is a letter or numeral of another script than Latin. */
export function isOfScript(form: FormId): boolean {
  return form.startsWith('letter-') || (form.startsWith('numeral-') && !/\d$/.test(form));
}

/** The character that a letter or numeral form shows. */
export function characterOf(form: Letter | Numeral): string {
  return form.slice(form.indexOf('-') + 1);
}
