// Writes the table of letter outlines and widths from the font files; run by hand after changing a font:
// node scripts/make-glyphs.mjs
import { readFileSync, writeFileSync } from 'node:fs';
import * as fontkit from 'fontkit';

const TARGET = new URL('../src/figures/glyphs.generated.json', import.meta.url);
const FONTS = { regular: 'Andika-Regular.ttf', bold: 'Andika-Bold.ttf' };

/**
 * Unicode ranges, first and last included: printable ASCII; Latin-1 signs and letters; for names Latin Extended-A and
 * the Romanian letters with a comma below.
 */
const RANGES = [
  [0x20, 0x7e],
  [0xa0, 0x17f],
  [0x218, 0x21b],
];
const TYPOGRAPHIC = [...'–—‘’‚“”„…•×→←↑↓✓ŒœŸ−≈€'];

function charactersOf(font) {
  const ranged = RANGES.flatMap(([first, last]) =>
    Array.from({ length: last - first + 1 }, (_, index) => String.fromCodePoint(first + index)),
  );
  const wanted = [...new Set([...ranged, ...TYPOGRAPHIC])];
  return wanted.filter((character) => font.hasGlyphForCodePoint(character.codePointAt(0)));
}

const LETTERS = { moveTo: 'M', lineTo: 'L', quadraticCurveTo: 'Q', closePath: 'Z' };

/** The outline in font units, y up, as `M x y`, `L x y`, `Q x y x y` and `Z`. */
function outlineOf(glyph) {
  return glyph.path.commands
    .map(({ command, args }) => {
      const letter = LETTERS[command];
      if (!letter)
        throw new Error(
          `make-glyphs › ${glyph.name}: expected lines and quadratics, got ${command}`,
        );
      return letter + args.map(Math.round).join(' ');
    })
    .join('');
}

function weightTable(font) {
  return Object.fromEntries(
    charactersOf(font).map((character) => {
      const glyph = font.glyphForCodePoint(character.codePointAt(0));
      return [character, [glyph.advanceWidth, outlineOf(glyph)]];
    }),
  );
}

const fonts = Object.fromEntries(
  Object.entries(FONTS).map(([weight, file]) => [
    weight,
    fontkit.create(readFileSync(new URL(`../assets/fonts/${file}`, import.meta.url))),
  ]),
);
const { unitsPerEm, capHeight, version } = fonts.regular;
const table = {
  source: `Outlines and advance widths of Andika, ${version}, SIL International, SIL Open Font License 1.1`,
  unitsPerEm,
  capHeight,
  regular: weightTable(fonts.regular),
  bold: weightTable(fonts.bold),
};
writeFileSync(
  TARGET,
  `${JSON.stringify(table, null, 1).replace(/\[\n\s+(\d+),\n\s+("(?:[^"\\]|\\.)*")\n\s+\]/g, '[$1, $2]')}\n`,
);
