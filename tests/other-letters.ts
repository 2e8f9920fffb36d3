// All messages of the core in letters that are not English, as the catalogue of a language made for tests.
import { IntlMessageFormat } from 'intl-messageformat';
import { englishMessages, type Messages } from '../scripts/english-messages.ts';

/** A catalogue that says nothing in the letters of English, with the plural forms of English. */
export function inOtherLetters(): Readonly<Record<string, Messages>> {
  const english = englishMessages();
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
  return element.type === TEXT ? element.value.replace(/[A-Za-z]/g, 'ø') : `{${element.value}}`;
}
