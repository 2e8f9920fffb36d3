// What must hold of every input, whatever it is.
import type { Refusal, Result } from '../../src/base/index.ts';
import { LANGUAGES } from '../../src/languages/index.ts';
import { plainText, sentenceIn } from '../../src/words/index.ts';

/** Longer than any sentence that names every choice there is. */
const LONGEST_SENTENCE = 20_000;
const MOST_REFUSALS = 5000;
/** Of a name in any file system. */
const LONGEST_FILE_NAME = 255;

/** The value that was accepted; of a refusal every sentence is said in every language. */
export function acceptedOrTold<T>(result: Result<T>): T | undefined {
  if (result.ok) return result.value;
  const { refusals } = result;
  if (refusals.length === 0) throw new Error('refused without a reason');
  if (refusals.length > MOST_REFUSALS) throw new Error(`${refusals.length} refusals at once`);
  for (const refusal of refusals) tellable(refusal);
  return undefined;
}

function tellable(refusal: Refusal): void {
  for (const language of LANGUAGES) {
    const sentence = sentenceIn(language, refusal);
    if (sentence.trim() === '') throw new Error(`no sentence for ${refusal.code}`);
    if (sentence.length > LONGEST_SENTENCE) throw new Error(`${sentence.length} characters said`);
    if (plainText(sentence) !== sentence && language === 'en') {
      throw new Error(`said as it came in: ${JSON.stringify(sentence.slice(0, 200))}`);
    }
  }
}

/** A name of a file is one name and no way to another folder. */
export function isOneFileName(name: string): void {
  const isPlain = !/[/\\:*?"<>|\p{Cc}]/u.test(name) && !/\p{Cs}/u.test(name) && !/^\.*$/.test(name);
  if (isPlain && Buffer.byteLength(name) <= LONGEST_FILE_NAME) return;
  throw new Error(`no name of a file: ${JSON.stringify(name.slice(0, 300))}`);
}

const PROTOTYPES: readonly object[] = [
  Object.prototype,
  Array.prototype,
  Function.prototype,
  String.prototype,
  Number.prototype,
];
const OWN_KEYS = PROTOTYPES.map((each) => Reflect.ownKeys(each).length);
const OWN_VALUES = PROTOTYPES.map(valuesOf);

/** Throws where a prototype of the language has one key more or less. */
export function nothingPolluted(): void {
  for (const [index, each] of PROTOTYPES.entries()) {
    if (Reflect.ownKeys(each).length !== OWN_KEYS[index])
      throw new Error('a prototype was changed');
  }
}

/** The same of every value; slower. */
export function nothingReplaced(): void {
  nothingPolluted();
  for (const [index, each] of PROTOTYPES.entries()) {
    const before = OWN_VALUES[index] ?? [];
    if (valuesOf(each).some((value, place) => value !== before[place])) {
      throw new Error('a value of a prototype was replaced');
    }
  }
}

function valuesOf(prototype: object): readonly unknown[] {
  return Reflect.ownKeys(prototype).map((key) => {
    const found = Object.getOwnPropertyDescriptor(prototype, key);
    return found?.value ?? found?.get;
  });
}
