// Sheets of a pack that a person changed: which they are, and the pack with them in it.
import { accept, type Result } from '../../base/index.ts';
import { makeSheet, type Pack, readCode, type Sheet, type SheetSpec } from '../../sheets/index.ts';
import { changedText, codeIn, numberOf } from './changed-texts.ts';

type Edits = NonNullable<SheetSpec['edits']>;

/**
 * The pack with its changed sheets. A change of a sheet that the recipe no longer makes, or whose code cannot be read,
 * is left out; where a change has no room on another page, that is refused.
 */
export function withChanged(pack: Pack, changed: readonly string[] | undefined): Result<Pack> {
  if (changed === undefined) return accept(pack);
  const sheets = [...pack.sheets];
  for (const text of changed) {
    const placed = placedIn(pack.sheets, text);
    const sheet = placed && sheets[placed.number - 1];
    if (!placed || !sheet) continue;
    const made = makeSheet({ ...sheet.spec, edits: placed.edits });
    if (!made.ok) return made;
    const { child } = sheet;
    sheets[placed.number - 1] = child === undefined ? made.value : { ...made.value, child };
  }
  return accept({ ...pack, sheets });
}

/** What was changed on the sheet of that number; none where nothing was. */
export function editsOf(
  sheets: readonly Sheet[],
  changed: readonly string[] | undefined,
  number: number,
): Edits {
  const own = (changed ?? []).map((text) => placedIn(sheets, text));
  return own.find((placed) => placed?.number === number)?.edits ?? [];
}

/** The changed sheets as a recipe writes them, with this code for the one of that number; without one, it is as made. */
export function changedWith(
  sheets: readonly Sheet[],
  changed: readonly string[] | undefined,
  number: number,
  code: string | undefined,
): readonly string[] {
  const others = (changed ?? []).flatMap((text) => {
    const at = placedIn(sheets, text)?.number ?? numberOf(text);
    return at === number ? [] : [changedText(at, codeIn(text))];
  });
  return code === undefined ? others : [...others, changedText(number, code)];
}

interface Placed {
  /** Of the sheet, 1 upward. */
  readonly number: number;
  readonly edits: Edits;
}

/** The sheet that was changed: the one of its number, or the one that lies elsewhere since a group was sorted anew. */
function placedIn(sheets: readonly Sheet[], text: string): Placed | undefined {
  const read = readCode(codeIn(text));
  if (!read.ok) return undefined;
  const isMeant = (sheet: Sheet | undefined) =>
    sheet !== undefined && isSame(read.value, sheet.spec);
  const index = isMeant(sheets[numberOf(text) - 1])
    ? numberOf(text) - 1
    : sheets.findIndex((sheet) => sheet.child !== undefined && isMeant(sheet));
  const sheet = sheets[index];
  const edits = read.value.edits?.filter(({ task }) => task < (sheet?.spec.tasks ?? 0));
  return sheet && edits && { number: index + 1, edits };
}

/** Whether the changed sheet may be a later one of the pack of a group, of which these are the first sheets. */
export function liesElsewhere(sheets: readonly Sheet[], text: string): boolean {
  const read = readCode(codeIn(text));
  const like = sheets.find(({ child }) => child !== undefined)?.spec;
  if (!read.ok || like === undefined || placedIn(sheets, text) !== undefined) return false;
  return kindOf({ ...read.value, step: like.step }) === kindOf(like);
}

function isSame(one: SheetSpec, other: SheetSpec): boolean {
  return one.seed === other.seed && kindOf(one) === kindOf(other);
}

function kindOf({ activity, step, values }: SheetSpec): string {
  return JSON.stringify([activity, step, Object.entries(values).sort()]);
}
