// What is half typed or chosen and nowhere saved, carried over when the page is loaded anew with a newer version.
import { useEffect, useLayoutEffect, useRef, useState } from 'react';

const PLACE = 'samewise.carried-over';

/** What each name stands for on the screen at present. */
const present = new Map<string, () => unknown>();
/** What came over from the page before and was not yet taken up. */
const carried = readCarried();

/**
 * A state that a change-over does not lose. `name` says what it is of: what was carried over under another name is no
 * part of it. `read` makes sense of what an older version may have left, and of undefined where nothing was.
 */
export function useKept<T>(
  name: string,
  read: (left: unknown) => T,
): [T, (next: T | ((now: T) => T)) => void] {
  const [state, setState] = useState(() => read(carried.get(name)));
  useKeep(name, state);
  return [state, setState];
}

/** A text that was left; empty where none was. */
export function readText(left: unknown): string {
  return typeof left === 'string' ? left : '';
}

/** A yes that was left; no where none was. */
export function readYes(left: unknown): boolean {
  return left === true;
}

/** Carries the value over under the name, as long as it is on the screen. */
export function useKeep(name: string, value: unknown): void {
  const latest = useRef(value);
  useLayoutEffect(() => {
    latest.current = value;
  });
  useEffect(() => {
    const give = () => latest.current;
    present.set(name, give);
    // Whoever comes here later begins anew, as ever.
    carried.delete(name);
    return () => {
      if (present.get(name) === give) present.delete(name);
    };
  }, [name]);
}

/** What was carried over under the name, as long as nothing on the screen has taken it up. */
export function carriedOver(name: string): unknown {
  return carried.get(name);
}

/** Puts away what is on the screen, for the page that comes next in this tab; whether that could be done. */
export function carryOver(): boolean {
  const values = [...present].map(([name, give]) => [name, give()] as const);
  // What was never taken up, since its screen was not gone to, is still to be had.
  const all = JSON.stringify(Object.fromEntries([...carried, ...values]));
  try {
    sessionStorage.setItem(PLACE, all);
    return true;
  } catch {
    return false;
  }
}

/** Keeps what is on the screen for what is drawn next in its place, such as in another language. */
export function keepForNext(): void {
  const values = [...present].map(([name, give]) => [name, give()] as const);
  // As text and back, since what reads it expects no more than what a change-over leaves.
  const all: object = JSON.parse(JSON.stringify(Object.fromEntries(values)));
  for (const [name, value] of Object.entries(all)) carried.set(name, value);
}

/** Read once, and left nowhere. */
function readCarried(): Map<string, unknown> {
  try {
    const text = sessionStorage.getItem(PLACE) ?? '{}';
    sessionStorage.removeItem(PLACE);
    return new Map(Object.entries(JSON.parse(text)));
  } catch {
    return new Map();
  }
}
