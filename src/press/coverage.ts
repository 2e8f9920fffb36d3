// How much of a page carries ink, from its own shapes: exact along level lines that lie close together.
import {
  compose,
  flattenPath,
  IDENTITY,
  type Path,
  type Transform,
  transformPath,
} from '../base/index.ts';
import { type Page, type SceneNode, type Shape, type Text, WHITE } from '../page/index.ts';
import { lettersOf, placeOf } from './lettering.ts';
import { scaleOf } from './placing.ts';
import {
  type Crossing,
  lengthOf,
  type Rule,
  type Spans,
  shared,
  spansInside,
  united,
  without,
} from './spans.ts';
import { type Polygon, type Run, strokeOutline } from './stroke-outline.ts';

/** From one line to the next, in mm; the finest line of a page is 0.3 mm wide. */
const ROW_MM = 0.2;
/** Straight pieces for a curve: so many for each root of a mm from end to end, and at most. */
const PIECES_PER_ROOT_MM = 3;
const MOST_PIECES = 16;

/** What is covered on some rows of the page, from row `first` on. */
interface Region {
  readonly first: number;
  readonly rows: readonly Spans[];
}

/** What is inked so far, on each row of the page. */
type Sheet = Spans[];

/**
 * The share of the page that carries ink, 0 to 1: all that is printed in any colour but white, one thing over
 * another counted once, white over ink as paper. Within 0.003 of pages rasterised at 300 dpi (`tests/outside`).
 */
export function coverageOf(page: Page): number {
  const count = Math.ceil(page.heightMm / ROW_MM);
  const sheet: Sheet = Array.from({ length: count }, () => []);
  const whole: Spans = [0, page.widthMm];
  for (const node of page.nodes) paintNode(sheet, node, IDENTITY, []);
  const inked = sheet.reduce((sum, row) => sum + lengthOf(shared(row, whole)), 0);
  return (inked * ROW_MM) / (page.widthMm * page.heightMm);
}

function paintNode(
  sheet: Sheet,
  node: SceneNode,
  outer: Transform,
  clips: readonly Region[],
): void {
  if (node.kind === 'shape') paintShape(sheet, node, outer, clips);
  else if (node.kind === 'text') paintText(sheet, node, outer, clips);
  else {
    const transform = node.transform ? compose(outer, node.transform) : outer;
    const within = node.clip
      ? [...clips, regionOf(polygonsOf(node.clip, transform), 'nonzero')]
      : clips;
    for (const child of node.children) paintNode(sheet, child, transform, within);
  }
}

function paintShape(
  sheet: Sheet,
  { path, fill, stroke, rule = 'nonzero' }: Shape,
  transform: Transform,
  clips: readonly Region[],
): void {
  const runs = runsOf(path, transform);
  if (fill) {
    const area = regionOf(
      runs.map(({ points }) => points),
      rule,
    );
    paint(sheet, area, fill === WHITE, clips);
  }
  if (stroke) {
    const line = regionOf(strokeOutline(runs, stroke, scaleOf(transform)), 'nonzero');
    paint(sheet, line, stroke.colour === WHITE, clips);
  }
}

function paintText(sheet: Sheet, text: Text, transform: Transform, clips: readonly Region[]): void {
  const polygons = lettersOf(text).flatMap((letter) =>
    polygonsOf(letter.outline, compose(transform, placeOf(letter, text))),
  );
  paint(sheet, regionOf(polygons, 'nonzero'), text.colour === WHITE, clips);
}

/** Ink adds to what is covered, white takes from it. */
function paint(sheet: Sheet, region: Region, isWhite: boolean, clips: readonly Region[]): void {
  region.rows.forEach((spans, at) => {
    const row = region.first + at;
    const before = sheet[row];
    if (!before) return;
    const shown = clips.reduce(
      (rest, clip) => shared(rest, clip.rows[row - clip.first] ?? []),
      spans,
    );
    if (shown.length > 0) sheet[row] = (isWhite ? without : united)(before, shown);
  });
}

/** What lies inside the polygons on the middle of each row that they reach. */
function regionOf(polygons: readonly Polygon[], rule: Rule): Region {
  const [top, bottom] = reachOf(polygons);
  const first = Math.max(0, Math.ceil(top / ROW_MM - 0.5));
  const last = Math.ceil(bottom / ROW_MM - 0.5) - 1;
  const crossings = Array.from({ length: Math.max(0, last - first + 1) }, (): Crossing[] => []);
  for (const polygon of polygons) {
    let before = polygon.at(-1);
    for (const point of polygon) {
      if (before) cross(crossings, first, before.x, before.y, point.x, point.y);
      before = point;
    }
  }
  return { first, rows: crossings.map((row) => spansInside(row, rule)) };
}

function reachOf(polygons: readonly Polygon[]): readonly [top: number, bottom: number] {
  let [top, bottom] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const polygon of polygons) {
    for (const { y } of polygon) {
      if (y < top) top = y;
      if (y > bottom) bottom = y;
    }
  }
  return [top, bottom];
}

/** Notes where an edge crosses the rows, its upper end counted and its lower end not. */
function cross(
  rows: readonly Crossing[][],
  first: number,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
): void {
  if (y1 === y2) return;
  const winds = y1 < y2 ? 1 : -1;
  const [top, bottom] = y1 < y2 ? [y1, y2] : [y2, y1];
  const from = Math.max(first, Math.ceil(top / ROW_MM - 0.5));
  const slope = (x2 - x1) / (y2 - y1);
  for (let row = from; (row + 0.5) * ROW_MM < bottom; row++) {
    rows[row - first]?.push({ x: x1 + slope * ((row + 0.5) * ROW_MM - y1), winds });
  }
}

function polygonsOf(path: Path, transform: Transform): readonly Polygon[] {
  return flattenPath(transformPath(path, transform), piecesOf(path, transform));
}

/** The subpaths as polylines, of closed ones the first point again at the end. */
function runsOf(path: Path, transform: Transform): readonly Run[] {
  const closed: boolean[] = [];
  for (const [letter] of path) {
    if (letter === 'M') closed.push(false);
    else if (letter === 'Z') closed[closed.length - 1] = true;
  }
  return polygonsOf(path, transform).map((points, at) => {
    const [start] = points;
    const isClosed = closed[at] ?? false;
    return { points: isClosed && start ? [...points, start] : points, isClosed };
  });
}

/** Enough straight pieces for the longest curve of the path. */
function piecesOf(path: Path, transform: Transform): number {
  let [x, y, longest] = [0, 0, 0];
  for (const step of path) {
    if (step[0] === 'Z') continue;
    const [endX = 0, endY = 0] = [step.at(-2), step.at(-1)] as number[];
    if (step[0] === 'C') longest = Math.max(longest, Math.hypot(endX - x, endY - y));
    [x, y] = [endX, endY];
  }
  const pieces = Math.ceil(PIECES_PER_ROOT_MM * Math.sqrt(longest * scaleOf(transform)));
  return Math.min(MOST_PIECES, Math.max(1, pieces));
}
