// Sheets of a pack that a person changed: which they are, and the pack with them in it.
import { accept, type Result } from '../../base/index.ts';
import { makeSheet, type Pack, readCode, type Sheet, type SheetSpec } from '../../sheets/index.ts';
import { numberOf } from './changed-texts.ts';

/**
 * The pack with its changed sheets. A change of a sheet that the recipe no longer makes, or whose code cannot be read,
 * is left out; where a change has no room on another page, that is refused.
 */
export function withChanged(pack: Pack, changed: readonly string[] | undefined): Result<Pack> {
  if (changed === undefined) return accept(pack);
  const sheets = [...pack.sheets];
  for (const text of changed) {
    const sheet = sheets[numberOf(text) - 1];
    const edits = sheet && editsFor(sheet, text);
    if (!sheet || !edits) continue;
    const made = makeSheet({ ...sheet.spec, edits });
    if (!made.ok) return made;
    sheets[numberOf(text) - 1] = made.value;
  }
  return accept({ ...pack, sheets });
}

/** The edits of the code, if they were made to this very sheet. */
function editsFor({ spec }: Sheet, text: string): SheetSpec['edits'] {
  const read = readCode(text.slice(text.indexOf(':') + 1));
  if (!read.ok || !isSame(read.value, spec)) return undefined;
  return read.value.edits?.filter(({ task }) => task < spec.tasks);
}

function isSame(one: SheetSpec, other: SheetSpec): boolean {
  const key = ({ activity, step, values, seed }: SheetSpec) =>
    JSON.stringify([activity, step, Object.entries(values).sort(), seed]);
  return key(one) === key(other);
}
