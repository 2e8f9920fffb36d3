// A refusal as whole sentences: where, what was expected, what came, what to do.
import type { Got, Refusal, StorageFault } from '../base/index.ts';
import { nearestOf } from './nearest.ts';
import { houseFact } from './not-in-the-house.ts';
import { plainText } from './plain-text.ts';

/** The refusal in English, on one line. */
export function sentenceOf(refusal: Refusal): string {
  return plainText(`${refusal.at}: ${factOf(refusal)}`);
}

function factOf(refusal: Refusal): string {
  switch (refusal.code) {
    case 'out-of-range':
      return rangeFact(refusal);
    case 'not-a-choice':
      return `expected ${listed(refusal.choices)}, got ${quoted(refusal.got)}${because(refusal)}.${question(refusal)}`;
    case 'wrong-type':
      return `expected ${refusal.expected}, got ${quoted(refusal.got)}.`;
    case 'missing':
      return `expected ${refusal.expected}, got nothing.`;
    case 'unknown-field':
      return `${quoted(refusal.got)} is not known here.${question(refusal) || known(refusal.choices)}`;
    case 'too-big':
      return `expected at most ${refusal.max} ${refusal.unit}, got ${refusal.got}.`;
    case 'unreadable':
      return `expected ${refusal.expected}, got ${quoted(refusal.got)}.`;
    case 'wrong-check':
      return (
        `${quoted(refusal.got)} has a wrong, missing or extra character, or two swapped. ` +
        'Compare it with the code on the sheet.'
      );
    case 'unknown-version':
      return (
        `made by version ${refusal.got}; this program reads ${versions(refusal.known)}. ` +
        'Get a newer Samewise to read it.'
      );
    case 'does-not-fit':
      if (refusal.max === 0)
        return `there is room for no ${refusal.unit}. ${sentence(refusal.advice)}`;
      return `expected at most ${refusal.max} ${refusal.unit}, got ${refusal.got}. ${sentence(refusal.advice)}`;
    case 'not-in-the-house':
      return houseFact(refusal);
    case 'not-proven':
      return `not proven: ${refusal.reason}. Nothing was written.`;
    case 'not-correctable':
      return correctionFact(refusal);
    case 'unwritable':
      return `cannot be written: ${refusal.reason}.`;
    case 'storage':
      return STORAGE_FACTS[refusal.fault];
  }
}

const STORAGE_FACTS: Readonly<Record<StorageFault, string>> = {
  denied:
    'this browser keeps nothing for this page, as in some private windows or with site data blocked. ' +
    'Nothing was saved. Open the page in an ordinary window, or allow it to keep data.',
  full:
    'this browser has no room left. This was not saved; what was saved before is still there. ' +
    'Make a backup, free some space on this device, then try again.',
  blocked:
    'an older Samewise is still open in another tab or window. Nothing was changed. ' +
    'Close the other one, then try again.',
  failed:
    'the browser gave up in the middle, so nothing was changed. Reload the page and try again.',
};

function rangeFact(refusal: Extract<Refusal, { readonly code: 'out-of-range' }>): string {
  const { got, min, max } = refusal;
  const range = min === max ? `${min}` : `${min} to ${max}`;
  const nearest = typeof got === 'number' ? ` Use ${got < min ? min : max}.` : '';
  return `expected ${range}, got ${quoted(got)}${because(refusal)}.${nearest}`;
}

function correctionFact(refusal: Extract<Refusal, { readonly code: 'not-correctable' }>): string {
  const { got, least, most, paper } = refusal;
  const advice = 'choose “100 %” or “actual size” in the print window, and measure a new print.';
  return paper === undefined
    ? `a 50 mm line that measures ${got} mm cannot be put right here: only ${least} to ${most} mm can. ` +
        `The print window may be scaling the page: ${advice}`
    : `on ${paper}, at least ${least} mm can be put right, got ${got} mm: enlarged further, the page ` +
        `would run over the edge of the paper. Do not correct it; ${advice}`;
}

function because({ because: reason }: { readonly because?: string }): string {
  return reason === undefined ? '' : ` (${reason})`;
}

/** The nearest choice as a question, with a space before it; empty where none is near. */
function question(refusal: {
  readonly got: Got;
  readonly choices: readonly string[];
  readonly nearest?: string;
}): string {
  const nearest = refusal.nearest ?? nearestOf(String(refusal.got), refusal.choices);
  return nearest === undefined ? '' : ` Did you mean ${nearest}?`;
}

function known(choices: readonly string[]): string {
  return choices.length === 0 ? ' Take it out.' : ` Known are ${choices.join(', ')}.`;
}

/** More choices than this are no help in one sentence, and a few of them stand for all. */
const MOST_LISTED = 30;
const SHOWN_OF_MANY = 5;

function listed(choices: readonly string[]): string {
  if (choices.length === 1) return `${choices[0]}`;
  return choices.length <= MOST_LISTED
    ? `one of ${choices.join(', ')}`
    : `one of ${choices.length} that are known, such as ${choices.slice(0, SHOWN_OF_MANY).join(', ')}`;
}

function versions(known: readonly number[]): string {
  return `${known.length === 1 ? 'version' : 'versions'} ${known.join(', ')}`;
}

function sentence(advice: string): string {
  return `${advice.charAt(0).toUpperCase()}${advice.slice(1)}${/[.!?]$/.test(advice) ? '' : '.'}`;
}

/** Text in quotation marks; numbers and kinds of things as they are. */
function quoted(got: Got): string {
  const isKind =
    typeof got === 'string' && /^(nothing|an? (list|object)\b.*|number \d+)$/.test(got);
  return typeof got === 'string' && !isKind ? `"${got}"` : String(got);
}
