// The page that shows whether a printer keeps true size: a 50 mm line across and one upright, to lay a ruler on.
import type { Language } from '../activities/index.ts';
import { compose, moveBy, turnBy } from '../base/index.ts';
import {
  type Area,
  CHECK_LINE_SIZE,
  centreOf,
  checkLine,
  type Group,
  group,
  heading,
  numbered,
  type Page,
  type Pages,
  type PaperName,
  pageIn,
  pageSize,
  paragraph,
  printArea,
  printedPaperOf,
  stackBlocks,
  text,
} from '../page/index.ts';
import { pageWords } from './page-catalogue.ts';
import type { RulerWords } from './page-words.ts';

/** Lines of text stay short enough to read at a glance, also on A3. */
const WORDS_MM = 150;
const TEXT_EM_MM = 4.4;
const LABEL_EM_MM = 4.4;
/** From the words down to the lines, by eye. */
const LINES_GAP_MM = 28;
const LABEL_GAP_MM = 6;
/** Between the two lines, by eye. */
const BETWEEN_MM = 36;
/** Of the blank that is left, how much stands above: a little less than below looks like the middle. */
const ABOVE_SHARE = 0.35;

/** The page as a document of its own, on the paper that goes into the printer for sheets of `paper`. */
export function rulerPages(paper: PaperName, language: Language = 'en'): Pages {
  const words = pageWords(language).ruler;
  return {
    title: words.title,
    language,
    pages: [pageIn(language, rulerPage(printedPaperOf(paper), words))],
  };
}

function rulerPage(paper: PaperName, words: RulerWords): Page {
  const whole = printArea(paper, 'portrait');
  const width = Math.min(WORDS_MM, whole.width);
  const column = { ...whole, left: centreOf(whole).x - width / 2, width };
  const blocks = [
    heading(words.title, width),
    paragraph(words.about, width, { emMm: TEXT_EM_MM }),
    numbered(words.steps, width, TEXT_EM_MM),
  ];
  const { heightMm } = stackBlocks(blocks, column);
  const spareMm = column.height - heightMm - LINES_GAP_MM - CHECK_LINE_SIZE.widthMm;
  const top = column.top + spareMm * ABOVE_SHARE;
  const { group: told } = stackBlocks(blocks, { ...column, top });
  return {
    ...pageSize(paper, 'portrait'),
    title: words.title,
    nodes: [told, ...lines({ ...column, top: top + heightMm + LINES_GAP_MM }, words)],
  };
}

/** Beside one another, each with its name and a line to write on what it measured. */
function lines({ left, top }: Area, words: RulerWords): readonly Group[] {
  const { widthMm } = CHECK_LINE_SIZE;
  const label = (name: string, x: number, y: number) =>
    [name, words.measured].map((line, index) =>
      text(line, x, y + index * 2 * LABEL_EM_MM, LABEL_EM_MM),
    );
  const right = left + widthMm + BETWEEN_MM;
  const upright = {
    ...checkLine(0, 0, ''),
    transform: compose(moveBy(right, top), turnBy(90)),
  };
  return [
    group('paragraph', label(words.across, left, top + LABEL_GAP_MM * 2)),
    checkLine(left, top, ''),
    group('paragraph', label(words.upright, right + LABEL_GAP_MM, top + LABEL_GAP_MM * 2)),
    upright,
  ];
}
