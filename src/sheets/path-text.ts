// How a place inside a file is written for people: `sheets[0].tasks[2].boxes`.
import type { Refusal } from '../base/index.ts';

export type PathPart = string | number;

/** The place as text behind `what`, the file; either may be empty. */
export function pathText(what: string, path: readonly PropertyKey[]): string {
  const place = path
    .map((part) => (typeof part === 'number' ? `[${part}]` : `.${shown(String(part))}`))
    .join('')
    .replace(/^\./, '');
  return [what, place].filter((part) => part !== '').join(' › ');
}

/** The refusals, each with where in `place` it is. */
export function refusalsUnder(place: string, refusals: readonly Refusal[]): readonly Refusal[] {
  return refusals.map((refusal) => ({ ...refusal, at: `${place} › ${refusal.at}` }));
}

/** Keys come from strangers' files: long ones are cut, odd ones are quoted. */
function shown(key: string): string {
  const short = key.length > 40 ? `${key.slice(0, 37)}…` : key;
  return /^[\w-]+$/.test(short) ? short : JSON.stringify(short);
}
