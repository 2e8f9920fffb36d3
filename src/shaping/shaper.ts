// Fonts shaped by HarfBuzz, the same compiled program in Node and browser.
import { Blob, Buffer, Direction, Font, Face as FontFace, shape } from 'harfbuzzjs';
import type { Path } from '../base/index.ts';
import { pathFromText } from '../figures/index.ts';
import type { Face } from '../page/index.ts';

/** The font as a face; `tag` is the ISO 15924 code of its script (absent: by the first letter of each stretch). */
export function shapedFace(file: Uint8Array, tag?: string): Face {
  const face = new FontFace(new Blob(Uint8Array.from(file).buffer));
  const font = new Font(face);
  const unitsPerEm = face.upem;
  // One for all: the shaper's memory would be given back only between the pages of a pack.
  const buffer = new Buffer();
  const outlines = new Map<number, Path>();
  return {
    file,
    has: (character) => font.nominalGlyph(character.codePointAt(0) ?? 0) !== undefined,
    outline: (id) => {
      const path = outlines.get(id) ?? outlineOf(font, id, unitsPerEm);
      outlines.set(id, path);
      return path;
    },
    layout: (words, direction) => {
      buffer.reset();
      buffer.addText(words);
      buffer.guessSegmentProperties();
      if (tag !== undefined) buffer.setScript(tag);
      buffer.setDirection(direction === 'rtl' ? Direction.RTL : Direction.LTR);
      buffer.setLanguage('und');
      shape(font, buffer);
      return placed(buffer, unitsPerEm);
    },
  };
}

function placed(buffer: Buffer, unitsPerEm: number): ReturnType<Face['layout']> {
  const positions = buffer.getGlyphPositions();
  let at = 0;
  const glyphs = buffer.getGlyphInfos().map(({ codepoint, cluster }, index) => {
    const { xAdvance = 0, xOffset = 0, yOffset = 0 } = positions[index] ?? {};
    const glyph = {
      id: codepoint,
      xEm: (at + xOffset) / unitsPerEm,
      yEm: yOffset / unitsPerEm,
      advanceEm: xAdvance / unitsPerEm,
      cluster,
    };
    at += xAdvance;
    return glyph;
  });
  return { glyphs, widthEm: at / unitsPerEm };
}

/** The shaper writes `M1,2L3,4Q5,6 7,8Z`, y up. */
function outlineOf(font: Font, id: number, unitsPerEm: number): Path {
  return pathFromText(font.glyphToPath(id).replaceAll(',', ' '), unitsPerEm, -unitsPerEm);
}
