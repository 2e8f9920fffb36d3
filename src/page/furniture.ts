// What every sheet carries besides its tasks: the room left for them, and one quiet foot.
import { moveBy } from '../base/index.ts';
import { fitEm, fitText } from './fit-text.ts';
import { INK, QUIET_INK } from './ink.ts';
import type { Area } from './layout.ts';
import { group, line, text } from './nodes.ts';
import { type Margin, type Orientation, type PaperName, printArea } from './paper.ts';
import { printableName } from './printable.ts';
import { drawQr } from './qr.ts';
import type { Group, SceneNode, Text } from './scene.ts';
import { textWidthMm } from './type.ts';

/** Height of the foot in mm: the QR code of a sheet code of forty characters, 29 modules of 0.45 mm. */
export const FOOT_MM = 13.05;
/** Blank between the tasks and the foot in mm, so that the foot is no part of a task. */
export const FOOT_GAP_MM = 5;

const EM_MM = 3.1;
const LEAST_EM_MM = 2.4;
/** Codes longer than this, of sheets that were changed, have lines of their own. */
const LONGEST_BESIDE = 49;
const CODE_LINE_MM = 2.9;
const CODE_GAP_MM = 0.8;
/** With more lines of code, on narrow paper, there is no room for what the adult asks. */
const MOST_BELOW_QUESTION = 2;
const NAME_EM_MM = 4;
/** The line to write on lies so far below the feet of its label, and the name as far above them. */
const RULE_DOWN_MM = 0.4;
const NAME_RISE_MM = 0.4;
const GAP_MM = 4;
const LABEL_GAP_MM = 1.5;
const RULE_MM = 0.25;
const LONGEST_NAME_MM = 60;
/** The date's share of the name's line, in length. */
const DATE_SHARE = 0.5;

export interface Foot {
  readonly paper: PaperName;
  readonly orientation: Orientation;
  readonly margin?: Margin | undefined;
  /** The sheet code: printed as it is, and as a QR code. */
  readonly code: string;
  /** Where the code is its beginning alone, what is said of the whole one; there is no QR code then. */
  readonly inFile?: string | undefined;
  /** What the adult asks; smaller, then shortened with an ellipsis, where it does not fit. */
  readonly question?: string | undefined;
  /** What the sheet is, such as `in every box · step 3`. */
  readonly about?: string | undefined;
  readonly labels: FootLabels;
  /** Whose sheet it is; the line stays blank, for a pen, where the font cannot print it. */
  readonly child?: string | undefined;
}

export interface FootLabels {
  readonly name: string;
  readonly date: string;
  /** What the QR code is, for those who cannot see it. */
  readonly qr: string;
}

/** Where a sheet's tasks may stand: the page less its margins and its foot. */
export function sheetArea(paper: PaperName, orientation: Orientation, margin?: Margin): Area {
  const area = printArea(paper, orientation, margin);
  return { ...area, height: area.height - FOOT_MM - FOOT_GAP_MM };
}

/**
 * The foot of a sheet: what the adult asks and what the sheet is above, name, date and code below,
 * the QR code of the sheet code at the right.
 */
export function drawFoot({
  paper,
  orientation,
  margin,
  code,
  inFile,
  question = '',
  about = '',
  labels,
  child = '',
}: Foot): Group {
  const area = printArea(paper, orientation, margin);
  const [right, bottom] = [area.left + area.width, area.top + area.height];
  const qr = inFile ? undefined : drawQr(code, labels.qr);
  const qrMm = qr ? qr.sideMm + Math.max(GAP_MM, qr.quietMm) : 0;
  const row = { left: area.left, right: right - qrMm };
  const lines = inFile ? [code, inFile] : codeLines(code, row);
  const lowerMm = bottom - 1.2 - (lines.length > 0 ? CODE_GAP_MM : 0) - lines.length * CODE_LINE_MM;
  return group('foot', [
    ...(lines.length > MOST_BELOW_QUESTION ? [] : upperRow(question, about, row, lowerMm - 6.4)),
    ...lowerRow({ code: lines.length > 0 ? '' : code, labels, child }, row, lowerMm),
    ...lines.map((words, index) => {
      const baselineMm = bottom - 0.8 - (lines.length - 1 - index) * CODE_LINE_MM;
      return text(words, row.left, baselineMm, LEAST_EM_MM, { colour: INK });
    }),
    ...(qr ? [{ ...qr.group, transform: moveBy(right - qr.sideMm, bottom - qr.sideMm) }] : []),
  ]);
}

