// Reading JSON that may be hostile: limited in size and depth, free of keys that reach into prototypes.
import { accept, asGot, type Refusal, type Result, refuse, told } from '../base/index.ts';
import { type PathPart, pathText } from './path-text.ts';

export interface JsonLimits {
  /** Most characters before anything is parsed. */
  readonly characters: number;
}

/** Deeper than any file of ours; the deepest point of a pack lies at 10. */
const DEEPEST = 24;
/** A key that JSON allows and that means an object's prototype elsewhere. */
const FORBIDDEN_KEY = '__proto__';

/** The value that `text` holds; `what` names it in refusals, such as `recipe`. */
export function readJson(text: string, what: string, limits: JsonLimits): Result<unknown> {
  if (text.length > limits.characters) {
    return refuse({
      code: 'too-big',
      at: what,
      got: text.length,
      max: limits.characters,
      unit: told('reasons', 'amount.characters'),
    });
  }
  const parsed = parse(text, what);
  return parsed.ok ? checkNesting(parsed.value, what) : parsed;
}

function parse(text: string, what: string): Result<unknown> {
  try {
    // A byte order mark is no part of JSON, but some editors write one.
    return accept(JSON.parse(text.startsWith('\ufeff') ? text.slice(1) : text));
  } catch (error) {
    return refuse(faultRefusal(error instanceof Error ? error.message : '', text, what));
  }
}

/** Engines tell of a fault in their own words: where these give a position it becomes line and column. */
function faultRefusal(message: string, text: string, what: string): Refusal {
  const got = asGot(text.trim() === '' ? 'nothing' : text.trim());
  const found = /position (\d+)/.exec(message);
  if (!found) {
    const expected =
      message === ''
        ? told('reasons', 'expected.json')
        : told('reasons', 'expected.json.fault', { fault: message });
    return { code: 'unreadable', at: what, got, expected };
  }
  const lines = text.slice(0, Number(found[1])).split('\n');
  const column = (lines[lines.length - 1] ?? '').length + 1;
  const at = `${what} › line ${lines.length}, column ${column}`;
  return { code: 'unreadable', at, got, expected: told('reasons', 'expected.json') };
}

/** Walks without recursion, so that depth costs no stack. */
function checkNesting(root: unknown, what: string): Result<unknown> {
  const open: { readonly value: unknown; readonly path: readonly PathPart[] }[] = [
    { value: root, path: [] },
  ];
  for (let item = open.pop(); item; item = open.pop()) {
    const { value, path } = item;
    if (typeof value !== 'object' || value === null) continue;
    if (path.length >= DEEPEST) {
      return refuse({
        code: 'too-big',
        at: pathText(what, path.slice(0, 4)),
        got: path.length + 1,
        max: DEEPEST,
        unit: told('reasons', 'amount.levels'),
      });
    }
    for (const [key, child] of Object.entries(value)) {
      const part = Array.isArray(value) ? Number(key) : key;
      if (key === FORBIDDEN_KEY) {
        return refuse({ code: 'unknown-field', at: pathText(what, path), got: key, choices: [] });
      }
      if (typeof child === 'object' && child !== null) {
        open.push({ value: child, path: [...path, part] });
      }
    }
  }
  return accept(root);
}
