// The list of a pack's sheets with their codes, in columns, cut off where the page ends.
import { activityOf, type Language } from '../activities/index.ts';
import {
  type Area,
  type Block,
  fitText,
  type Group,
  group,
  heading,
  paragraph,
  QUIET_INK,
  type SceneNode,
  text,
  textWidthMm,
} from '../page/index.ts';
import { shortCode } from './code-characters.ts';
import { pageWords } from './page-catalogue.ts';
import type { Sheet } from './sheet.ts';

const EM_MM = 3.3;
const ROW_MM = 5;
const COLUMN_GAP_MM = 8;
const NUMBER_GAP_MM = 2;
const CODE_GAP_MM = 3;

/** Room for the heading and a few rows: in less the list does not begin. */
const LEAST_LIST_MM = 24;
const TITLE_GAP_MM = 1;

interface ListForm {
  /** Whether sheets differ, so that each says what it is. */
  readonly isMixed: boolean;
  readonly columns: number;
  /** Rows that the area has room for below the heading. */
  readonly rows: number;
}

/** How the list lies in an area; the place of its heading counts. */
function formIn(sheets: readonly Sheet[], area: Area, language: Language): ListForm {
  const isMixed = new Set(sheets.map((sheet) => aboutOf(sheet, language))).size > 1;
  const columns = columnsOf(sheets, area.width, isMixed ? widestAboutMm(sheets, language) : 0);
  const listMm = area.height - titleOf(area, language).heightMm - TITLE_GAP_MM;
  return { isMixed, columns, rows: Math.max(0, Math.floor(listMm / ROW_MM)) };
}

function titleOf(area: Area, language: Language): Block {
  return heading(pageWords(language).adult.sheets, area.width, 2);
}

/** The first of the areas that shows all sheets, else the first in which the list can begin; `undefined` where none is. */
export function placeForList(
  sheets: readonly Sheet[],
  areas: readonly Area[],
  language: Language,
): { readonly area: Area; readonly showsAll: boolean } | undefined {
  const roomy = areas.filter(({ height }) => height >= LEAST_LIST_MM);
  const whole = roomy.find((area) => {
    const { columns, rows } = formIn(sheets, area, language);
    return sheets.length <= columns * rows;
  });
  const area = whole ?? roomy[0];
  return area && { area, showsAll: whole !== undefined };
}

/** The list from the top of the area; a pack too long for it ends with how many more there are. */
export function sheetList(sheets: readonly Sheet[], area: Area, language: Language): Group {
  const words = pageWords(language).adult;
  const title = titleOf(area, language);
  const { isMixed, columns, rows: mostRows } = formIn(sheets, area, language);
  const isAll = sheets.length <= columns * mostRows;
  const numberRoom = numberMm(sheets.length);
  // The line that says how many more there are takes the place of the last two rows.
  const shown = isAll ? sheets.length : Math.max(0, mostRows - 2) * columns;
  const rows = Math.ceil(shown / columns);
  const top = area.top + title.heightMm + TITLE_GAP_MM;
  const width = (area.width - COLUMN_GAP_MM * (columns - 1)) / columns;
  const entries = sheets.slice(0, shown).map((sheet, index) =>
    entry(sheet, index + 1, numberRoom, isMixed ? aboutOf(sheet, language) : '', {
      left: area.left + Math.floor(index / rows) * (width + COLUMN_GAP_MM),
      top: top + (index % rows) * ROW_MM,
      width,
      height: ROW_MM,
    }),
  );
  const more = paragraph(words.moreSheets(sheets.length - shown), area.width, {
    emMm: EM_MM,
    colour: QUIET_INK,
  });
  return group('sheet-list', [
    title.draw(area.left, area.top),
    ...entries,
    ...(isAll ? [] : [more.draw(area.left, top + rows * ROW_MM + 1)]),
  ]);
}

function columnsOf(sheets: readonly Sheet[], widthMm: number, aboutMm: number): number {
  const codeMm = Math.max(...sheets.map(({ code }) => textWidthMm(shortCode(code), EM_MM)));
  const leastMm = numberMm(sheets.length) + NUMBER_GAP_MM + codeMm + aboutMm;
  return Math.max(1, Math.floor((widthMm + COLUMN_GAP_MM) / (leastMm + COLUMN_GAP_MM)));
}

/** Room for the highest number of a pack. */
function numberMm(sheets: number): number {
  return textWidthMm('0'.repeat(String(sheets).length), EM_MM);
}

function widestAboutMm(sheets: readonly Sheet[], language: Language): number {
  const abouts = new Set(sheets.map((sheet) => aboutOf(sheet, language)));
  return CODE_GAP_MM + Math.max(...[...abouts].map((about) => textWidthMm(about, EM_MM)));
}

function aboutOf({ spec }: Sheet, language: Language): string {
  return pageWords(language).about(activityOf(spec.activity).words[language].name, spec.step);
}

/** Number, code, then what the sheet is, where not all are the same. */
function entry(sheet: Sheet, number: number, numberRoom: number, about: string, area: Area): Group {
  const code = shortCode(sheet.code);
  const baseline = area.top + ROW_MM * 0.72;
  const codeLeft = area.left + numberRoom + NUMBER_GAP_MM;
  const aboutLeft = codeLeft + textWidthMm(code, EM_MM) + CODE_GAP_MM;
  const nodes: readonly SceneNode[] = [
    text(String(number), area.left + numberRoom, baseline, EM_MM, {
      anchor: 'end',
      colour: QUIET_INK,
    }),
    text(code, codeLeft, baseline, EM_MM),
  ];
  if (about === '') return group('list-item', nodes);
  const fitted = fitText(about, area.left + area.width - aboutLeft, EM_MM);
  return group('list-item', [
    ...nodes,
    text(fitted, aboutLeft, baseline, EM_MM, { colour: QUIET_INK }),
  ]);
}
