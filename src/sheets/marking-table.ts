// One table for the adult who marks the sheets of a group: a row for each child, a column for each of its sheets.
import { activityOf, type Language } from '../activities/index.ts';
import {
  type Area,
  FAINT_INK,
  FINE_MM,
  fitText,
  heading,
  line,
  type Page,
  pageIn,
  pageSize,
  paragraph,
  printArea,
  printableName,
  QUIET_INK,
  type SceneNode,
  text,
} from '../page/index.ts';
import { rangesText } from './pack-parts.ts';
import { packsOfChildren } from './packs-of-children.ts';
import { pageWords } from './page-catalogue.ts';
import type { Sheet, SheetChild } from './sheet.ts';
import { adultPaperOf, DEFAULT_PAGE } from './sheet-spec.ts';

/** So that thirty children and ten sheets stand on one upright page of A4 or Letter, in every language. */
const ROW_MM = 6.2;
const HEAD_MM = 8;
const NAME_SHARE = 0.28;
const MOST_COLUMNS = 10;
const GAP_MM = 4;
const NAME_EM_MM = 3.8;
const EM_MM = 3.3;
const LEGEND_ROW_MM = 5;
const LEGEND_COLUMNS = 2;
const CELL_INSET_MM = 1.4;
const CELL_EM_MM = 2.6;
const NUMBER_MM = 6;
const NUMBER_GAP_MM = 2;
/** How far down a row its letters stand. */
const BASELINE_SHARE = 0.66;

interface Row {
  readonly child: SheetChild;
  readonly sheets: readonly Sheet[];
}

/** Pages of rows and columns; none where the sheets are for nobody in particular. */
export function markingPages(sheets: readonly Sheet[], language: Language = 'en'): readonly Page[] {
  const rows = rowsOf(sheets);
  const columns = Math.max(0, ...rows.map((row) => row.sheets.length));
  const starts = Array.from(
    { length: Math.ceil(columns / MOST_COLUMNS) },
    (_, at) => at * MOST_COLUMNS,
  );
  return starts.flatMap((from) => {
    const cut = rows.map((row) => ({
      ...row,
      sheets: row.sheets.slice(from, from + MOST_COLUMNS),
    }));
    return pagesOf(cut, from, sheets, language);
  });
}

/** By child in the order of the group, each with its sheets in order. */
function rowsOf(sheets: readonly Sheet[]): readonly Row[] {
  return packsOfChildren({ sheets }).map(({ child, pack }) => ({ child, sheets: pack.sheets }));
}

function pagesOf(
  rows: readonly Row[],
  from: number,
  sheets: readonly Sheet[],
  language: Language,
): readonly Page[] {
  const { paper, orientation } = adultPaperOf(sheets[0]?.spec.page ?? DEFAULT_PAGE);
  const area = printArea(paper, orientation);
  const words = pageWords(language).marking;
  const title = heading(words.title, area.width);
  const how = paragraph(words.how, area.width, { colour: QUIET_INK });
  const legend = legendOf(rows, from, language);
  const topMm = title.heightMm + how.heightMm + 2 * GAP_MM;
  const room = area.height - topMm - HEAD_MM - GAP_MM - legendRows(legend) * LEGEND_ROW_MM;
  const perPage = Math.max(1, Math.floor(room / ROW_MM));
  const count = Math.ceil(rows.length / perPage);
  return Array.from({ length: count }, (_, page) => {
    const body = { ...area, top: area.top + topMm, height: area.height - topMm };
    const own = rows.slice(page * perPage, (page + 1) * perPage);
    return pageIn(language, {
      ...pageSize(paper, orientation),
      title: words.pageTitle(page + 1, count),
      nodes: [
        title.draw(area.left, area.top),
        how.draw(area.left, area.top + title.heightMm + GAP_MM),
        ...tableNodes(own, legend, from, body, language),
      ],
    });
  });
}

/** What each column is, such as `odd one out, steps 3–5`. */
function legendOf(rows: readonly Row[], from: number, language: Language): readonly string[] {
  const columns = Math.max(...rows.map(({ sheets }) => sheets.length));
  return Array.from({ length: columns }, (_, column) => {
    const own = rows.flatMap(({ sheets }) => sheets[column] ?? []);
    const steps = [...new Set(own.map(({ spec }) => spec.step))].sort((one, other) => one - other);
    const id = own[0]?.spec.activity;
    const name = id === undefined ? '' : activityOf(id).words[language].name;
    return pageWords(language).marking.column(from + column + 1, name, {
      text: rangesText(steps),
      count: steps.length,
    });
  });
}

