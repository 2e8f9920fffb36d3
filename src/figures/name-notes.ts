// What is told of the letters of a name: which cannot be drawn as they are written, and what is done instead.
import { type Language, sayIn } from '../languages/index.ts';
import type { ContentId } from './contents.ts';
import { MESSAGES } from './messages-en.ts';
import { alphabetOf, lettersOfName } from './name-letters.ts';
import { contentName } from './names.ts';

/** Whole sentences, none where all letters are drawn as they are written; empty for contents that have no letters. */
export function nameNotes(
  content: ContentId,
  name: string,
  language: Language = 'en',
): readonly string[] {
  if (alphabetOf(content) === '') return [];
  const say = sayIn(language, 'figures', MESSAGES);
  const { letters, plain, leftOut } = lettersOfName(content, name);
  const told = { content: contentName(content, language) };
  if (letters === '') return [say('name.none', told)];
  const written = plain.map(([mark, letter]) => `${mark} → ${letter}`);
  return [
    ...([...letters].length === 1 ? [say('name.one', { letter: letters })] : []),
    ...(written.length === 0
      ? []
      : [say('name.plain', { ...told, letters: joined(written), count: written.length })]),
    ...(leftOut.length === 0
      ? []
      : [say('name.left-out', { ...told, letters: joined(leftOut), count: leftOut.length })]),
  ];
}

/** Marks that cannot stand alone stand on the circle that Unicode gives them for that. */
function joined(characters: readonly string[]): string {
  return characters

    .map((character) => (/^\p{M}/u.test(character) ? `\u25cc${character}` : character))
    .join('\u2002');
}

/** Which letters of a name a sheet shows, and which it does not. */
export function shownNotes(
  letters: string,
  shown: string,
  language: Language = 'en',
): readonly string[] {
  const say = sayIn(language, 'figures', MESSAGES);
  const absent = [...letters].filter((letter) => !shown.includes(letter));
  return [
    ...(shown === '' ? [] : [say('name.shown', { letters: joined([...shown]) })]),
    ...(absent.length === 0 ? [] : [say('name.not-shown', { letters: joined(absent) })]),
  ];
}
