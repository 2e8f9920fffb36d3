// What makes a field with a hole hard to finish, measured from what is printed alone.
import type { Figure } from '../../figures/index.ts';
import { drawingDeed } from '../drawing-deed.ts';
import type { Features } from '../features.ts';
import { ATTRIBUTES, type Attribute, areAlike, compareFigures } from '../figure-comparison.ts';
import { distinctFigures, mixture } from '../figure-features.ts';
import { type Deed, hardestHand } from '../hand.ts';
import { solve } from './solve.ts';
import { type Piece, type Printed, responseTo } from './task.ts';

export function features(printed: Printed): Features {
  const { field, columns, offered = [] } = printed;
  const kinds = distinctFigures(field.filter((figure) => figure !== null));
  const holes = field.flatMap((figure, place) => (figure ? [] : [place]));
  const wrong = wrongPieces(printed);
  const pairs = wrong.flatMap(({ apart }) => apart);
  const compared = Math.log(besideHoles(field, columns, holes) + offered.flat().length);
  const courses = new Set(ATTRIBUTES.map((attribute) => courseOf(field, attribute)));
  const changing = [...courses].filter((course) => course.includes('1'));
  const conjunction = Math.max(0, changing.length - 1);
  const mean = (amounts: readonly number[]) =>
    amounts.reduce((sum, amount) => sum + amount, 0) / Math.max(1, amounts.length);
  return {
    compared,
    nearMisses: Math.log(1 + wrong.filter(({ isNear }) => isNear).length),
    likeness: mean(pairs.map((pair) => pair.likeness)),
    quantities: mean(pairs.map(({ countShare = 0 }) => countShare)),
    mirrored: mean(pairs.map((pair) => (pair.isMirror ? 1 : 0))),
    oblique: mean(pairs.map((pair) => (pair.isOblique ? 1 : 0))),
    mixed: mixture(wrong.flatMap(({ piece }) => piece)),
    elements: Math.log(holes.length),
    kinds: Math.log(kinds.length),
    period: Math.log(Math.max(1, ...changing.map((course) => periodOf(course, columns)))),
    rule: changing.every((course) => hasLines(course, columns)) ? 1 : 2,
    conjunction,
    conjunctionCompared: conjunction * compared,
    hand: hardestHand(deedsOf(printed, kinds)),
  };
}

/** How many figures stand in the rows and columns of the hole. */
function besideHoles(field: Printed['field'], columns: number, holes: readonly number[]): number {
  const rows = new Set(holes.map((place) => Math.floor(place / columns)));
  const across = new Set(holes.map((place) => place % columns));
  return field.filter(
    (figure, place) =>
      figure && (rows.has(Math.floor(place / columns)) || across.has(place % columns)),
  ).length;
}

/**
 * The pieces that do not fit, each beside the one that the page leads to. One that is nearly right differs in one
 * attribute of one figure, where there is more than one, or is made of figures of the field.
 */
function wrongPieces(printed: Printed) {
  const { field, offered = [] } = printed;
  const right = solve(printed).answers[0]?.figures ?? [];
  const fits = (piece: Piece) => piece.every((figure, cell) => areAlike(figure, right[cell] ?? {}));
  return offered
    .filter((piece) => !fits(piece))
    .map((piece) => {
      const apart = piece.flatMap((figure, cell) => {
        const wanted = right[cell];
        return wanted && !areAlike(figure, wanted) ? [compareFigures(wanted, figure)] : [];
      });
      const isOneThing = apart.length === 1 && apart[0]?.differing.size === 1;
      const isOfMany = right.length > 1 || attributeCount(printed) > 1;
      const isSeen = piece.every((figure) =>
        field.some((other) => other && areAlike(figure, other)),
      );
      return { piece, apart, isNear: (isOneThing && isOfMany) || isSeen };
    });
}

function attributeCount({ field, offered = [] }: Printed): number {
  const all = distinctFigures([...field, ...offered.flat()].filter((figure) => figure !== null));
  const [first] = all;
  const differing = all.flatMap((figure) =>
    first && figure !== first ? [...compareFigures(first, figure).differing] : [],
  );
  return new Set(differing).size;
}

const FIRST_SIGN = '0'.charCodeAt(0);

type Repeat = readonly [down: number, along: number];

/** The shortest repeats along the rows and down the columns, one step down and aside included. */
function repeatsOf(course: string, columns: number): readonly Repeat[] {
  const rows = course.length / columns;
  const lengths = (most: number) => Array.from({ length: most }, (_, index) => index + 1);
  const along = lengths(columns).find((by) => isRepeat(course, columns, [0, by])) ?? columns;
  const down = lengths(rows).find((by) => isRepeat(course, columns, [by, 0])) ?? rows;
  const slant = (
    [
      [1, 1],
      [1, -1],
    ] as const
  ).filter((by) => isRepeat(course, columns, by));
  return [[0, along], [down, 0], ...slant];
}

function isRepeat(course: string, columns: number, [down, along]: Repeat): boolean {
  return [...course].every((sign, place) => {
    const column = (place % columns) + along;
    const other = column < 0 || column >= columns ? ' ' : course[place + down * columns + along];
    return sign === ' ' || (other ?? ' ') === ' ' || sign === other;
  });
}

/** The shorter of the repeats along the rows and down the columns. */
function periodOf(course: string, columns: number): number {
  const [along, down] = repeatsOf(course, columns);
  return Math.min(along?.[1] ?? 1, down?.[0] ?? 1);
}

/** Whether equal values lie in lines, level, upright or slanted, so that one line is enough to look at. */
function hasLines(course: string, columns: number): boolean {
  const steps = [
    [0, 1],
    [1, 0],
    [1, 1],
    [1, -1],
  ] as const;
  return steps.some((step) => isRepeat(course, columns, step));
}

/**
 * How an attribute runs through the field, a sign a place: `0` for its first value, `1` for the next; a blank in the
 * hole.
 */
function courseOf(field: Printed['field'], attribute: Attribute): string {
  const values: Figure[] = [];
  const signs = field.map((figure) => {
    if (!figure) return ' ';
    const known = values.findIndex(
      (value) => !compareFigures(value, figure).differing.has(attribute),
    );
    // One sign even of a tenth value and beyond, since places are told by where signs stand.
    return String.fromCharCode(FIRST_SIGN + (known < 0 ? values.push(figure) - 1 : known));
  });
  return signs.join('');
}

function deedsOf(printed: Printed, kinds: readonly Figure[]): readonly Deed[] {
  const response = responseTo(printed);
  return response === 'draw' ? kinds.map(drawingDeed) : [response];
}
