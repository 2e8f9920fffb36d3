// The name of a saved pack: says what is in it, and is safe on every file system.
import type { PressWhat } from '../making/protocol.ts';
import type { Entries } from '../recipe/entries.ts';

/** Longer names are cut off: file systems take 255 bytes, and a letter may take four. */
const MOST_LETTERS = 60;

/** Of a recipe `in-every-box-step-3-10-sheets-A4-418.pdf`, the number being the seed; else as it is named. */
export function fileName(what: PressWhat, ending: 'pdf' | 'zip' | 'json'): string {
  const name = 'entries' in what ? recipeName(what) : what.name;
  const safe = name.replaceAll(/[^\p{L}\p{M}\p{N}_.-]+/gu, '-').replace(/^[-.]+|[-.]+$/gu, '');
  return `${Array.from(safe).slice(0, MOST_LETTERS).join('') || 'sheets'}.${ending}`;
}

function recipeName({ entries, group }: Extract<PressWhat, { readonly entries: Entries }>): string {
  const { activity, step, sheets, paper, seed } = entries;
  const count = `${sheets}-sheet${sheets === 1 ? '' : 's'}`;
  const parts = [activity, `step-${step}`, count, ...(group === undefined ? [] : ['group'])];
  return [...parts, paper, seed].join('-');
}
