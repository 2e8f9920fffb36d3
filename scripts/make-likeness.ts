// Writes the table of outline distances; run by hand after a form or the measure has changed:
// node scripts/run.mjs scripts/make-likeness.ts
import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import {
  CAPITALS,
  type FormId,
  measureOutlineShare,
  measureTurnedShare,
  NUMERALS,
  PICTURES,
  SCRIPT_LETTERS,
  SCRIPT_NUMERALS,
  SHAPES,
  SIGNS,
  SMALL_LETTERS,
} from '../src/figures/index.ts';

const TARGET = 'src/figures/likeness.generated.json';

/** Forms that stand on one page. */
const GROUPS: readonly (readonly FormId[])[] = [
  [...SHAPES, ...SIGNS, ...CAPITALS, ...SMALL_LETTERS, ...NUMERALS, 'capital-Ñ', 'small-ñ'],
  PICTURES,
  [...SCRIPT_LETTERS['cyrillic-capitals'], ...SCRIPT_LETTERS['cyrillic-small']],
  [...SCRIPT_LETTERS['greek-capitals'], ...SCRIPT_LETTERS['greek-small']],
  [...SCRIPT_LETTERS['devanagari-varnamala'], ...SCRIPT_NUMERALS['devanagari-numerals']],
  [...SCRIPT_LETTERS['arabic-letters-with-hamza'], ...SCRIPT_NUMERALS['arabic-indic-numerals']],
];

type Measure = typeof measureOutlineShare;

/** Two digits a pair, in the order of `pairNumber`. */
function digitsOf(forms: readonly FormId[], measure: Measure): string {
  return forms
    .flatMap((form, index) =>
      forms.slice(index + 1).map((other) => {
        const hundredths = Math.round(100 * measure({ form }, { form: other }));
        if (hundredths < 100) return String(hundredths).padStart(2, '0');
        throw new Error(
          `make-likeness › ${form} and ${other}: expected 0 to 99, got ${hundredths}`,
        );
      }),
    )
    .join('');
}

export function main(): void {
  const groups = GROUPS.map((forms) => ({
    forms: forms.join(' '),
    plain: digitsOf(forms, measureOutlineShare),
    turned: digitsOf(forms, measureTurnedShare),
  }));
  writeFileSync(resolve(TARGET), `${JSON.stringify({ groups }, null, 1)}\n`);
}
