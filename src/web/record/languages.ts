// Languages between a person's words and tags: `Polish, pt-BR` and `['pl', 'pt-BR']`.
import { accept, asGot, type Result, refuse, told } from '../../base/index.ts';
import { inEachLanguage, type Language } from '../../languages/index.ts';
import { languageNow } from '../speaking/language-now.ts';
import { shared } from '../speaking/shared.ts';

const TAG = /^[a-z]{2,3}(-[a-z0-9]{2,8}){0,3}$/i;
/** Between names, in whatever script: the comma and the semicolon of Latin and of Arabic writing. */
const BETWEEN = /[,;،؛]/;
const LETTERS = [...'abcdefghijklmnopqrstuvwxyz'];

/** In the language of the app; English names are understood as well, such as those typed before it was changed. */
const NAMES = inEachLanguage(namesIn);

function namesIn(language: Language): Intl.DisplayNames {
  return new Intl.DisplayNames(language, { type: 'language', fallback: 'none' });
}

/** The tags of names or tags with commas between; refuses the first that is neither. */
export function readLanguages(text: string): Result<readonly string[]> {
  const tags: string[] = [];
  for (const written of text.split(BETWEEN).map((part) => part.trim())) {
    if (written === '') continue;
    const tag = tagOf(written);
    if (tag === undefined) {
      return refuse({
        code: 'unreadable',
        at: 'languages',
        expected: told('reasons', 'expected.language'),
        got: asGot(written),
      });
    }
    if (!tags.includes(tag)) tags.push(tag);
  }
  return accept(tags);
}

/** Names where `readLanguages` finds the way back, else tags. */
export function writeLanguages(tags: readonly string[]): string {
  return shared.withCommas(
    tags.map((tag) => {
      const name = NAMES[languageNow()].of(tag);
      return name !== undefined && tagOf(name) === tag ? name : tag;
    }),
  );
}

function tagOf(written: string): string | undefined {
  const wanted = written.toLowerCase();
  const understood = [NAMES[languageNow()], NAMES.en];
  const named = understood
    .flatMap((names) => twoLetterTags().find((tag) => names.of(tag)?.toLowerCase() === wanted))
    .find((tag) => tag !== undefined);
  if (named !== undefined) return named;
  return TAG.test(written) && NAMES.en.of(written) !== undefined
    ? Intl.getCanonicalLocales(written)[0]
    : undefined;
}

/** All that ISO 639-1 could have; those that it has not bear no name. */
function twoLetterTags(): readonly string[] {
  return LETTERS.flatMap((first) => LETTERS.map((second) => first + second));
}
