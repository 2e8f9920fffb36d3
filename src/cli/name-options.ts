// The option that makes contents of letters be about a name, and what is told of names.
import { activityOf } from '../activities/index.ts';
import { CONTENT_IDS, isOfLetters, nameNotes } from '../figures/index.ts';
import { longNameRefusals, type Recipe } from '../sheets/index.ts';
import { SHELL_WORDS } from '../words/index.ts';
import { Refused } from './failure.ts';

/** A name that is there and no longer than any name. */
export function nameOf(written: string, at: string): string {
  const name = written.trim();
  if (name === '') throw new Refused({ code: 'missing', at, expected: 'a name' });
  const refusals = longNameRefusals(name, at);
  if (refusals.length > 0) throw new Refused(...refusals);
  return name;
}

/** What becomes of letters that cannot be drawn, and of names for contents without letters; each sentence once. */
export function nameLines({
  letters,
  ownLetters,
  children = [],
  parts,
}: Recipe): readonly string[] {
  const names = ownLetters
    ? children.map(({ name }) => name)
    : letters === undefined
      ? []
      : [letters];
  if (names.length === 0) return [];
  const contents = parts.flatMap(({ activity, step, values }) => {
    const content = values.content ?? activityOf(activity).ladder[step - 1]?.values.content;
    return isOfLetters(String(content), CONTENT_IDS)
      ? [content as (typeof CONTENT_IDS)[number]]
      : [];
  });
  if (contents.length === 0) return [SHELL_WORDS.noLetters];
  const lines = contents.flatMap((content) =>
    names.flatMap((name) => nameNotes(content, name).map((note) => `${name}: ${note}`)),
  );
  return [...new Set(lines)];
}
