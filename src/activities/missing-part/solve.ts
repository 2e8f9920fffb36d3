// Finds every way to fill the hole of a printed field, read attribute by attribute, from the page alone.
import { type Told, told } from '../../base/index.ts';
import { type Figure, fairlyDifferent, sameFigure } from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import { readingsOf, type Strand, setReadingOf, unaccounted } from './solve-readings.ts';
import { type Answer, type Piece, type Printed, responseTo } from './task.ts';

/** No more answers are looked for: one too many is enough. */
const MOST_ANSWERS = 20;

/** What of a figure goes on together by itself. */
const PARTS: readonly (readonly (keyof Figure)[])[] = [
  ['form'],
  ['colour'],
  ['fill'],
  ['size'],
  ['turn', 'mirrored'],
  ['count', 'dotSize', 'layout'],
];

export function solve(printed: Printed): Findings<Answer> {
  const shape = shapeFaults(printed);
  if (shape.length > 0) return { answers: [], faults: shape };
  const field = withOneDatumEach(printed.field);
  const cells = holesIn(field).map((hole) => figuresFor(field, printed.columns, hole));
  const fillings = distinct(combined(cells)).slice(0, MOST_ANSWERS);
  const [right] = fillings;
  const faults = [
    ...(right ? [] : [told('missing-part', 'fault.untold')]),
    ...(isBroken(field, printed.columns) ? [told('missing-part', 'fault.no-rule')] : []),
    ...unfairField(printed.field),
    ...(right ? offeredFaults(printed, right) : []),
  ];
  return { answers: fillings.map((figures) => ({ figures })), faults };
}

function holesIn(field: Printed['field']): readonly number[] {
  return field.flatMap((figure, place) => (figure ? [] : [place]));
}

/** A figure in the pattern that no reading accounts for is taken for a misprint, or for the thing to be found. */
function isBroken(field: Printed['field'], columns: number): boolean {
  return PARTS.some((fields) => unaccounted(strandOf(field, fields), columns).length > 0);
}

/** A field that is no full rectangle, or a hole that is none. */
function shapeFaults({ field, columns }: Printed): readonly Told[] {
  if (field.length % columns !== 0) return [told('missing-part', 'fault.rectangle')];
  const holes = holesIn(field);
  if (holes.length === 0) return [told('missing-part', 'fault.no-hole')];
  const spans = [
    holes.map((place) => Math.floor(place / columns)),
    holes.map((place) => place % columns),
  ].map((at) => 1 + Math.max(...at) - Math.min(...at));
  const isFull = spans.reduce((product, span) => product * span, 1) === holes.length;
  return isFull ? [] : [told('missing-part', 'fault.holes')];
}

/** Figures that print alike become the same datum, so that fields that are not seen do not count. */
function withOneDatumEach(field: Printed['field']): Printed['field'] {
  const kinds: Figure[] = [];
  return field.map((figure) => {
    if (!figure) return null;
    const known = kinds.find((kind) => sameFigure(kind, figure));
    if (!known) kinds.push(figure);
    return known ?? figure;
  });
}

/** Every figure that some reading puts into one cell of the hole. */
function figuresFor(field: Printed['field'], columns: number, hole: number): readonly Figure[] {
  const parted = PARTS.reduce<readonly Figure[]>(
    (figures, fields) => {
      const values = valuesFor(strandOf(field, fields), columns, hole);
      return figures.flatMap((figure) =>
        values.map((value) => ({ ...figure, ...(JSON.parse(value) as Partial<Figure>) })),
      );
    },
    [{}],
  );
  // Sets of whole figures say more than sets of their parts: each row has the same three, say.
  const whole = setReadingOf(strandOf(field, PARTS.flat()), columns, hole);
  return [...parted, ...whole.map((value) => JSON.parse(value) as Figure)];
}

function valuesFor(strand: Strand, columns: number, hole: number): readonly string[] {
  return [
    ...new Set([...readingsOf(strand, columns, hole), ...setReadingOf(strand, columns, hole)]),
  ];
}

function strandOf(field: Printed['field'], fields: readonly (keyof Figure)[]): Strand {
  return field.map((figure) => {
    if (!figure) return null;
    const held = fields.filter((name) => figure[name] !== undefined);
    return JSON.stringify(Object.fromEntries(held.map((name) => [name, figure[name]])));
  });
}

/** Every choice of one figure for each cell, cut off. */
function combined(cells: readonly (readonly Figure[])[]): readonly Piece[] {
  return cells.reduce<readonly Piece[]>(
    (pieces, figures) =>
      pieces
        .flatMap((piece) => distinctFigures(figures).map((figure) => [...piece, figure]))
        .slice(0, 2 * MOST_ANSWERS),
    [[]],
  );
}

function distinctFigures(figures: readonly Figure[]): readonly Figure[] {
  return figures.filter(
    (figure, index) => !figures.slice(0, index).some((other) => sameFigure(other, figure)),
  );
}

function distinct(pieces: readonly Piece[]): readonly Piece[] {
  return pieces.filter(
    (piece, index) => !pieces.slice(0, index).some((other) => areAlike(other, piece)),
  );
}

function areAlike(one: Piece, other: Piece): boolean {
  return (
    one.length === other.length && one.every((figure, at) => sameFigure(figure, other[at] ?? {}))
  );
}

/** Kinds that differ, but too little to be told apart: the rule would not be seen. */
function unfairField(field: Printed['field']): readonly Told[] {
  const kinds = distinctFigures(field.filter((figure) => figure !== null));
  const isUnfair = kinds.some((one, index) =>
    kinds.slice(index + 1).some((other) => !fairlyDifferent(one, other)),
  );
  return isUnfair ? [told('missing-part', 'fault.alike')] : [];
}

/** Pieces of another size than the hole, none or two that fit, and wrong ones that seem to fit. */
function offeredFaults(printed: Printed, right: Piece): readonly Told[] {
  const { offered } = printed;
  if (!offered) {
    return responseTo(printed) === 'draw' ? [] : [told('missing-part', 'fault.no-pieces')];
  }
  if (offered.some((piece) => piece.length !== right.length)) {
    return [told('missing-part', 'fault.piece-size')];
  }
  const fitting = offered.filter((piece) => areAlike(piece, right)).length;
  const wrong = offered.filter((piece) => !areAlike(piece, right));
  return [
    ...(fitting === 1 ? [] : [told('missing-part', 'fault.fitting', { count: fitting })]),
    ...(wrong.length === 0 ? [told('missing-part', 'fault.one-piece')] : []),
    ...(wrong.some((piece) => !isPlainlyOther(piece, right))
      ? [told('missing-part', 'fault.nearly-right')]
      : []),
    ...(distinct(wrong).length === wrong.length
      ? []
      : [told('missing-part', 'fault.pieces-alike')]),
  ];
}

function isPlainlyOther(piece: Piece, right: Piece): boolean {
  return piece.some((figure, at) => fairlyDifferent(figure, right[at] ?? {}));
}
