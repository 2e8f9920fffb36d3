// Boxes that a folded page gives for nothing: halves, thirds and quarters in place of ruled lines.
import { type Bounds, unionOf } from '../base/index.ts';
import { isWithin, middleOf } from './bounds.ts';
import type { Direction, Fold } from './parts.ts';
import { isStanding, type Piece } from './piece.ts';
import type { PageSizeMm, Sized } from './rules.ts';

export interface Folded<S extends Sized> {
  readonly folds: readonly Fold[];
  /** The pieces without the boxes, each in the middle of its part of the page. */
  readonly pieces: readonly S[];
  /** The parts that stand for boxes, in their order. */
  readonly panels: readonly Bounds[];
}

/** Halves, thirds and quarters are folded by anyone; common practice, no source. */
const MOST_PARTS = 4;
/** Boxes and rows that are so nearly alike are alike, in mm. */
const ALIKE_MM = 1;
/** Between what stands in a part of the page and its creases, in mm, by eye. */
const INSIDE_MM = 12;
/** Figures of a box come apart by no more than this, times their printed distance. */
const MOST_SPREAD = 1.2;
const SLACK_MM = 0.6;

/** The page folded in place of ruled boxes; undefined where its boxes are no halves, thirds or quarters. */
export function folded<S extends Sized>(
  pieces: readonly S[],
  page: PageSizeMm,
): Folded<S> | undefined {
  const boxes = outerBoxes(pieces);
  const grid = gridOf(boxes.map(({ piece }) => piece));
  if (!grid) return undefined;
  const inside = pieces.filter((piece) => !boxes.includes(piece));
  const parts = boxes.map((box) =>
    inside.filter(({ piece }) => isWithin(piece.bounds, box.piece.bounds, SLACK_MM)),
  );
  const outside = inside.filter((piece) => !parts.some((part) => part.includes(piece)));
  const bands = bandsOf(outside, boxes, grid);
  if (!bands) return undefined;
  const rows = grid.rows + (bands.above.length > 0 ? 1 : 0) + (bands.below.length > 0 ? 1 : 0);
  const { columns } = grid;
  if (rows * columns < 2 || rows > MOST_PARTS || columns > MOST_PARTS) return undefined;
  const first = bands.above.length > 0 ? 1 : 0;
  const panelAt = (row: number, column: number) => panelOf(page, rows, columns, row, column);
  const panels = parts.map((_, index) =>
    panelAt(first + Math.floor(index / columns), index % columns),
  );
  const filled = [
    ...(first > 0 ? [{ panel: panelAt(0, 0), part: bands.above }] : []),
    ...panels.map((panel, index) => ({
      panel,
      part: parts[index] ?? [],
      about: boxes[index]?.piece.bounds,
    })),
    ...(bands.below.length > 0 ? [{ panel: panelAt(rows - 1, 0), part: bands.below }] : []),
  ];
  const spread = Math.min(MOST_SPREAD, ...filled.map(spreadIn));
  if (spread < 1) return undefined;
  return {
    folds: [...foldsOf('across', columns, page.widthMm), ...foldsOf('down', rows, page.heightMm)],
    pieces: filled.flatMap((each) => movedInto(each, spread)),
    panels,
  };
}

/** Boxes that stand in no other box. */
function outerBoxes<S extends Sized>(pieces: readonly S[]): readonly S[] {
  const boxes = pieces.filter(({ piece }) => piece.kind === 'box' && !piece.isDashed);
  return boxes.filter(
    (box) =>
      !boxes.some(
        (other) => other !== box && isWithin(box.piece.bounds, other.piece.bounds, SLACK_MM),
      ),
  );
}

interface Grid {
  readonly rows: number;
  readonly columns: number;
}

/** Rows and columns of boxes that are all alike and in reading order; undefined: they make no full grid. */
function gridOf(boxes: readonly Piece[]): Grid | undefined {
  const [first] = boxes;
  if (!first) return undefined;
  const columns = boxes.filter(({ bounds }) => near(bounds.top, first.bounds.top)).length;
  const rows = boxes.length / columns;
  const isGrid = boxes.every(({ bounds }, index) => {
    const inRow = boxes[index % columns];
    const inColumn = boxes[columns * Math.floor(index / columns)];
    return (
      inRow !== undefined &&
      inColumn !== undefined &&
      near(bounds.left, inRow.bounds.left) &&
      near(bounds.right, inRow.bounds.right) &&
      near(bounds.top, inColumn.bounds.top) &&
      near(bounds.bottom - bounds.top, first.bounds.bottom - first.bounds.top)
    );
  });
  return isGrid && Number.isInteger(rows) ? { rows, columns } : undefined;
}

