// What makes a row hard to go on with, measured from what is printed alone.
import type { Figure } from '../../figures/index.ts';
import { drawingDeed } from '../drawing-deed.ts';
import type { Features } from '../features.ts';
import { ATTRIBUTES, type Attribute, compareFigures } from '../figure-comparison.ts';
import { distinctFigures, likenessFeatures, mixture } from '../figure-features.ts';
import { type Deed, hardestHand } from '../hand.ts';
import { type Printed, responseTo } from './task.ts';

export function features(printed: Printed): Features {
  const { row, offered = [] } = printed;
  const shown = row.filter((figure) => figure !== null);
  const kinds = distinctFigures(shown);
  const courses = new Set(ATTRIBUTES.map((attribute) => courseOf(row, attribute)));
  const changing = [...courses].filter((course) => course.includes('1'));
  const conjunction = Math.max(0, changing.length - 1);
  const period = Math.max(1, ...changing.map(periodOf));
  const missing = row.length - shown.length;
  // Two whole units, the one that is begun, what is missing and what is offered: more of a row only helps.
  const compared = Math.log(2 * period + (shown.length % period) + missing + offered.length);
  return {
    compared,
    answers: Math.log(Math.max(1, missing)),
    nearMisses: Math.log(1 + offered.filter((figure) => isMixture(figure, kinds)).length),
    ...likenessFeatures(distinctFigures([...shown, ...offered])),
    mixed: mixture(offered),
    kinds: Math.log(kinds.length),
    period: Math.log(period),
    conjunction,
    conjunctionCompared: conjunction * compared,
    begun: row.at(-1) === null ? 0 : 1,
    rule: 1,
    hand: hardestHand(deedsOf(printed, kinds)),
  };
}

/** Nowhere in the row, though only one of several attributes is wrong: the colour of one, the form of another. */
function isMixture(figure: Figure, kinds: readonly Figure[]): boolean {
  const differing = (one: Figure, other: Figure) => compareFigures(one, other).differing.size;
  const isOfSeveral = kinds.some((one) => kinds.some((other) => differing(one, other) > 1));
  const apart = kinds.map((kind) => differing(kind, figure));
  return isOfSeveral && Math.min(...apart) === 1;
}

/** How an attribute runs along the row, a digit a place: 0 for its first value, 1 for its second; a blank where empty. */
function courseOf(row: Printed['row'], attribute: Attribute): string {
  const values: Figure[] = [];
  const digits = row.map((figure) => {
    if (!figure) return ' ';
    const known = values.findIndex(
      (value) => !compareFigures(value, figure).differing.has(attribute),
    );
    return String(known < 0 ? values.push(figure) - 1 : known);
  });
  return digits.join('');
}

/** The shortest unit that the places agree with. */
function periodOf(course: string): number {
  const periods = Array.from({ length: course.length }, (_, index) => index + 1);
  const isPeriod = (period: number) =>
    [...course].every((digit, place) => {
      const next = course[place + period] ?? ' ';
      return digit === ' ' || next === ' ' || digit === next;
    });
  return periods.find(isPeriod) ?? course.length;
}

function deedsOf(printed: Printed, kinds: readonly Figure[]): readonly Deed[] {
  const response = responseTo(printed);
  return response === 'draw' ? kinds.map(drawingDeed) : [response];
}
