// One line of text set letter by letter, or by glyphs where its script needs it, so that every press sets it alike.
import { moveBy, type Path, polygonPath, type Transform, transformPath } from '../base/index.ts';
import { advanceUnits, glyphOf } from '../figures/index.ts';
import {
  type Face,
  fromTheLeft,
  isSetPlainly,
  leftShare,
  type PlacedGlyph,
  plainEm,
  type SetRun,
  setLine,
  type Text,
  textWidthMm,
} from '../page/index.ts';
import { leftwardPieces, type Piece } from './reading.ts';

export interface Letter {
  readonly character: string;
  /** Where its origin stands on the baseline, in mm. */
  readonly xMm: number;
  /** Its outline in ems from its origin, y down, for the rule `nonzero`. */
  readonly outline: Path;
  /** Whether the font has it; if not, its outline is an empty box. */
  readonly known: boolean;
  /** For what is not read from left to right letter by letter: the piece it is part of, the same for all of it. */
  readonly piece?: Piece;
  /** For a glyph of a shaped run; `character` is empty then. */
  readonly glyph?: Glyph;
}

interface Glyph {
  readonly face: Face;
  readonly id: number;
  /** From the baseline up. */
  readonly riseMm: number;
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

/** The letters of a line where its anchor and the widths of its letters put them; in the order in which they are read. */
export function lettersOf(line: Text): readonly Letter[] {
  return isSetPlainly(line.text, line.direction) ? plainLetters(line) : setLetters(line);
}

/** Whether the font has every letter of the line, and sets them one by one from left to right. */
export function isPlainlyKnown({ text, direction, weight }: Text): boolean {
  if (!isSetPlainly(text, direction)) return false;
  for (const character of text.normalize('NFC')) {
    if (advanceUnits(character, weight) === undefined) return false;
  }
  return true;
}

/** Where a line that is set plainly begins, in mm. */
export function plainStart(line: Text): number {
  const share = leftShare(line);
  if (share === 0) return line.xMm;
  return line.xMm - share * textWidthMm(line.text, line.emMm, line.weight);
}

function plainLetters(line: Text): readonly Letter[] {
  const { emMm, weight } = line;
  const words = line.text.normalize('NFC');
  let x = plainStart(line);
  return [...words].map((character) => {
    const letter = plainLetter(character, x, weight);
    x += textWidthMm(character, emMm, weight);
    return letter;
  });
}

function plainLetter(character: string, xMm: number, weight: Text['weight']): Letter {
  const glyph = glyphOf(character, weight);
  return { character, xMm, outline: glyph?.path ?? MISSING, known: Boolean(glyph) };
}

function setLetters(line: Text): readonly Letter[] {
  const { text, xMm, emMm, weight, direction } = line;
  const { runs, widthEm } = setLine(text, weight, direction);
  const left = xMm - leftShare(line) * widthEm * emMm;
  return runs.flatMap((run) =>
    run.shaped
      ? shapedLetters(run, run.shaped, left, emMm)
      : letterByLetter(run, left, emMm, weight),
  );
}

function shapedLetters(
  run: SetRun,
  { face, glyphs }: NonNullable<SetRun['shaped']>,
  left: number,
  emMm: number,
): readonly Letter[] {
  const letterOf = ({ id, xEm, yEm }: PlacedGlyph, piece: Piece): Letter => ({
    character: '',
    xMm: left + (run.xEm + xEm) * emMm,
    outline: piece.isHidden ? [] : transformPath(face.outline(id), moveBy(0, -yEm)),
    known: true,
    piece,
    glyph: { face, id, riseMm: yEm * emMm },
  });
  if (!run.isLeftward) {
    const whole: Piece = { reads: run.words };
    return glyphs.map((glyph) => letterOf(glyph, whole));
  }
  return leftwardPieces(run.words, glyphs).map(({ glyph, piece }) => letterOf(glyph, piece));
}

function letterByLetter(
  run: SetRun,
  left: number,
  emMm: number,
  weight: Text['weight'],
): readonly Letter[] {
  let x = left + run.xEm * emMm;
  const letters = fromTheLeft(run).map((character) => {
    const letter = plainLetter(character, x, weight);
    x += plainEm(character, weight) * emMm;
    return letter;
  });
  if (!run.isLeftward) return letters;
  const read = [...run.words].reverse();
  return letters.map((letter, place) => {
    const reads = read[place] ?? letter.character;
    return { ...letter, piece: reads === letter.character ? {} : { reads } };
  });
}

/** From the ems of a letter to the mm of the page. */
export function placeOf(letter: Letter, { emMm, baselineMm }: Text): Transform {
  return [emMm, 0, 0, emMm, letter.xMm, baselineMm];
}
