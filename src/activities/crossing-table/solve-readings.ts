// Every way of saying what the rows of a printed table are about and what its columns, and what each cell then holds.
import type { Figure } from '../../figures/index.ts';
import type { Printed } from './task.ts';

type Field = keyof Figure;
type Part = Partial<Figure>;

/** What a table holds when its rows are about some fields and its columns about the others. */
export interface Reading {
  /** A figure for each cell, in reading order; undefined where nothing tells it. */
  readonly cells: readonly (Figure | undefined)[];
}

/** What is meant where a field is absent. */
const USUAL: Figure = { form: 'circle', size: 1, turn: 0, mirrored: false, fill: 'solid' };

/** Readings that nothing on the page speaks against. */
export function readingsOf(printed: Printed): readonly Reading[] {
  const figures = [...printed.rows.flat(), ...(printed.loose ?? [])].flatMap((figure) =>
    figure ? [{ ...USUAL, ...figure }] : [],
  );
  const lists = [figures, printed.rowHeads ?? [], printed.columnHeads ?? []];
  const fields = [...new Set(lists.flatMap(changingFields))];
  const shared: Part = Object.assign({}, ...lists.flat().reverse());
  return splits(fields).flatMap(([row, column]) => {
    const rows = linesOf(printed.rows, printed.rowHeads, row);
    const columns = linesOf(turnedOver(printed.rows), printed.columnHeads, column);
    if (!rows || !columns) return [];
    const base = without(shared, fields);
    return [
      {
        cells: rows.flatMap((one) =>
          columns.map((other) => (one && other ? { ...base, ...one, ...other } : undefined)),
        ),
      },
    ];
  });
}

/** Fields in which not all figures of a list agree. */
function changingFields(figures: readonly Part[]): readonly Field[] {
  const all = [...new Set(figures.flatMap((figure) => Object.keys(figure)))] as Field[];
  return all.filter((field) => new Set(figures.map((figure) => figure[field])).size > 1);
}

/** How dots lie and how large they are goes with their number, whatever it is. */
const OF_COUNT: readonly Field[] = ['layout', 'dotSize'];

/** Every way to give some of the fields to the rows and the others to the columns. */
function splits(
  fields: readonly Field[],
): readonly (readonly [row: readonly Field[], column: readonly Field[]])[] {
  const isBound = (field: Field) => OF_COUNT.includes(field) && fields.includes('count');
  const free = fields.filter((field) => !isBound(field));
  const withBound = (part: readonly Field[]) =>
    part.includes('count') ? [...part, ...fields.filter(isBound)] : part;
  return Array.from({ length: 2 ** free.length }, (_, bits) => {
    const row = free.filter((_field, index) => Math.floor(bits / 2 ** index) % 2 === 1);
    const column = free.filter((field) => !row.includes(field));
    return [withBound(row), withBound(column)] as const;
  }).filter(([row, column]) => row.length > 0 && column.length > 0);
}

/**
 * What each line is about, from its head and its figures; undefined for a line that shows nothing of it. No
 * lines at all where figures or heads disagree, or heads tell of other fields.
 */
function linesOf(
  lines: Printed['rows'],
  heads: readonly Figure[] | undefined,
  fields: readonly Field[],
): readonly (Part | undefined)[] | undefined {
  if (heads && !haveJust(heads, fields)) return undefined;
  const shown = lines.map((line, place) => [
    ...(heads?.[place] ? [only(heads[place], fields)] : []),
    ...line.flatMap((figure) => (figure ? [only({ ...USUAL, ...figure }, fields)] : [])),
  ]);
  const areAgreed = shown.every((parts) => parts.every((part) => areEqual(part, parts[0] ?? part)));
  return areAgreed ? shown.map(([part]) => part) : undefined;
}

/** Whether what changes among the heads is just these fields. */
function haveJust(heads: readonly Figure[], fields: readonly Field[]): boolean {
  const changing = changingFields(heads);
  return changing.length === fields.length && fields.every((field) => changing.includes(field));
}

function only(figure: Part, fields: readonly Field[]): Part {
  return Object.fromEntries(fields.map((field) => [field, figure[field]]));
}

function without(figure: Part, fields: readonly Field[]): Part {
  return Object.fromEntries(
    Object.entries(figure).filter(([field]) => !fields.includes(field as Field)),
  );
}

function areEqual(one: Part, other: Part): boolean {
  return (Object.keys(one) as Field[]).every((field) => one[field] === other[field]);
}

function turnedOver(rows: Printed['rows']): Printed['rows'] {
  return (rows[0] ?? []).map((_, column) => rows.map((row) => row[column] ?? null));
}
