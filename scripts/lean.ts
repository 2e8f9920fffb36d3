// What the built app leaves out of what a browser fetches: the parser of messages, which are parsed here instead, and
// what the parts of the screen say in languages that the app does not speak.
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { IntlMessageFormat } from 'intl-messageformat';
import type { Plugin } from 'vite';
import { LANGUAGES } from '../src/languages/language.ts';
import { propertiesOf } from './parts-said.ts';

/** English messages, beside what says them. */
const ENGLISH = /\/src\/.*messages(-\w+)*\.ts$/;
/** Where the catalogues are fetched, and how one is. */
const CATALOGUES = /\/src\/languages\/catalogues\.ts$/;
const IMPORTED = /import\(['"]\.\/(\w+\.json)['"]\)/g;
const AS_CATALOGUE = `
async function asCatalogue(file) {
  if (!file.ok) throw new Error(file.url + ': got status ' + file.status);
  return { default: await file.json() };
}`;
const PARSER = '@formatjs/icu-messageformat-parser';
/** Where what a part says is gathered, such as `menu/intlStrings.mjs`. */
const ALL_OF_PART = /\/react-aria\/.*\/(\w+)\/intlStrings\.m?js$/;
/** What opens the object of languages there. */
const OBJECT = '$exports = {\n';
/** What the parts of the screen say in one language, such as `intl/menu/de-DE.mjs`. */
const OF_PARTS = /\/react-aria[^/]*\/.*\/intl\/(?:\w+\/)?([a-z]{2,3})-[A-Z]{2}\.m?js$/;

type Catalogue = Readonly<Record<string, Readonly<Record<string, string>>>>;

/**
 * Messages with places come as they are once parsed, in the code and in the catalogues. A catalogue is a file of its own
 * that the screen and all workers fetch from one address.
 */
export function parsedMessages(): Plugin {
  return {
    name: 'samewise-parsed-messages',
    enforce: 'pre',
    resolveId: {
      filter: { id: new RegExp(`^${PARSER}$`) },
      handler(_id, importer) {
        return this.resolve(`${PARSER}/no-parser.js`, importer);
      },
    },
    transform: {
      filter: { id: CATALOGUES },
      handler(code, id) {
        const fetched = code.replaceAll(IMPORTED, (_all, name: string) => {
          const text = readFileSync(join(dirname(id), name), 'utf8');
          const source = JSON.stringify(parsedCatalogue(JSON.parse(text)));
          const file = this.emitFile({ type: 'asset', name, source });
          return `fetch(import.meta.ROLLUP_FILE_URL_${file}).then(asCatalogue)`;
        });
        if (fetched === code) throw new Error(`${id}: expected imports of catalogues`);
        return { code: fetched + AS_CATALOGUE, map: null };
      },
    },
  };
}

/** The same for English: each text with places, in what TypeScript has become. */
export function parsedEnglish(): Plugin {
  return {
    name: 'samewise-parsed-english',
    transform: {
      filter: { id: ENGLISH },
      handler(code) {
        const texts = textsIn(this.parse(code)).sort((one, other) => other.start - one.start);
        let parsed = code;
        for (const { start, end, value } of texts) {
          parsed = parsed.slice(0, start) + JSON.stringify(partsOf(value)) + parsed.slice(end);
        }
        return { code: parsed, map: null };
      },
    },
  };
}

/**
 * Leaves empty what the parts of the screen say in other languages: it is never looked up, as the app tells them its own.
 * The library's `optimize-locales-plugin` does the same. Languages of the app that the library does not speak are added.
 */
export function spokenParts(): Plugin {
  const spoken: readonly string[] = LANGUAGES;
  return {
    name: 'samewise-spoken-parts',
    load: {
      filter: { id: OF_PARTS },
      handler(id) {
        const [, language = ''] = OF_PARTS.exec(id) ?? [];
        return spoken.includes(language) ? undefined : 'export default {};';
      },
    },
    transform: {
      filter: { id: ALL_OF_PART },
      handler(code, id) {
        const [, part = ''] = ALL_OF_PART.exec(id) ?? [];
        const added = propertiesOf(part);
        if (added === '') return null;
        const start = code.indexOf(OBJECT) + OBJECT.length;
        if (start < OBJECT.length) throw new Error(`${id}: expected an object of languages`);
        return { code: `${code.slice(0, start)}${added}\n${code.slice(start)}`, map: null };
      },
    },
  };
}

/** Of a catalogue, as the built app has it. */
export function parsedCatalogue(catalogue: Catalogue) {
  const each = <T, R>(all: Readonly<Record<string, T>>, make: (one: T) => R) =>
    Object.fromEntries(Object.entries(all).map(([name, one]) => [name, make(one)]));
  const parsed = (text: string) => (text.includes('{') ? partsOf(text) : text);
  return each(catalogue, (messages) => each(messages, parsed));
}

/** As the library parses it. */
function partsOf(message: string) {
  return new IntlMessageFormat(message, 'en').getAst();
}

interface Text {
  readonly start: number;
  readonly end: number;
  readonly value: string;
}

/** All plain texts with places. */
function textsIn(node: unknown): Text[] {
  if (typeof node !== 'object' || node === null) return [];
  return isText(node) ? [node] : Object.values(node).flatMap(textsIn);
}

function isText(node: object): node is Text {
  if (!('type' in node && node.type === 'Literal' && 'value' in node)) return false;
  return typeof node.value === 'string' && node.value.includes('{');
}
