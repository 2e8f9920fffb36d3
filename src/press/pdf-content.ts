// Shapes and text as operators of a PDF content stream whose unit is the millimetre, y down.
import { compose, type Transform } from '../base/index.ts';
import type { Paint, Shape, Stroke, Text } from '../page/index.ts';
import { type Letter, lettersOf, placeOf } from './lettering.ts';
import { factorText, mmText } from './numbers.ts';
import type { Lettering } from './pdf-lettering.ts';
import { pdfPath, scaleOf } from './placing.ts';

/** A shape or a line of text with where it lies. */
export interface Leaf {
  readonly node: Shape | Text;
  readonly transform: Transform;
  /** Outlines, as operators, outside of which it does not show. */
  readonly clips: readonly string[];
  /** Whether another line of the same element follows, so that a space must part their words. */
  readonly isFollowed?: boolean;
}

/** What the page's graphics state holds, so that nothing is said twice. */
export type Pen = Map<string, string>;

/** The operators that draw the leaves in turn with the pen as it is, and leave it as they leave the page. */
export function contentOf(leaves: readonly Leaf[], pen: Pen, lettering: Lettering): string {
  const parts: string[] = [];
  let open: readonly string[] = [];
  let held = pen;
  const clipTo = (clips: readonly string[]) => {
    if (open.length > 0) parts.push('Q');
    if (clips.length > 0) parts.push('q', ...clips.map((clip) => `${clip} W n`));
    // What is set inside a clip is thrown away with it.
    [open, held] = [clips, clips.length > 0 ? new Map(pen) : pen];
  };
  for (const leaf of leaves) {
    if (leaf.clips !== open) clipTo(leaf.clips);
    parts.push(leafContent(leaf, held, lettering));
  }
  clipTo([]);
  return parts.filter((part) => part !== '').join('\n');
}

function leafContent(leaf: Leaf, pen: Pen, lettering: Lettering): string {
  return leaf.node.kind === 'shape'
    ? shapeContent(leaf.node, leaf.transform, pen)
    : textContent(leaf.node, leaf, pen, lettering);
}

function shapeContent(shape: Shape, transform: Transform, pen: Pen): string {
  const { path, fill, stroke, rule } = shape;
  if (!fill && !stroke) return '';
  const star = fill && rule === 'evenodd' ? '*' : '';
  const paint = fill && stroke ? `B${star}` : fill ? `f${star}` : 'S';
  return [
    ...(fill ? [set(pen, 'fill', `${inks(fill)} rg`)] : []),
    ...(stroke ? strokeSettings(stroke, scaleOf(transform), pen) : []),
    `${pdfPath(path, transform)} ${paint}`,
  ]
    .filter((operator) => operator !== '')
    .join('\n');
}

function strokeSettings(stroke: Stroke, scale: number, pen: Pen): string[] {
  // Mitres as in SVG, whose limit is 4 where nothing is said (ISO 32000 says 10).
  const ends = stroke.ends === 'square' ? '0 J 0 j 4 M' : '1 J 1 j';
  const dash = (stroke.dashMm ?? []).map((mm) => mmText(mm * scale)).join(' ');
  return [
    set(pen, 'stroke', `${inks(stroke.colour)} RG`),
    set(pen, 'width', `${mmText(stroke.widthMm * scale)} w`),
    set(pen, 'ends', ends),
    set(pen, 'dash', `[${dash}] 0 d`),
  ];
}

function textContent(
  text: Text,
  { transform, isFollowed = false }: Leaf,
  pen: Pen,
  lettering: Lettering,
): string {
  const runs = runsOf(lettersOf(text), isFollowed);
  if (runs.length === 0) return '';
  const shown = runs.map((run) => runContent(run, text, transform, lettering));
  return [set(pen, 'fill', `${inks(text.colour)} rg`), ...shown]
    .filter((operator) => operator !== '')
    .join('\n');
}

/** What is not read from left to right letter by letter says beside its glyphs what it reads. */
function runContent(
  run: readonly Letter[],
  text: Text,
  transform: Transform,
  lettering: Lettering,
): string {
  const [first] = run;
  if (!first?.known) return missingRun(run, text, transform);
  const content = (first.glyph ? glyphRun : knownRun)(run, text, transform, lettering);
  const reads = first.piece?.reads;
  if (reads === undefined) return content;
  const space = run.at(-1)?.character === ' ' ? ' ' : '';
  return `/Span <</ActualText <${utf16(reads + space)}>>> BDC\n${content}\nEMC`;
}

/** A text string of a PDF file in hexadecimal digits (ISO 32000, 7.9.2.2). */
function utf16(words: string): string {
  const units = Array.from({ length: words.length }, (_, at) => words.charCodeAt(at));
  return [0xfeff, ...units].map((unit) => unit.toString(16).padStart(4, '0')).join('');
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

function knownRun(
  run: readonly Letter[],
  { emMm, weight, baselineMm }: Text,
  transform: Transform,
  lettering: Lettering,
): string {
  const start: Transform = [1, 0, 0, -1, run[0]?.xMm ?? 0, baselineMm];
  const [a, b, c, d, x, y] = compose(transform, start);
  const matrix = [...[a, b, c, d].map(factorText), mmText(x), mmText(y)].join(' ');
  const glyphs = run.map(({ character }) => lettering.glyph(character, weight)).join('');
  const font = `/${lettering.fontName(weight)} ${factorText(emMm)} Tf`;
  return `BT ${font} ${matrix} Tm <${glyphs}> Tj ET`;
}

/** Each glyph where shaping put it. */
function glyphRun(
  run: readonly Letter[],
  { emMm, baselineMm }: Text,
  transform: Transform,
  lettering: Lettering,
): string {
  const shown = run.map(({ glyph, xMm, character }) => {
    if (!glyph || character !== '') return '';
    const start: Transform = [1, 0, 0, -1, xMm, baselineMm - glyph.riseMm];
    const [a, b, c, d, x, y] = compose(transform, start);
    const matrix = [...[a, b, c, d].map(factorText), mmText(x), mmText(y)].join(' ');
    return `${matrix} Tm <${lettering.shaped(glyph.face, glyph.id)}> Tj`;
  });
  const [first] = run;
  const face = first?.glyph?.face;
  const font = face && `/${lettering.faceName(face)} ${factorText(emMm)} Tf`;
  const modes = first?.piece?.isHidden ? { before: '3 Tr', after: '0 Tr' } : {};
  const all = [font, modes.before, ...shown, modes.after];
  return `BT ${all.filter((operator) => operator).join(' ')} ET`;
}

function missingRun(run: readonly Letter[], text: Text, transform: Transform): string {
  return run
    .map((letter) => `${pdfPath(letter.outline, compose(transform, placeOf(letter, text)))} f`)
    .join('\n');
}

/** The operator, or nothing where the page is already so. */
function set(pen: Pen, what: string, operator: string): string {
  if (pen.get(what) === operator) return '';
  pen.set(what, operator);
  return operator;
}

/** `#rrggbb` as three shares of light. */
function inks(paint: Paint): string {
  return [1, 3, 5]
    .map((at) => factorText(Number.parseInt(paint.slice(at, at + 2), 16) / 255))
    .join(' ');
}
