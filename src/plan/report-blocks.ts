// What a report says, as blocks that are measured before they have a place.
import {
  type Block,
  besideBlocks,
  bullets,
  FINE_MM,
  group,
  heading,
  line,
  paragraph,
  picture,
  QUIET_INK,
  text,
  textWidthMm,
  together,
} from '../page/index.ts';
import type { Report, ReportNotes, ReportPart, ReportRemarks, ReportSkill } from './report.ts';
import { CHART_SIZE, drawCourse } from './report-chart.ts';

const SMALL_EM_MM = 3.3;
const SECTION_BEFORE_MM = 6;
const SKILL_BEFORE_MM = 4;
/** Blank between the lines on a skill, which belong together. */
const LINE_BEFORE_MM = 0.4;
const COLUMN_GAP_MM = 8;
const ROWS_GAP_MM = 6;
/** Lines to write a remark on, and their distance: common practice, no source. */
const REMARK_LINES = 3;
const REMARK_LINE_MM = 9;
const FIELD_GAP_MM = 2;

const small = (words: string, width: number) => paragraph(words, width, { emMm: SMALL_EM_MM });
const quiet = (words: string, width: number) =>
  paragraph(words, width, { emMm: SMALL_EM_MM, colour: QUIET_INK });

/** How many rows of each part and how many notes are shown. */
export interface Shown {
  readonly rows: number;
  readonly notes: number;
}

/** Title, opening, skills and parts, notes, cautions, and room for a remark. */
export function reportBlocks(report: Report, shown: Shown, width: number): readonly Block[] {
  const { title, opening, skills, parts, notes, care, remarks } = report;
  return [
    heading(title, width),
    ...opening.map((words) => paragraph(words, width)),
    ...skills.map((skill, place) => skillBlock(skill, width, place === 0)),
    ...parts.flatMap((part) => partBlocks(part, shown.rows, width)),
    ...(notes ? notesBlocks(notes, shown.notes, width) : []),
    ...partBlocks(care, 0, width),
    remarksBlock(remarks, width),
  ];
}

function notesBlocks({ heading: title, items, more }: ReportNotes, shown: number, width: number) {
  const notes = items.slice(0, shown).map((note) => small(note, width));
  return headed(title, shown < items.length ? [...notes, quiet(more, width)] : notes, width);
}

/** What is said of a skill, and its course beside it. */
function skillBlock(skill: ReportSkill, width: number, isFirst: boolean): Block {
  const wordsWidth = width - CHART_SIZE.widthMm - COLUMN_GAP_MM;
  const words = together(
    [
      paragraph(skill.name, wordsWidth, { weight: 'bold' }),
      ...[
        quiet(skill.about, wordsWidth),
        ...skill.lines.map((line) => small(line, wordsWidth)),
      ].map((block) => ({ ...block, beforeMm: LINE_BEFORE_MM })),
    ],
    0,
  );
  const chart = skill.chart && picture(drawCourse(skill.chart.course, skill.chart), CHART_SIZE);
  return besideBlocks(
    [
      { block: words, widthMm: wordsWidth },
      ...(chart ? [{ block: chart, widthMm: CHART_SIZE.widthMm }] : []),
    ],
    COLUMN_GAP_MM,
    isFirst ? SECTION_BEFORE_MM : SKILL_BEFORE_MM,
  );
}

function partBlocks(
  { heading: title, paragraphs, rows }: ReportPart,
  shown: number,
  width: number,
) {
  const under = paragraphs.map((words) => small(words, width));
  if (rows === undefined) return headed(title, under, width);
  const { items, more } = rows;
  return headed(
    title,
    [
      ...under,
      ...(shown > 0 ? [rowsBlock(items.slice(0, shown), width)] : []),
      ...(shown < items.length ? [quiet(more, width)] : []),
    ],
    width,
  );
}

/** The heading stays with what comes first under it. */
function headed(title: string, under: readonly Block[], width: number): readonly Block[] {
  const [first, ...others] = under;
  return [
    together([heading(title, width, 2), ...(first ? [first] : [])], SECTION_BEFORE_MM),
    ...others,
  ];
}

/** Two columns, read down the first. */
function rowsBlock(rows: readonly string[], width: number): Block {
  const columnWidth = (width - ROWS_GAP_MM) / 2;
  const half = Math.ceil(rows.length / 2);
  const columns = [rows.slice(0, half), rows.slice(half)].filter((each) => each.length > 0);
  return besideBlocks(
    columns.map((each) => ({
      block: bullets(each, columnWidth, SMALL_EM_MM),
      widthMm: columnWidth,
    })),
    ROWS_GAP_MM,
    1,
  );
}

/** Lines to write on, then what is to be filled in, side by side. */
function remarksBlock({ heading: title, fields }: ReportRemarks, width: number): Block {
  const head = heading(title, width, 2);
  const linesMm = REMARK_LINES * REMARK_LINE_MM;
  const fieldWidth = (width - (fields.length - 1) * COLUMN_GAP_MM) / fields.length;
  const heightMm = head.heightMm + linesMm + REMARK_LINE_MM + 1;
  const rule = (from: number, to: number, y: number) =>
    line(from + FINE_MM / 2, y, to - FINE_MM / 2, y, { colour: QUIET_INK, widthMm: FINE_MM });
  return {
    heightMm,
    beforeMm: SECTION_BEFORE_MM,
    draw: (left, top) => {
      const first = top + head.heightMm;
      const lowest = top + heightMm - 1;
      return group('remarks', [
        head.draw(left, top),
        ...Array.from({ length: REMARK_LINES }, (_, place) =>
          rule(left, left + width, first + (place + 1) * REMARK_LINE_MM),
        ),
        ...fields.flatMap((label, place) => {
          const from = left + place * (fieldWidth + COLUMN_GAP_MM);
          const labelMm = textWidthMm(label, SMALL_EM_MM) + FIELD_GAP_MM;
          return [
            text(label, from, lowest, SMALL_EM_MM, { colour: QUIET_INK }),
            rule(from + labelMm, from + fieldWidth, lowest),
          ];
        }),
      ]);
    },
  };
}
