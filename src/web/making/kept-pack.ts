// The pack on the table, no more of it than is needed, and made no second time while it is paged through or changed.
import { accept, type Result } from '../../base/index.ts';
import type { Pack, Sheet } from '../../sheets/index.ts';
import { liesElsewhere, withChanged } from './changed-sheets.ts';
import { lastChanged } from './changed-texts.ts';
import { type PackAsked, packAsMade, sheetsOf } from './pack-of.ts';

interface Kept {
  /** What it was made from. */
  readonly key: string;
  readonly pack: Pack;
}

/** The last one that was made, as it was before anything was changed. */
let kept: Kept | undefined;

/** At least the first `needed` sheets of the pack and all that were changed, as they were made. */
export function keptAsMade(asked: PackAsked, needed: number): Result<Pack> {
  const all = sheetsOf(asked);
  if (!all.ok) return all;
  const { changed = [], ...entries } = asked.entries;
  const plain = { entries, group: asked.group };
  const pack = upTo(plain, Math.max(needed, lastChanged(changed)), all.value);
  if (!pack.ok) return pack;
  const isAll = !changed.some((text) => liesElsewhere(pack.value.sheets, text));
  return isAll ? pack : upTo(plain, all.value, all.value);
}

function upTo(asked: PackAsked, needed: number, all: number): Result<Pack> {
  const key = JSON.stringify([asked.entries, asked.group]);
  const before = kept?.key === key ? kept.pack : undefined;
  const had = before?.sheets.length ?? 0;
  if (before && had >= Math.min(needed, all)) return accept(before);
  // Whoever pages on gets twice as many as there were, so that a long pack is not begun anew for each of its sheets.
  const made = packAsMade(asked, Math.min(all, Math.max(needed, had * 2)));
  if (made.ok) kept = { key, pack: made.value };
  return made;
}

/** The last changed sheets, put into the pack that they are of. */
let changedOne: (Kept & { readonly of: Pack }) | undefined;

/** The same with its changed sheets. */
export function keptPack(asked: PackAsked, needed: number): Result<Pack> {
  const made = keptAsMade(asked, needed);
  const { changed } = asked.entries;
  if (!made.ok || changed === undefined) return made;
  const key = JSON.stringify(changed);
  if (changedOne?.of === made.value && changedOne.key === key) return accept(changedOne.pack);
  const pack = withChanged(made.value, changed);
  if (pack.ok) changedOne = { of: made.value, key, pack: pack.value };
  return pack;
}

/** The sheet of that number, 1 upward. */
export function sheetIn({ sheets }: Pack, number: number): Sheet {
  const sheet = sheets[number - 1];
  if (sheet === undefined) throw new Error(`pack: expected a sheet ${number}, got none`);
  return sheet;
}
