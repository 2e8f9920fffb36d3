// Forms by what a task can ask of them.
import { type FormId, isLetter, type Shape } from './form-names.ts';
import { characterOf } from './letter-outlines.ts';

/** Shapes that lie differently at each quarter turn: they point, open or stand one way only. */
export const TURNABLE: readonly Shape[] = [
  'arrow',
  'triangle',
  'heart',
  'crescent',
  'drop',
  'half-circle',
];

/** The vowels of the Latin, Cyrillic and Greek letters that are drawn, without which nobody spells a word. */
const VOWELS = 'aeiouyаеёиоуыэюяαεηιουω';

/** The forms but for letters that are vowels, so that letters side by side never spell a word by chance; `letters` stay. */
export function withoutVowels(forms: readonly FormId[], letters = ''): readonly FormId[] {
  return forms.filter((form) => {
    if (!isLetter(form)) return true;
    const character = characterOf(form);
    return letters.includes(character) || !VOWELS.includes(character.toLowerCase());
  });
}
