// Whether a text that was scanned is the code of a sheet: the planner knows.
import type { Planner } from '../planning/planner.ts';

export async function isSheetCode(planner: Planner, text: string): Promise<boolean> {
  return (await planner.ask('sheet', { code: text })).ok;
}
