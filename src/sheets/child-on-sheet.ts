// Whose sheet it is, in words that can be printed.
import { printableName } from '../page/index.ts';
import type { SheetChild } from './sheet.ts';

/**
 * The child's name, with its place in the group where another has the same; the place alone, as in the table of the group,
 * where a letter of the name cannot be printed.
 */
export function childOnSheet(child: SheetChild | undefined): string {
  if (child === undefined) return '';
  const name = printableName(child.name);
  if (name === '') return String(child.number);
  return child.isShared ? `${name} ${child.number}` : name;
}
