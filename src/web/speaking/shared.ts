// What all parts of the app say alike: lists, colours, capitals.
import type { ColourName } from '../../palette/index.ts';
import { languageNow } from './language-now.ts';
import { MESSAGES } from './messages-en.ts';
import { spoken } from './spoken.ts';

export const shared = spoken('app', MESSAGES, ({ say, under }) => {
  const colours: Readonly<Record<ColourName, string>> = under('colour');
  const joined =
    (link: 'comma.next' | 'series.next' | 'sentences.next') => (items: readonly string[]) =>
      items.length === 0 ? '' : items.reduce((before, next) => say(link, { before, next }));
  const withCommas = joined('comma.next');
  return {
    /** As a name is written that stands alone; what is no known colour as it is. */
    colour: (name: string): string =>
      Object.entries(colours).find(([key]) => key === name)?.[1] ?? name,
    /** `red, blue`. */
    withCommas,
    /** `red, blue and green`. */
    listed: (items: readonly string[]) => {
      const last = items.at(-1) ?? '';
      return items.length < 2
        ? last
        : say('and.last', { before: withCommas(items.slice(0, -1)), last });
    },
    /** `a; b; c`, for items that hold an "and" themselves. */
    inSeries: joined('series.next'),
    sentences: joined('sentences.next'),
  };
});

/** With a capital first letter. */
export function capital(sentence: string): string {
  return sentence.charAt(0).toLocaleUpperCase(languageNow()) + sentence.slice(1);
}
