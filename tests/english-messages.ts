// All English messages of the core by the name of what says them, and the same in letters that are not Latin.
import { readdirSync } from 'node:fs';
import { IntlMessageFormat } from 'intl-messageformat';

export type Messages = Readonly<Record<string, string>>;

/** The files of messages outside the folders of activities, by the name of what says them. */
const FILES: Readonly<Record<string, string>> = {
  wording: 'activities/wording-messages.ts',
  printed: 'activities/printed-messages.ts',
  figures: 'figures/messages-en.ts',
  learner: 'learner/messages-en.ts',
  pages: 'sheets/messages-en.ts',
  adult: 'sheets/messages-adult-en.ts',
  goals: 'sheets/messages-goals-en.ts',
  'by-hand': 'by-hand/messages-en.ts',
  pairs: 'plan/messages-en.ts',
  refusals: 'words/messages-en.ts',
};
const SRC = new URL('../src/', import.meta.url);

/** The files of all messages of the core, from `src`, by the name of what says them. */
export function messageFiles(): Readonly<Record<string, string>> {
  const activities = readdirSync(new URL('activities/', SRC), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => [name, `activities/${name}/messages-en.ts`] as const);
  return { ...FILES, ...Object.fromEntries(activities) };
}

export async function englishMessages(): Promise<Readonly<Record<string, Messages>>> {
  const spaces = Object.entries(messageFiles()).map(
    async ([space, file]): Promise<[string, Messages]> => {
      const { MESSAGES } = await import(new URL(file, SRC).pathname);
      return [space, MESSAGES];
    },
  );
  return Object.fromEntries(await Promise.all(spaces));
}

/** A catalogue that says nothing in Latin letters, with the plural forms of English. */
export async function inOtherLetters(): Promise<Readonly<Record<string, Messages>>> {
  const english = await englishMessages();
  return Object.fromEntries(
    Object.entries(english).map(([space, messages]) => [
      space,
      Object.fromEntries(
        Object.entries(messages).map(([key, message]) => [
          key,
          foreign(new IntlMessageFormat(message, 'en').getAst()),
        ]),
      ),
    ]),
  );
}

type Element = ReturnType<IntlMessageFormat['getAst']>[number];

/** The number by which the parser marks text between the places of a message. */
const TEXT = new IntlMessageFormat('text').getAst()[0]?.type;

function foreign(elements: readonly Element[]): string {
  return elements.map(foreignElement).join('');
}

function foreignElement(element: Element): string {
  if ('options' in element) {
    const kind = 'pluralType' in element ? 'plural' : 'select';
    const options = Object.entries(element.options).map(
      ([key, { value }]) => `${key} {${foreign(value)}}`,
    );
    return `{${element.value}, ${kind}, ${options.join(' ')}}`;
  }
  if (!('value' in element)) return '#';
  return element.type === TEXT ? element.value.replace(/[A-Za-z]/g, 'ж') : `{${element.value}}`;
}
