// Keeps what can be undone and done again for as long as the tab is open, also through a reload.
import type { History, SheetEdits } from '../../editing/index.ts';

const PREFIX = 'samewise.changing.1.';

/** What was kept for the sheet, if it is of these changes; a sheet that was changed elsewhere begins anew. */
export function recallHistory(key: string, now: SheetEdits): History<SheetEdits> | undefined {
  const kept = readKept(key);
  const isSame = JSON.stringify(kept?.now.edits) === JSON.stringify(now.edits);
  return isSame ? kept : undefined;
}

/** Whether there was room for it; what was kept of other sheets gives way. */
export function rememberHistory(key: string, history: History<SheetEdits>): boolean {
  const text = JSON.stringify(history);
  if (isPut(PREFIX + key, text)) return true;
  try {
    for (const name of Object.keys(sessionStorage)) {
      if (name.startsWith(PREFIX) && name !== PREFIX + key) sessionStorage.removeItem(name);
    }
  } catch {
    return false;
  }
  return isPut(PREFIX + key, text);
}

function isPut(name: string, text: string): boolean {
  try {
    sessionStorage.setItem(name, text);
    return true;
  } catch {
    return false;
  }
}

function readKept(key: string): History<SheetEdits> | undefined {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(PREFIX + key) ?? 'null');
    return isHistory(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

function isHistory(kept: unknown): kept is History<SheetEdits> {
  if (!(kept instanceof Object)) return false;
  const { past, now, future } = kept as Partial<Record<keyof History<unknown>, unknown>>;
  const isState = (state: unknown) =>
    state instanceof Object &&
    'edits' in state &&
    Array.isArray(state.edits) &&
    'locks' in state &&
    Array.isArray(state.locks);
  const isList = (list: unknown) => Array.isArray(list) && list.every(isState);
  return isList(past) && isState(now) && isList(future);
}