/** Where the lines of the table lie, in mm. */
interface Grid {
  readonly area: Area;
  readonly nameMm: number;
  readonly columnMm: number;
}

function tableNodes(
  rows: readonly Row[],
  legend: readonly string[],
  from: number,
  area: Area,
  language: Language,
): readonly SceneNode[] {
  const nameMm = area.width * NAME_SHARE;
  const grid = { area, nameMm, columnMm: (area.width - nameMm) / MOST_COLUMNS };
  const words = pageWords(language).marking;
  const bottom = rowTop(grid, rows.length);
  return [
    ...rules(grid, rows.length, legend.length),
    ...legend.map((_, column) => headNumber(grid, column, from + column + 1)),
    ...rows.flatMap((row, place) => rowNodes(grid, row, place, words.outOf)),
    ...legendNodes(legend, area, bottom + GAP_MM),
  ];
}

function legendRows(legend: readonly string[]): number {
  return Math.ceil(legend.length / LEGEND_COLUMNS);
}

/** Down one column, then down the next. */
function legendNodes(legend: readonly string[], area: Area, top: number): readonly SceneNode[] {
  const rows = legendRows(legend);
  const width = area.width / LEGEND_COLUMNS;
  return legend.map((words, place) =>
    text(
      fitText(words, width - GAP_MM, EM_MM),
      area.left + Math.floor(place / rows) * width,
      top + ((place % rows) + BASELINE_SHARE) * LEGEND_ROW_MM,
      EM_MM,
      { colour: QUIET_INK },
    ),
  );
}

function rowTop({ area }: Grid, place: number): number {
  return area.top + HEAD_MM + place * ROW_MM;
}

function columnLeft({ area, nameMm, columnMm }: Grid, column: number): number {
  return area.left + nameMm + column * columnMm;
}

function rules(grid: Grid, rows: number, columns: number): readonly SceneNode[] {
  const stroke = { colour: FAINT_INK, widthMm: FINE_MM };
  const { area } = grid;
  const [right, bottom] = [columnLeft(grid, columns), rowTop(grid, rows)];
  const levels = Array.from({ length: rows + 1 }, (_, place) => rowTop(grid, place));
  const lefts = Array.from({ length: columns + 1 }, (_, column) => columnLeft(grid, column));
  return [
    ...levels.map((top) => line(area.left, top, right, top, stroke)),
    ...lefts.map((left) => line(left, area.top, left, bottom, stroke)),
  ];
}

function headNumber(grid: Grid, column: number, number: number): SceneNode {
  const middle = columnLeft(grid, column) + grid.columnMm / 2;
  const baseline = grid.area.top + BASELINE_SHARE * HEAD_MM;
  return text(String(number), middle, baseline, EM_MM, { anchor: 'middle', weight: 'bold' });
}

/** Number and name; in each cell how many tasks the sheet has, small, so that there is room to write. */
function rowNodes(
  grid: Grid,
  { child, sheets }: Row,
  place: number,
  outOf: (tasks: number) => string,
): readonly SceneNode[] {
  const { area, nameMm, columnMm } = grid;
  const top = rowTop(grid, place);
  const baseline = top + BASELINE_SHARE * ROW_MM;
  const nameLeft = area.left + NUMBER_MM + NUMBER_GAP_MM;
  const room = nameMm - NUMBER_MM - 2 * NUMBER_GAP_MM;
  const name = fitText(printableName(child.name), room, NAME_EM_MM);
  const number = text(String(child.number), area.left + NUMBER_MM, baseline, EM_MM, {
    anchor: 'end',
    colour: QUIET_INK,
  });
  return [
    number,
    ...(name === '' ? [] : [text(name, nameLeft, baseline, NAME_EM_MM)]),
    ...sheets.map(({ tasks }, column) =>
      text(
        outOf(tasks.length),
        columnLeft(grid, column) + columnMm - CELL_INSET_MM,
        top + ROW_MM - CELL_INSET_MM,
        CELL_EM_MM,
        { anchor: 'end', colour: QUIET_INK },
      ),
    ),
  ];
}
