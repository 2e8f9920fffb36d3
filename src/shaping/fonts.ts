// Which font sets which script: files of packages, and of the page's own font for what its table leaves out.
import type { Script } from '../page/index.ts';

export interface ScriptFont {
  /** ISO 15924, as the shaper wants it; absent: by the first letter of each stretch. */
  readonly tag?: string;
  readonly regular: string;
  readonly bold: string;
}

/** Names of files: in a package, or in `assets/fonts` where they begin with it. All under the SIL Open Font License 1.1. */
export const SCRIPT_FONTS = {
  extended: {
    regular: 'assets/fonts/Andika-Regular.ttf',
    bold: 'assets/fonts/Andika-Bold.ttf',
  },
  greek: {
    tag: 'Grek',
    regular: '@fontsource/noto-sans/files/noto-sans-greek-400-normal.woff',
    bold: '@fontsource/noto-sans/files/noto-sans-greek-700-normal.woff',
  },
  hebrew: {
    tag: 'Hebr',
    regular: '@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-400-normal.woff',
    bold: '@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-700-normal.woff',
  },
  arabic: {
    tag: 'Arab',
    regular: '@fontsource/noto-naskh-arabic/files/noto-naskh-arabic-arabic-400-normal.woff',
    bold: '@fontsource/noto-naskh-arabic/files/noto-naskh-arabic-arabic-700-normal.woff',
  },
  devanagari: {
    tag: 'Deva',
    regular:
      '@fontsource/noto-sans-devanagari/files/noto-sans-devanagari-devanagari-400-normal.woff',
    bold: '@fontsource/noto-sans-devanagari/files/noto-sans-devanagari-devanagari-700-normal.woff',
  },
} as const satisfies Readonly<Record<Script, ScriptFont>>;

type Fonts = typeof SCRIPT_FONTS;
export type FontFile = { [S in Script]: Fonts[S]['regular' | 'bold'] }[Script];