function near(one: number, other: number): boolean {
  return Math.abs(one - other) <= ALIKE_MM;
}

/** What stands above and below one column of boxes; undefined: something else stands outside the boxes. */
function bandsOf<S extends Sized>(
  outside: readonly S[],
  boxes: readonly Sized[],
  { columns }: Grid,
) {
  const around = unionOf(boxes.map(({ piece }) => piece.bounds));
  const above = outside.filter(({ piece }) => piece.bounds.bottom <= around.top);
  const below = outside.filter(({ piece }) => piece.bounds.top >= around.bottom);
  const isAll = above.length + below.length === outside.length;
  const stand = outside.every(({ piece }) => isStanding(piece));
  return isAll && stand && (columns === 1 || outside.length === 0) ? { above, below } : undefined;
}

function panelOf(
  { widthMm, heightMm }: PageSizeMm,
  rows: number,
  columns: number,
  row: number,
  column: number,
): Bounds {
  return {
    left: (column * widthMm) / columns,
    right: ((column + 1) * widthMm) / columns,
    top: (row * heightMm) / rows,
    bottom: ((row + 1) * heightMm) / rows,
  };
}

function foldsOf(direction: Direction, of: number, lengthMm: number): readonly Fold[] {
  if (of !== 2 && of !== 3 && of !== 4) return [];
  return Array.from({ length: of - 1 }, (_, index) => ({
    direction,
    part: index + 1,
    of,
    atMm: ((index + 1) * lengthMm) / of,
  }));
}

interface FilledPart<S extends Sized = Sized> {
  readonly panel: Bounds;
  readonly part: readonly S[];
  /** What the part stood in the middle of; absent: its own bounds. */
  readonly about?: Bounds | undefined;
}

/** How far the middles of a part may come apart so that all still stands inside its panel. */
function spreadIn({ panel, part, about }: FilledPart): number {
  if (part.length === 0) return Number.POSITIVE_INFINITY;
  const middle = middleOf(about ?? unionOf(part.map(({ bounds }) => bounds)));
  const room = {
    x: (panel.right - panel.left) / 2 - INSIDE_MM,
    y: (panel.bottom - panel.top) / 2 - INSIDE_MM,
  };
  const shares = part.flatMap(({ bounds }) => {
    const at = middleOf(bounds);
    const away = { x: Math.abs(at.x - middle.x), y: Math.abs(at.y - middle.y) };
    const half = { x: (bounds.right - bounds.left) / 2, y: (bounds.bottom - bounds.top) / 2 };
    return [share(room.x - half.x, away.x), share(room.y - half.y, away.y)];
  });
  return Math.min(...shares);
}

function share(roomMm: number, awayMm: number): number {
  if (roomMm < 0) return 0;
  return awayMm < 0.01 ? Number.POSITIVE_INFINITY : roomMm / awayMm;
}

function movedInto<S extends Sized>(
  { panel, part, about }: FilledPart<S>,
  spread: number,
): readonly S[] {
  if (part.length === 0) return [];
  const from = middleOf(about ?? unionOf(part.map(({ bounds }) => bounds)));
  const to = middleOf(panel);
  const isRuled = part.some(({ piece }) => !isStanding(piece));
  const by = isRuled ? 1 : spread;
  return part.map((sized) => {
    const at = middleOf(sized.bounds);
    const dx = to.x + by * (at.x - from.x) - at.x;
    const dy = to.y + by * (at.y - from.y) - at.y;
    const move = ({ left, top, right, bottom }: Bounds): Bounds => ({
      left: left + dx,
      right: right + dx,
      top: top + dy,
      bottom: bottom + dy,
    });
    const { piece } = sized;
    return {
      ...sized,
      piece: { ...piece, bounds: move(piece.bounds), from: piece.from ?? piece.bounds },
      bounds: move(sized.bounds),
      panel,
    };
  });
}