/** Lines below the name for a code too long to stand beside it, parted between its groups; none for others. */
function codeLines(code: string, { left, right }: Row): readonly string[] {
  if (code.length <= LONGEST_BESIDE) return [];
  const lines: string[] = [];
  for (const part of code.split('-')) {
    const last = lines.at(-1);
    const longer = last === undefined ? part : `${last}-${part}`;
    const fits = textWidthMm(`${longer}-`, LEAST_EM_MM, 'regular') <= right - left;
    if (last !== undefined && fits) lines[lines.length - 1] = longer;
    else lines.push(part);
  }
  return lines.map((line, index) => (index < lines.length - 1 ? `${line}-` : line));
}

interface Row {
  readonly left: number;
  readonly right: number;
}

function upperRow(question: string, about: string, row: Row, baselineMm: number): Text[] {
  const aboutText = fitText(about, (row.right - row.left) / 2, EM_MM);
  const aboutMm = aboutText === '' ? 0 : textWidthMm(aboutText, EM_MM, 'regular') + GAP_MM;
  const room = row.right - row.left - aboutMm;
  const emMm = fitEm(question, room, EM_MM, LEAST_EM_MM);
  return [
    text(fitText(question, room, emMm), row.left, baselineMm, emMm, { colour: INK }),
    text(aboutText, row.right, baselineMm, EM_MM, { anchor: 'end', colour: QUIET_INK }),
  ].filter((run) => run.text !== '');
}

interface LowerRow {
  readonly code: string;
  readonly labels: FootLabels;
  readonly child: string;
}

/** Lines to write the name and the date on, then the code; the lines take what the words leave. */
function lowerRow({ code, labels, child }: LowerRow, row: Row, baselineMm: number): SceneNode[] {
  const codeEmMm = fitEm(code, (row.right - row.left) * 0.6, EM_MM, LEAST_EM_MM);
  const widthOf = (words: string, emMm: number) => textWidthMm(words, emMm, 'regular');
  const [nameMm, dateMm] = [widthOf(labels.name, EM_MM), widthOf(labels.date, EM_MM)];
  const room = row.right - row.left - widthOf(code, codeEmMm) - 2 * GAP_MM;
  const rules = room - nameMm - dateMm - 2 * LABEL_GAP_MM;
  const nameRuleMm = Math.min(LONGEST_NAME_MM, rules / (1 + DATE_SHARE));
  const dateLeft = row.left + nameMm + LABEL_GAP_MM + nameRuleMm + GAP_MM;
  const field = (label: string, left: number, labelMm: number, ruleMm: number): SceneNode[] => [
    text(label, left, baselineMm, EM_MM, { colour: QUIET_INK }),
    line(
      left + labelMm + LABEL_GAP_MM,
      baselineMm + RULE_DOWN_MM,
      left + labelMm + LABEL_GAP_MM + ruleMm,
      baselineMm + RULE_DOWN_MM,
      { colour: QUIET_INK, widthMm: RULE_MM },
    ),
  ];
  const nameLeft = row.left + nameMm + LABEL_GAP_MM;
  return [
    ...field(labels.name, row.left, nameMm, nameRuleMm),
    ...writtenName(child, nameLeft, nameRuleMm, baselineMm),
    ...field(labels.date, dateLeft, dateMm, nameRuleMm * DATE_SHARE),
    ...(code === ''
      ? []
      : [text(code, row.right, baselineMm, codeEmMm, { anchor: 'end', colour: INK })]),
  ];
}

/** The name on its line: smaller, then shortened with an ellipsis, where it is too long. */
function writtenName(child: string, left: number, widthMm: number, baselineMm: number): Text[] {
  const name = printableName(child);
  if (name === '') return [];
  const emMm = fitEm(name, widthMm, NAME_EM_MM, LEAST_EM_MM);
  return [
    text(fitText(name, widthMm, emMm), left, baselineMm - NAME_RISE_MM, emMm, { colour: INK }),
  ];
}
