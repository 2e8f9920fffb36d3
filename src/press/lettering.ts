// One line of text set letter by letter, without kerning or ligatures, so that every press sets it alike.
import { type Path, polygonPath, type Transform } from '../base/index.ts';
import { glyphOf } from '../figures/index.ts';
import { type Text, textWidthMm } from '../page/index.ts';

export interface Letter {
  readonly character: string;
  /** Where its origin stands on the baseline, in mm. */
  readonly xMm: number;
  /** Its outline in ems from its origin, y down, for the rule `nonzero`. */
  readonly outline: Path;
  /** Whether the font has it; if not, its outline is an empty box. */
  readonly known: boolean;
}

/** Stands for a character that the font lacks: an empty box, in ems. */
const MISSING: Path = [
  ...polygonPath([
    { x: 0.12, y: -0.72 },
    { x: 0.88, y: -0.72 },
    { x: 0.88, y: 0 },
    { x: 0.12, y: 0 },
  ]),
  ...polygonPath([
    { x: 0.19, y: -0.65 },
    { x: 0.19, y: -0.07 },
    { x: 0.81, y: -0.07 },
    { x: 0.81, y: -0.65 },
  ]),
];

/** The letters of a line where its anchor and the widths of its letters put them. */
export function lettersOf({ text, xMm, emMm, weight, anchor }: Text): readonly Letter[] {
  const words = text.normalize('NFC');
  const share = { start: 0, middle: 0.5, end: 1 }[anchor];
  let x = xMm - share * textWidthMm(words, emMm, weight);
  return [...words].map((character) => {
    const glyph = glyphOf(character, weight);
    const letter = { character, xMm: x, outline: glyph?.path ?? MISSING, known: Boolean(glyph) };
    x += textWidthMm(character, emMm, weight);
    return letter;
  });
}

/** From the ems of a letter to the mm of the page. */
export function placeOf(letter: Letter, { emMm, baselineMm }: Text): Transform {
  return [emMm, 0, 0, emMm, letter.xMm, baselineMm];
}
