// A printed row as strands of numbers: one for whole figures, and one for each attribute of them.
import {
  type Figure,
  formOf,
  paintOf,
  plainest,
  sameFigure,
  stanceOf,
} from '../../figures/index.ts';

/** What stands in each place of a row, as a number; `null` is an empty place. */
export type Strand = readonly (number | null)[];

/** What a reading puts into the empty places, from left to right; `null` where it does not say. */
export type Filling = readonly (number | null)[];

type Row = readonly (Figure | null)[];

/** How one attribute runs along the row. */
export interface AttributeStrand {
  readonly strand: Strand;
  /** The attribute's fields for one of its values. */
  readonly partOf: (value: number) => Figure;
}

/** An attribute: what of it is seen, and the fields that make it. */
interface Attribute {
  readonly seenIn: (figure: Figure) => string;
  readonly fields: readonly (keyof Figure)[];
}

const ATTRIBUTES: readonly Attribute[] = [
  { seenIn: (figure) => formOf(plainest(figure)), fields: ['form'] },
  { seenIn: ({ colour = 'ink' }) => colour, fields: ['colour'] },
  { seenIn: ({ size = 1 }) => String(size), fields: ['size'] },
  { seenIn: seenTurn, fields: ['turn', 'mirrored'] },
  {
    seenIn: ({ count, layout, dotSize }) => JSON.stringify([count, layout, dotSize]),
    fields: ['count', 'layout', 'dotSize'],
  },
  { seenIn: (figure) => paintOf(figure).fill, fields: ['fill'] },
];

function seenTurn(figure: Figure): string {
  const { turn, mirrored } = stanceOf(plainest(figure));
  return `${turn} ${mirrored}`;
}

/** The different figures that are shown, in the order in which they come. */
export function kindsIn(row: Row): readonly Figure[] {
  const looks = new Map(
    row.flatMap((figure) => (figure ? [[JSON.stringify(figure), figure] as const] : [])),
  );
  const kinds: Figure[] = [];
  for (const figure of looks.values()) {
    if (!kinds.some((kind) => sameFigure(kind, figure))) kinds.push(figure);
  }
  return kinds;
}

/** Which of `kinds` stands in each place. */
export function strandOf(row: Row, kinds: readonly Figure[]): Strand {
  const numbers = new Map<string, number>();
  return row.map((figure) => {
    if (!figure) return null;
    const look = JSON.stringify(figure);
    const number = numbers.get(look) ?? kinds.findIndex((kind) => sameFigure(kind, figure));
    numbers.set(look, number);
    return number;
  });
}

/** Form, colour, size, turn, count and fill, each by itself. */
export function attributeStrands(row: Row): readonly AttributeStrand[] {
  return ATTRIBUTES.map(({ seenIn, fields }) => {
    const examples = new Map<string, Figure>();
    for (const figure of row) {
      if (figure && !examples.has(seenIn(figure))) examples.set(seenIn(figure), figure);
    }
    const values = [...examples.keys()];
    const parts = [...examples.values()].map((figure) => partOf(figure, fields));
    return {
      strand: row.map((figure) => figure && values.indexOf(seenIn(figure))),
      partOf: (value) => parts[value] ?? {},
    };
  });
}

function partOf(figure: Figure, fields: readonly (keyof Figure)[]): Figure {
  return Object.fromEntries(
    fields.flatMap((field) => (figure[field] === undefined ? [] : [[field, figure[field]]])),
  );
}
