// The list of a pack's sheets with their codes, in columns, cut off where the page ends.
import { activityOf, type Language } from '../activities/index.ts';
import {
  type Area,
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
import { pageWords } from './page-catalogue.ts';
import type { Sheet } from './sheet.ts';

const EM_MM = 3.3;
const ROW_MM = 5;
const COLUMN_GAP_MM = 8;
const NUMBER_GAP_MM = 2;
const CODE_GAP_MM = 3;

/** Room kept for the heading and the first rows of the list. */
export const LEAST_LIST_MM = 24;

/** The list from the top of the area; a pack too long for it ends with how many more there are. */
export function sheetList(sheets: readonly Sheet[], area: Area, language: Language): Group {
  const words = pageWords(language).adult;
  const title = heading(words.sheets, area.width, 2);
  const note = paragraph(words.moreSheets(1), area.width, { emMm: EM_MM });
  const isMixed = new Set(sheets.map((sheet) => aboutOf(sheet, language))).size > 1;
  const columns = columnsOf(sheets, area.width, isMixed ? widestAboutMm(sheets, language) : 0);
  const roomFor = (mm: number) => Math.max(0, Math.floor(mm / ROW_MM)) * columns;
  const numberRoom = numberMm(sheets.length);
  const listMm = area.height - title.heightMm - 1;
  const isAll = sheets.length <= roomFor(listMm);
  const shown = isAll ? sheets.length : roomFor(listMm - note.heightMm - 1);
  const rows = Math.ceil(shown / columns);
  const top = area.top + title.heightMm + 1;
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
  const codeMm = Math.max(...sheets.map(({ code }) => textWidthMm(code, EM_MM)));
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
function entry(
  { code }: Sheet,
  number: number,
  numberRoom: number,
  about: string,
  area: Area,
): Group {
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
