// What attributes that the key does not use give away: they may vary, but they must not tell the answer.
import { type Told, told } from '../../base/index.ts';
import { type Attribute, differingAttributes, lookOf, looksEqual } from './solve-looks.ts';
import type { Answer, Printed } from './task.ts';

/** Faults of attributes in which the items differ although the key's figures do not. */
export function idleFaults(printed: Printed, answer: Answer): readonly Told[] {
  const { key, items } = printed;
  const used = differingAttributes(key.map((entry) => entry.figure));
  const idle = differingAttributes(items).filter((attribute) => !used.includes(attribute));
  const asInKey = items.filter((item, place) => {
    const entry = key[answer[place] ?? -1];
    return entry !== undefined && looksEqual(item, entry.figure);
  });
  return [
    ...(asInKey.length > 0 && asInKey.length < items.length
      ? [told('by-key', 'fault.some-as-key')]
      : []),
    ...idle.flatMap((attribute) =>
      tells(printed, answer, attribute) ? [told('by-key', 'fault.gives-away', { attribute })] : [],
    ),
  ];
}

/**
 * Whether the best guess from one attribute alone is right more often than the best guess without it:
 * the commonest entry, shared out over the values and rounded up for each.
 */
function tells({ items }: Printed, answer: Answer, attribute: Attribute): boolean {
  const looks = items.map((item) => lookOf(item, attribute));
  const values = [...new Set(looks)];
  const guessed = values.reduce(
    (sum, value) => sum + commonest(answer.filter((_, place) => looks[place] === value)),
    0,
  );
  return guessed > values.length * Math.ceil(commonest(answer) / values.length);
}

/** How often the commonest entry stands in a list. */
function commonest(entries: Answer): number {
  const counts = [...new Set(entries)].map(
    (entry) => entries.filter((other) => other === entry).length,
  );
  return Math.max(0, ...counts);
}
