// What a sheet code carries of the letters of a name: which letters of the alphabet they are, never their order or number.
import { activityOf } from '../activities/index.ts';
import { alphabetOf, CONTENT_IDS, isOfLetters } from '../figures/index.ts';
import type { Packed, Unpacking } from './code-packing.ts';
import type { SheetSpec } from './sheet-spec.ts';

/** Letters in one field; a field is a whole number that must stay exact. */
const LETTERS_A_FIELD = 16;

type Asked = Pick<SheetSpec, 'activity' | 'step' | 'values'>;

/** The alphabet of what a sheet asks for; empty where it is not about letters. */
export function alphabetFor({ activity, step, values }: Asked): string {
  const content = values.content ?? activityOf(activity).ladder[step - 1]?.values.content;
  return typeof content === 'string' && isOfLetters(content, CONTENT_IDS)
    ? alphabetOf(content)
    : '';
}

/** Which letters of the alphabet the sheet is about, as masks; none where its content is no letters. */
export function letterFields(spec: Asked & Pick<SheetSpec, 'letters'>): readonly Packed[] {
  return chunksOf(alphabetFor(spec)).map((chunk) => ({
    value: chunk.reduce(
      (sum, letter, bit) => sum + (spec.letters?.includes(letter) ? 2 ** bit : 0),
      0,
    ),
    radix: 2 ** chunk.length,
  }));
}

/** Takes them out again; none where no letter is marked. */
export function takeLetters(fields: Unpacking, asked: Asked): Pick<SheetSpec, 'letters'> {
  const letters = chunksOf(alphabetFor(asked)).flatMap((chunk) => {
    const mask = fields.take(2 ** chunk.length);
    return chunk.filter((_, bit) => mask & (2 ** bit));
  });
  return letters.length > 0 ? { letters: letters.join('') } : {};
}

function chunksOf(alphabet: string): readonly (readonly string[])[] {
  const letters = [...alphabet];
  return Array.from({ length: Math.ceil(letters.length / LETTERS_A_FIELD) }, (_, index) =>
    letters.slice(index * LETTERS_A_FIELD, (index + 1) * LETTERS_A_FIELD),
  );
}
