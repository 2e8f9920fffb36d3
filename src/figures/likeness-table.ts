// Outline distances of unturned forms, measured beforehand, so that the first task of a run need not wait.
import type { FormId } from './form-names.ts';
import table from './likeness.generated.json' with { type: 'json' };

/** What was measured of two unturned forms, each 0 to 0.99 in hundredths. */
export interface TabledShares {
  /** As they lie. */
  readonly plain: number;
  /** The least over mirrorings and quarter turns. */
  readonly turned: number;
}

/** Forms whose every pair was measured, with two digits a pair, the pairs of the first form first. */
interface Group {
  readonly forms: string;
  readonly plain: string;
  readonly turned: string;
}

/** The place of a form in its group. */
interface Place {
  readonly group: Group;
  readonly size: number;
  readonly index: number;
}

const PLACES: ReadonlyMap<string, Place> = new Map(
  (table.groups as readonly Group[]).flatMap((group) => {
    const forms = group.forms.split(' ');
    return forms.map((form, index) => [form, { group, size: forms.length, index }] as const);
  }),
);

/** The shares of two different forms; none where the table does not hold the pair. */
export function tabledShares(one: FormId, other: FormId): TabledShares | undefined {
  const [place, otherPlace] = [PLACES.get(one), PLACES.get(other)];
  if (!place || place.group !== otherPlace?.group || one === other) return undefined;
  const [first, second] = [place.index, otherPlace.index].sort((a, b) => a - b);
  const pair = pairNumber(first ?? 0, second ?? 0, place.size);
  return { plain: shareAt(place.group.plain, pair), turned: shareAt(place.group.turned, pair) };
}

/** How many pairs stand before that of `first` and `second`, counted from 0, `first` the lesser. */
export function pairNumber(first: number, second: number, size: number): number {
  return first * size - (first * (first + 1)) / 2 + second - first - 1;
}

function shareAt(digits: string, pair: number): number {
  return Number(digits.slice(2 * pair, 2 * pair + 2)) / 100;
}
