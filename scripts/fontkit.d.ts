// What the tests use of fontkit 2.0, which brings no types of its own.
declare module 'fontkit' {
  export interface Glyph {
    readonly advanceWidth: number;
    readonly bbox: {
      readonly minX: number;
      readonly minY: number;
      readonly maxX: number;
      readonly maxY: number;
    };
  }
  export interface Font {
    readonly unitsPerEm: number;
    readonly capHeight: number;
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): Glyph;
    layout(
      words: string,
      features: Readonly<Record<string, boolean>>,
    ): { readonly advanceWidth: number };
  }
  export function create(bytes: Uint8Array): Font;
}
