// The letters of a name, as far as a content of letters draws them: which are meant, and what became of the others.
import { type ContentId, formsOf } from './contents.ts';
import { isLetter } from './form-names.ts';
import { characterOf } from './letter-outlines.ts';

/** What a name gives to a content of letters. */
export interface NameLetters {
  /** Each once, in the order of the alphabet, so that they do not tell the name; empty where none can be drawn. */
  readonly letters: string;
  /** Letters drawn without their mark, as pairs such as `É` and `E`. */
  readonly plain: readonly (readonly [written: string, drawn: string])[];
  /** Characters that the content cannot draw, each once, as they were written; marks on their own are among them. */
  readonly leftOut: readonly string[];
}

/** The letters that a content draws, in the order of their alphabet; empty for a content that is not of letters. */
export function alphabetOf(content: ContentId): string {
  const forms = formsOf(content);
  return forms.every(isLetter) ? forms.map((form) => characterOf(form)).join('') : '';
}

/** Whether a content is one of letters, so that it can be about the letters of a name. */
export function isOfLetters(content: string, contents: readonly ContentId[]): content is ContentId {
  return contents.some((id) => id === content && alphabetOf(id) !== '');
}

/** Letters that stand in another place of the alphabet than their form: the sigma at the end of a word. */
const SAME_LETTER: Readonly<Record<string, string>> = { ς: 'σ' };

/** Reads any text; spaces, hyphens and apostrophes belong to names and are passed over. */
export function lettersOfName(content: ContentId, name: string): NameLetters {
  const alphabet = [...alphabetOf(content)];
  const found = new Set<string>();
  const plain = new Map<string, string>();
  const leftOut = new Set<string>();
  for (const written of name.normalize('NFC')) {
    const drawn = drawnAs(written, alphabet);
    if (drawn === undefined) {
      if (!/[\s\p{P}]/u.test(written)) leftOut.add(written);
      continue;
    }
    for (const letter of drawn.letters) found.add(letter);
    if (drawn.isPlain) plain.set(written, drawn.letters.join(''));
  }
  return {
    letters: alphabet.filter((letter) => found.has(letter)).join(''),
    plain: [...plain],
    leftOut: [...leftOut],
  };
}

interface Drawn {
  readonly letters: readonly string[];
  readonly isPlain: boolean;
}

/** The letter in the case of the alphabet, else what is left of it without its marks. */
function drawnAs(written: string, alphabet: readonly string[]): Drawn | undefined {
  const ways = [written, written.toUpperCase(), written.toLowerCase()];
  for (const way of ways) {
    const letters = [...way].map((letter) => SAME_LETTER[letter] ?? letter);
    if (letters.every((letter) => alphabet.includes(letter))) return { letters, isPlain: false };
  }
  for (const way of ways) {
    const [base = ''] = way.normalize('NFD');
    const isMarked = base !== way.normalize('NFC');
    const letter = SAME_LETTER[base] ?? base;
    if (isMarked && alphabet.includes(letter)) return { letters: [letter], isPlain: true };
  }
  return undefined;
}
