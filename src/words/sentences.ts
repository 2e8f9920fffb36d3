// A refusal as whole sentences: where, what was expected, what came, what to do.
import { asGot, type Got, type Reason, type Refusal } from '../base/index.ts';
import { MOST_OWN_ON_SHEET } from '../figures/index.ts';
import type { Language } from '../languages/index.ts';
import { nearestOf } from './nearest.ts';
import { houseSentences } from './not-in-the-house.ts';
import { plainText } from './plain-text.ts';
import { amountIn, reasonIn } from './reasons.ts';
import { inCommas, SAYS, type SayRefusal } from './say-refusal.ts';

/** The refusal in English, on one line. */
export function sentenceOf(refusal: Refusal): string {
  return sentenceIn('en', refusal);
}

/** The refusal on one line; only what came in is made plain, as a language has direction marks of its own. */
export function sentenceIn(language: Language, refusal: Refusal): string {
  return sentencesOf(plainIn(cutShort(refusal)), language).join(' ');
}

/** The same with every text in it made plain. */
function plainIn<T>(part: T): T {
  if (typeof part === 'string') return plainText(part) as T;
  if (Array.isArray(part)) return part.map(plainIn) as T;
  if (typeof part !== 'object' || part === null) return part;
  return Object.fromEntries(Object.entries(part).map(([key, own]) => [key, plainIn(own)])) as T;
}

/** What came in may be very long: what is said of it, and compared with what is known, is its beginning. */
function cutShort(refusal: Refusal): Refusal {
  return 'got' in refusal && refusal.code !== 'pictures-not-here'
    ? ({ ...refusal, got: asGot(refusal.got) } as Refusal)
    : refusal;
}

/** As many numbers of pictures as one sheet has at the most are said in full. */
function numbersText(numbers: readonly string[]): string {
  const said = numbers.slice(0, MOST_OWN_ON_SHEET).map((number) => String(asGot(number)));
  return said.join(', ') + (numbers.length > said.length ? ' …' : '');
}

function sentencesOf(refusal: Refusal, language: Language): readonly string[] {
  const say = SAYS[language];
  const { at } = refusal;
  const own = (reason: Reason) => reasonIn(language, reason);
  const got = 'got' in refusal ? quoted(say, refusal.got) : '';
  switch (refusal.code) {
    case 'out-of-range':
      return rangeSentences(say, refusal, got, own);
    case 'not-a-choice':
      return choiceSentences(say, refusal, got, own);
    case 'wrong-type':
    case 'unreadable':
      return [say('expected', { at, expected: own(refusal.expected), got })];
    case 'missing':
      return [say('missing', { at, expected: own(refusal.expected) })];
    case 'unknown-field': {
      const nearest = nearestSentences(say, refusal);
      return [
        say('unknown', { at, got }),
        ...(nearest.length > 0 ? nearest : [knownSentence(say, refusal.choices)]),
      ];
    }
    case 'too-big':
      return [mostSentence(say, refusal, language)];
    case 'does-not-fit':
      return [roomSentence(say, refusal, language), sentence(own(refusal.advice))];
    case 'wrong-check':
      return [say('check', { at, got })];
    case 'unknown-version': {
      const known = inCommas(say, refusal.known.map(String));
      const version = String(refusal.got);
      return [say('version', { at, got: version, count: refusal.known.length, known })];
    }
    case 'not-in-the-house':
      return houseSentences(refusal, language);
    case 'not-proven':
      return [say('proof', { at, reason: own(refusal.reason) })];
    case 'not-correctable':
      return [correctionSentence(say, refusal)];
    case 'unwritable':
    case 'unchangeable':
      return [say(refusal.code, { at, reason: own(refusal.reason) })];
    case 'pictures-not-here': {
      const numbers = refusal.got.split(', ');
      return [say('pictures', { at, count: numbers.length, ids: numbersText(numbers) })];
    }
    case 'storage':
      return [say(`storage.${refusal.fault}`, { at })];
  }
}

type Of<C extends Refusal['code']> = Extract<Refusal, { readonly code: C }>;

function rangeSentences(
  say: SayRefusal,
  { at, got, min, max, because }: Of<'out-of-range'>,
  quotedGot: string,
  own: (reason: Reason) => string,
): readonly string[] {
  const key = min === max ? 'range.one' : 'range';
  const told = { at, min, max, got: quotedGot };
  return [
    because === undefined
      ? say(key, told)
      : say(`${key}.because`, { ...told, because: own(because) }),
    ...(typeof got === 'number' ? [say('range.use', { nearest: got < min ? min : max })] : []),
  ];
}

function choiceSentences(
  say: SayRefusal,
  refusal: Of<'not-a-choice'>,
  got: string,
  own: (reason: Reason) => string,
): readonly string[] {
  const { at, because } = refusal;
  const told = { at, choices: choicesText(say, refusal.choices), got };
  return [
    because === undefined
      ? say('choice', told)
      : say('choice.because', { ...told, because: own(because) }),
    ...nearestSentences(say, refusal),
  ];
}

function mostSentence(
  say: SayRefusal,
  { at, got, max, unit }: Of<'too-big' | 'does-not-fit'>,
  language: Language,
): string {
  return say('most', { at, amount: amountIn(language, max, unit), got });
}

function roomSentence(say: SayRefusal, refusal: Of<'does-not-fit'>, language: Language): string {
  const { at, max, unit } = refusal;
  return max === 0
    ? say('room.none', { at, amount: amountIn(language, max, unit) })
    : mostSentence(say, refusal, language);
}

function correctionSentence(
  say: SayRefusal,
  { at, got, least, most, paper }: Of<'not-correctable'>,
): string {
  return paper === undefined
    ? say('correction', { at, got, least, most })
    : say('correction.paper', { at, got, least, paper });
}

/** The nearest choice as a question; none where none is near. */
function nearestSentences(
  say: SayRefusal,
  refusal: Of<'not-a-choice' | 'unknown-field'>,
): readonly string[] {
  const nearest = refusal.nearest ?? nearestOf(String(refusal.got), refusal.choices);
  return nearest === undefined ? [] : [say('choice.nearest', { nearest })];
}

function knownSentence(say: SayRefusal, choices: readonly string[]): string {
  if (choices.length === 0) return say('unknown.nothing');
  return say('unknown.choices', { choices: inCommas(say, choices) });
}

/** More choices than this are no help in one sentence, and a few of them stand for all. */
const MOST_LISTED = 30;
const SHOWN_OF_MANY = 5;

function choicesText(say: SayRefusal, choices: readonly string[]): string {
  const count = choices.length;
  const isMany = count > MOST_LISTED;
  const shown = inCommas(say, isMany ? choices.slice(0, SHOWN_OF_MANY) : choices);
  if (count === 1) return say('choices.one', { choices: shown });
  return say(isMany ? 'choices.many' : 'choices.some', { count, choices: shown });
}

function sentence(advice: string): string {
  return `${advice.charAt(0).toUpperCase()}${advice.slice(1)}${/[.!?]$/.test(advice) ? '' : '.'}`;
}

/** Text in quotation marks; numbers and kinds of things as they are. */
function quoted(say: SayRefusal, got: Got): string {
  if (typeof got !== 'string') return String(got);
  if (got === 'nothing') return say('got.nothing');
  const list = /^a list of (\d+)$/.exec(got)?.[1];
  if (list !== undefined) return say('got.list', { count: Number(list) });
  const number = /^number (\d+)$/.exec(got)?.[1];
  if (number !== undefined) return say('got.number', { number });
  return /^an? (list|object)\b/.test(got) ? say('got.object') : say('got.text', { got });
}
