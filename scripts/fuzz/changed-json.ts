// Valid JSON values with a few changes: a value of another kind, a field more or less, a list that is longer.
import fc from 'fast-check';
import { BEYOND_NUMBERS, hostileKey, hostileValue } from './hostile.ts';

/** A change of one place; which one, `at` says by its number among all. */
type Change =
  | { readonly kind: 'value'; readonly at: number; readonly value: unknown }
  | { readonly kind: 'number'; readonly at: number; readonly by: number }
  | { readonly kind: 'like'; readonly at: number; readonly from: number }
  | { readonly kind: 'field'; readonly at: number; readonly key: string; readonly value: unknown }
  | { readonly kind: 'without'; readonly at: number }
  | { readonly kind: 'repeat'; readonly at: number; readonly times: number };

const place = fc.nat(0xffff);
const changes: fc.Arbitrary<readonly Change[]> = fc.array(
  fc.oneof(
    fc.record({ kind: fc.constant('value' as const), at: place, value: hostileValue }),
    fc.record({
      kind: fc.constant('number' as const),
      at: place,
      by: fc.constantFrom(-2, -1, 1, 2, 7),
    }),
    // A value of the same kind from elsewhere passes the schema and reaches what lies behind it.
    fc.record({ kind: fc.constant('like' as const), at: place, from: place }),
    fc.record({
      kind: fc.constant('field' as const),
      at: place,
      key: hostileKey,
      value: hostileValue,
    }),
    fc.record({ kind: fc.constant('without' as const), at: place }),
    fc.record({
      kind: fc.constant('repeat' as const),
      at: place,
      times: fc.constantFrom(2, 3, 8, 40),
    }),
  ),
  { maxLength: 4 },
);

const TEXT_CHANGES: readonly ((text: string, at: number) => string)[] = [
  (text, at) => text.slice(0, at),
  (text, at) => text.slice(at),
  (text, at) => `${text.slice(0, at)}\u0000${text.slice(at)}`,
  (text, at) => `${text.slice(0, at)}${'['.repeat(50_000)}${text.slice(at)}`,
  (text, at) =>
    text.slice(0, at) + String.fromCharCode(text.charCodeAt(at) ^ 1) + text.slice(at + 1),
  (text) => `\ufeff${text}`,
  (text) => text.replace('{', '{"__proto__":{"isPolluted":true},'),
  (text) => text.replace('{', '{"constructor":{"prototype":{"isPolluted":true}},'),
  (text) => text.replace(/"(\w+)":/, '"$1":null,"$1":'),
  (text) => text.replace(/(-?\d+)/, 'NaN'),
];

const textChange = fc.oneof(
  { weight: 9, arbitrary: fc.constant(undefined) },
  { weight: 1, arbitrary: fc.record({ which: fc.nat(TEXT_CHANGES.length - 1), at: place }) },
);

/** Values like one of `bases`. */
export function changedValues(bases: readonly unknown[]): fc.Arbitrary<unknown> {
  return fc.tuple(fc.nat(bases.length - 1), changes).map(([which, all]) => {
    const root = { value: structuredClone(bases[which]) };
    for (const change of all) apply(root, change);
    return root.value;
  });
}

/** Texts of JSON like those of one of `bases`; one in ten is changed as a text, too. */
export function changedTexts(bases: readonly unknown[]): fc.Arbitrary<string> {
  return fc.tuple(changedValues(bases), textChange).map(([value, change]) => {
    const text = jsonText(value);
    if (change === undefined) return text;
    return TEXT_CHANGES[change.which]?.(text, change.at % (text.length + 1)) ?? text;
  });
}

export function jsonText(value: unknown): string {
  const text = JSON.stringify(value) ?? '';
  return text.replaceAll(JSON.stringify(BEYOND_NUMBERS), '1e999');
}

type Holder = Record<string, unknown>;

interface Spot {
  readonly holder: Holder;
  readonly key: string;
}

function apply(root: Holder, change: Change): void {
  const spots = spotsIn(root);
  const { holder, key } = spots[change.at % spots.length] ?? { holder: root, key: 'value' };
  const now = holder[key];
  switch (change.kind) {
    case 'value':
      // A copy: what is put in twice must not hold itself after the next change.
      put(holder, key, structuredClone(change.value));
      return;
    case 'number': {
      const numbers = spots.filter((spot) => typeof spot.holder[spot.key] === 'number');
      const spot = numbers[change.at % Math.max(1, numbers.length)];
      if (spot) put(spot.holder, spot.key, Number(spot.holder[spot.key]) + change.by);
      return;
    }
    case 'like': {
      const alike = spots.filter((spot) => kindOf(spot.holder[spot.key]) === kindOf(now));
      const from = alike[change.from % Math.max(1, alike.length)];
      if (from) put(holder, key, structuredClone(from.holder[from.key]));
      return;
    }
    case 'field':
      if (typeof now === 'object' && now !== null) {
        put(now as Holder, change.key, structuredClone(change.value));
      }
      return;
    case 'without':
      if (Array.isArray(holder)) holder.splice(Number(key), 1);
      else delete holder[key];
      return;
    case 'repeat': {
      if (!Array.isArray(now) || now.length === 0 || now.length > 1000) return;
      const more = Array.from({ length: change.times }, () => structuredClone(now)).flat();
      put(holder, key, more);
    }
  }
}

/** Also `__proto__` becomes a field of its own, as it does where JSON is read. */
function put(holder: Holder, key: string, value: unknown): void {
  if (Array.isArray(holder) && !/^\d+$/.test(key)) return;
  Object.defineProperty(holder, key, {
    value,
    writable: true,
    enumerable: true,
    configurable: true,
  });
}

function kindOf(value: unknown): string {
  if (Array.isArray(value)) return 'list';
  return value === null ? 'null' : typeof value;
}

const MOST_SPOTS = 20_000;

function spotsIn(root: Holder): readonly Spot[] {
  const spots: Spot[] = [];
  const open: Holder[] = [root];
  for (let holder = open.pop(); holder && spots.length < MOST_SPOTS; holder = open.pop()) {
    for (const key of Object.keys(holder)) {
      spots.push({ holder, key });
      const inner = holder[key];
      if (typeof inner === 'object' && inner !== null) open.push(inner as Holder);
    }
  }
  return spots;
}
