// The pack of a group as one pack for each child, so that each can go home by itself.
import type { Pack } from './pack.ts';
import type { Sheet, SheetChild } from './sheet.ts';

export interface ChildPack {
  readonly child: SheetChild;
  readonly pack: Pack;
}

/** In the order of the group; none for a pack for nobody in particular. */
export function packsOfChildren({ seed: _seed, sheets, ...rest }: Pack): readonly ChildPack[] {
  const own = new Map<number, { child: SheetChild; sheets: Sheet[] }>();
  for (const { child, ...sheet } of sheets) {
    if (child === undefined) continue;
    const entry = own.get(child.number) ?? { child, sheets: [] };
    entry.sheets.push({ ...sheet, child });
    own.set(child.number, entry);
  }
  return [...own.values()]
    .sort((one, other) => one.child.number - other.child.number)
    .map(({ child, sheets }) => ({ child, pack: { ...rest, sheets } }));
}

/** A character takes up to four bytes, a file's name at most 255. */
const LONGEST_WORDS = 40;

/** Such as `07-Wren` in a group of ten or more: number first, then letters and digits of any script. */
export function childFileName({ number, name }: SheetChild, children: number): string {
  const words = name.normalize('NFC').match(/[\p{L}\p{M}\p{N}]+/gu) ?? [];
  const joined = [...words.join('-')].slice(0, LONGEST_WORDS).join('');
  const numbered = String(number).padStart(String(children).length, '0');
  return joined === '' ? numbered : `${numbered}-${joined}`;
}
