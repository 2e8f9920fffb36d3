// The page over squares of 5 mm, to be copied square by square or traced from a screen under the paper.
import type { Language } from '../activities/index.ts';
import {
  codeIn,
  FAINT_INK,
  FINE_MM,
  group,
  line,
  MARGIN_MM,
  type Page,
  QUIET_INK,
  type SceneNode,
  text,
} from '../page/index.ts';
import { byHandWords } from './catalogue.ts';
import { drawLaid } from './draw-laid.ts';
import type { Guide } from './guide.ts';
import { RULER_MM } from './snap.ts';

const GRID_LINE_MM = 0.12;
/** Every so many squares a stronger line, to count by. */
const STRONG_EVERY = 10;
const EM_MM = 3;
const FOOT_MM = 16;

/** All squares lie on whole 5 mm of the page; a ruler laid on the blank page finds the same ones. */
export function copyPage(guide: Guide, language: Language): Page {
  const words = byHandWords(language);
  const { page, sheet, laid, folds } = guide;
  const foot = page.heightMm - MARGIN_MM;
  const advice = `${words.gridAdvice} ${codeIn(language, sheet.code)}`;
  return {
    ...page,
    title: `${words.grid} (${sheet.code})`,
    nodes: [
      group('squares', squares(page.widthMm, page.heightMm - FOOT_MM)),
      drawLaid(laid, folds, page),
      text(advice, page.widthMm / 2, foot, EM_MM, { anchor: 'middle', colour: QUIET_INK }),
    ],
  };
}

function squares(widthMm: number, bottomMm: number): readonly SceneNode[] {
  const first = Math.ceil(MARGIN_MM / RULER_MM);
  const [right, bottom] = [
    Math.floor((widthMm - MARGIN_MM) / RULER_MM),
    Math.floor((bottomMm - 1) / RULER_MM),
  ];
  const stroke = (mark: number) => ({
    colour: FAINT_INK,
    widthMm: mark % STRONG_EVERY === 0 ? FINE_MM : GRID_LINE_MM,
  });
  const [left, top] = [first * RULER_MM, first * RULER_MM];
  return [
    ...range(first, right).map((mark) =>
      line(mark * RULER_MM, top, mark * RULER_MM, bottom * RULER_MM, stroke(mark)),
    ),
    ...range(first, bottom).map((mark) =>
      line(left, mark * RULER_MM, right * RULER_MM, mark * RULER_MM, stroke(mark)),
    ),
  ];
}

function range(from: number, to: number): readonly number[] {
  return Array.from({ length: to - from + 1 }, (_, index) => from + index);
}
