// The catalogues of the languages are whole: each says every message of the core and of the app in its own words.
// Plural categories: those of CLDR, by Intl.PluralRules.
import { IntlMessageFormat } from 'intl-messageformat';
import { beforeAll, describe, expect, test } from 'vitest';
import { englishMessages, englishMessagesOfTheApp } from '../../scripts/english-messages.ts';
import { catalogueOf } from '../../src/languages/catalogues.ts';
import { type Catalogue, LANGUAGES, loadAllCatalogues } from '../../src/languages/index.ts';

const ENGLISH: Catalogue = { ...englishMessages(), ...englishMessagesOfTheApp() };

/** What a message may use beyond the places of its English one; the head of each file of messages tells which. */
const GRAMMAR = ['gender', 'case', 'count', 'reading'];

beforeAll(loadAllCatalogues);

describe.each(LANGUAGES.filter((language) => language !== 'en'))('%s', (language) => {
  const wrong = (fault: (message: string, english: string) => string | undefined) =>
    Object.entries(ENGLISH).flatMap(([space, messages]) =>
      Object.entries(messages).flatMap(([key, english]) => {
        const message = catalogueOf(language)[space]?.[key];
        const found = message === undefined ? undefined : fault(message, english);
        return found === undefined ? [] : [`${space} › ${key}: ${found}`];
      }),
    );

  test('says every message, and none that there is not', () => {
    const keysOf = (catalogue: Catalogue) =>
      Object.entries(catalogue).flatMap(([space, messages]) =>
        Object.keys(messages).map((key) => `${space} › ${key}`),
      );
    const [here, english] = [keysOf(catalogueOf(language)), keysOf(ENGLISH)];
    const [own, pattern] = [new Set(here), new Set(english)];
    expect(
      english.filter((key) => !own.has(key)),
      'missing',
    ).toEqual([]);
    expect(
      here.filter((key) => !pattern.has(key)),
      'too many',
    ).toEqual([]);
  });

  test('has the places of the English message and no others', () => {
    const faults = wrong((message, english) => {
      const [own, pattern] = [placesOf(message, language), placesOf(english, 'en')];
      const unknown = [...own].filter((name) => !pattern.has(name) && !GRAMMAR.includes(name));
      const lost = [...pattern].filter((name) => !own.has(name) && !GRAMMAR.includes(name));
      return unknown.length + lost.length === 0
        ? undefined
        : `unknown: ${unknown.join(', ')}; lost: ${lost.join(', ')} in ${message}`;
    });
    expect(faults).toEqual([]);
  });

  test('has each plural form that counts up to two hundred need', () => {
    const rules = new Intl.PluralRules(language);
    const needed = new Set(Array.from({ length: 200 }, (_, less) => rules.select(less + 1)));
    const faults = wrong((message, english) => {
      // Where not even English has forms, a number is told apart and nothing agrees with it.
      if (pluralsOf(english, 'en').every((forms) => !forms.includes('one'))) return undefined;
      const missing = pluralsOf(message, language).flatMap((forms) =>
        [...needed].filter((form) => !forms.includes(form)),
      );
      return missing.length === 0 ? undefined : `lacks ${missing.join(', ')} in ${message}`;
    });
    expect(faults).toEqual([]);
  });

  test('no apostrophe hides what stands in braces', () => {
    expect(
      wrong((message) => (message.includes('{') && message.includes("'") ? message : undefined)),
    ).toEqual([]);
  });

  test('nothing is left in English', () => {
    const faults = wrong((message, english) => {
      const words = english.replace(/\{[^}]*\}/g, '').match(/[A-Za-z]{3,}/g) ?? [];
      return message === english && words.length > 3 ? message : undefined;
    });
    expect(faults).toEqual([]);
  });
});

type Element = ReturnType<IntlMessageFormat['getAst']>[number];

function elementsOf(message: string, language: string): readonly Element[] {
  if (!message.includes('{')) return [];
  const inside = (elements: readonly Element[]): readonly Element[] =>
    elements.flatMap((element) => [
      element,
      ...('options' in element
        ? Object.values(element.options).flatMap(({ value }) => inside(value))
        : []),
    ]);
  return inside(new IntlMessageFormat(message, language).getAst());
}

/** The number by which the parser marks text between the places of a message. */
const TEXT = new IntlMessageFormat('text').getAst()[0]?.type;

function placesOf(message: string, language: string): ReadonlySet<string> {
  const places = elementsOf(message, language).flatMap((element) =>
    'value' in element && element.type !== TEXT ? [String(element.value)] : [],
  );
  return new Set(places);
}

function pluralsOf(message: string, language: string): readonly (readonly string[])[] {
  return elementsOf(message, language).flatMap((element) =>
    'pluralType' in element ? [Object.keys(element.options)] : [],
  );
}
