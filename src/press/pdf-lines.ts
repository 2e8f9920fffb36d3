// Lines of text as operators of a PDF content stream whose unit is a hundredth of a millimetre, y down.
import { compose, type Transform } from '../base/index.ts';
import type { Text } from '../page/index.ts';
import { type Letter, lettersOf, placeOf, plainStart } from './lettering.ts';
import { factorText, hundredthsOf } from './numbers.ts';
import type { Operators } from './operators.ts';
import type { Lettering } from './pdf-lettering.ts';
import { hexText } from './pdf-text.ts';
import { writePdfPath } from './placing.ts';

/** Where an element's next line follows (`isFollowed`), a space parts their words. */
export function writeLine(
  line: Text,
  transform: Transform,
  isFollowed: boolean,
  to: Operators,
  lettering: Lettering,
): void {
  if (line.text === '') return;
  const shown = lettering.plainly(line);
  if (shown !== undefined) {
    const space = isFollowed ? lettering.glyphs(' ', line.weight) : '';
    to.text(`BT ${plainWords(shown + space, plainStart(line), line, transform, lettering)} ET\n`);
    return;
  }
  for (const run of runsOf(lettersOf(line), isFollowed)) {
    if (run[0]?.known) to.text(`${runText(run, line, transform, lettering)}\n`);
    else writeMissing(run, line, transform, to);
  }
}

/** Stretches of letters that one font has, and of those that it lacks, in turn. */
function runsOf(letters: readonly Letter[], isFollowed: boolean): readonly (readonly Letter[])[] {
  const runs: Letter[][] = [];
  for (const letter of letters) {
    const last = runs.at(-1);
    if (last?.[0]?.known === letter.known && last[0].piece === letter.piece) last.push(letter);
    else runs.push([letter]);
  }
  const end = letters.at(-1);
  if (isFollowed && end?.known) runs.at(-1)?.push({ ...end, character: ' ' });
  return runs;
}

/** What is not read from left to right letter by letter says beside its glyphs what it reads. */
function runText(
  run: readonly Letter[],
  line: Text,
  transform: Transform,
  lettering: Lettering,
): string {
  const [first] = run;
  const letters = run.map(({ character }) => character).join('');
  const shown = first?.glyph
    ? shapedWords(run, line, transform, lettering)
    : plainWords(
        lettering.glyphs(letters, line.weight),
        first?.xMm ?? 0,
        line,
        transform,
        lettering,
      );
  const reads = first?.piece?.reads;
  if (reads === undefined) return `BT ${shown} ET`;
  const space = run.at(-1)?.character === ' ' ? ' ' : '';
  return `/Span<</ActualText${hexText(reads + space)}>>BDC\nBT ${shown} ET\nEMC`;
}

function plainWords(
  glyphs: string,
  xMm: number,
  { emMm, weight, baselineMm }: Text,
  transform: Transform,
  lettering: Lettering,
): string {
  const place = placeText(transform, xMm, baselineMm);
  const font = fontText(lettering.fontName(weight), emMm);
  return `${font} ${place} Tm<${glyphs}>Tj`;
}

/** Each glyph where shaping put it. */
function shapedWords(
  run: readonly Letter[],
  { emMm, baselineMm }: Text,
  transform: Transform,
  lettering: Lettering,
): string {
  const shown = run.map(({ glyph, xMm, character }) => {
    if (!glyph || character !== '') return '';
    const place = placeText(transform, xMm, baselineMm - glyph.riseMm);
    return `${place} Tm<${lettering.shaped(glyph.face, glyph.id)}>Tj`;
  });
  const [first] = run;
  const face = first?.glyph?.face;
  const font = face && fontText(lettering.faceName(face), emMm);
  const modes = first?.piece?.isHidden ? { before: '3 Tr', after: '0 Tr' } : {};
  return [font, modes.before, ...shown, modes.after].filter((operator) => operator).join(' ');
}

function fontText(name: string, emMm: number): string {
  return `/${name} ${factorText(emMm * 100)} Tf`;
}

/** The matrix of letters that stand upright with their origin at a place of the line's own. */
function placeText(transform: Transform, xMm: number, baselineMm: number): string {
  const [a, b, c, d, x, y] = compose(transform, [1, 0, 0, -1, xMm, baselineMm]);
  return [...[a, b, c, d].map(factorText), hundredthsOf(x), hundredthsOf(y)].join(' ');
}

function writeMissing(
  run: readonly Letter[],
  line: Text,
  transform: Transform,
  to: Operators,
): void {
  for (const letter of run) {
    writePdfPath(letter.outline, compose(transform, placeOf(letter, line)), to);
    to.text('f\n');
  }
}
