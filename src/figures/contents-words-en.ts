// What the contents are called in English, as they stand in a sentence: "six tasks with shapes in colours".
import type { ContentId } from './contents.ts';

export const CONTENT_WORDS_EN: Readonly<Record<ContentId, string>> = {
  colours: 'colours',
  shapes: 'shapes',
  sizes: 'sizes',
  directions: 'directions',
  capitals: 'capital letters',
  'small-letters': 'small letters',
  numerals: 'numerals',
  signs: 'signs',
  'dot-quantities': 'numbers of dots',
  textures: 'textures',
  pictures: 'pictures',
  'shapes-and-colours': 'shapes in colours',
  'shapes-and-sizes': 'shapes in sizes',
  'colours-and-sizes': 'colours in sizes',
  'directions-and-colours': 'directions in colours',
  'shapes-colours-and-sizes': 'shapes in colours and sizes',
  'cyrillic-capitals': 'Cyrillic capital letters',
  'cyrillic-small': 'Cyrillic small letters',
  'greek-capitals': 'Greek capital letters',
  'greek-small': 'Greek small letters',
  'devanagari-letters': 'Devanagari letters',
  'arabic-letters': 'Arabic letters',
};
