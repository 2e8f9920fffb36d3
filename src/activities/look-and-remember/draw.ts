// Draws a task: a frame to look at, the dashed line to fold along, the choices below; the answer as rings.
import {
  asModel,
  asPlace,
  box,
  FAINT_INK,
  FINE_MM,
  type Group,
  group,
  LINE_MM,
  line,
  marked,
  type PrintStyle,
  QUIET_INK,
  type SceneNode,
  stroked,
  text,
  textWidthMm,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { ANSWER_LINE_MM, drawInCell, ringPath } from '../placing.ts';
import { printedWords } from '../printed-words.ts';
import { leastSize, planPage } from './page-plan.ts';
import type { Answer, Printed } from './task.ts';

const FOLD_DASH_MM = [4, 3];
const WORD_EM_MM = 3.1;
/** At either edge of the paper, where the fold is begun. */
const EDGE_MARK_MM = 6;
/** Between the word and the dashed line. */
const WORD_GAP_MM = 2;

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size);
  const { left, top, width, height } = plan.frame;
  const set = printed.set.flatMap((figure, index) => {
    const cell = plan.set[index];
    return cell ? [group('seen', drawInCell(figure, cell, style))] : [];
  });
  const choices = printed.choices.flatMap((figure, index) => {
    const cell = plan.choices[index];
    return cell ? [asPlace(marked(group('choice', drawInCell(figure, cell, style)), index))] : [];
  });
  const rings = (answer ?? []).flatMap((place) => {
    const cell = plan.choices[place];
    return cell ? [stroked(ringPath(cell), { colour: QUIET_INK, widthMm: ANSWER_LINE_MM })] : [];
  });
  return group('task', [
    asModel(group('frame', [box(left, top, width, height), ...set])),
    group('fold', drawFold(plan.foldMm, size.widthMm, style)),
    ...choices,
    ...(answer === undefined ? [] : [group('answer', rings)]),
  ]);
}

/** A dashed line right across with a solid mark at either edge to fold from, and a small word for the adult. */
function drawFold(y: number, widthMm: number, { language }: PrintStyle): readonly SceneNode[] {
  const { fold } = printedWords(language);
  const wordMm = textWidthMm(fold, WORD_EM_MM);
  const wordEnd = widthMm - EDGE_MARK_MM - WORD_GAP_MM;
  const from = EDGE_MARK_MM + WORD_GAP_MM;
  const end = wordEnd - wordMm - WORD_GAP_MM;
  const mark = { colour: QUIET_INK, widthMm: LINE_MM, ends: 'square' } as const;
  return [
    line(LINE_MM / 2, y, EDGE_MARK_MM, y, mark),
    line(from, y, end, y, { colour: FAINT_INK, widthMm: FINE_MM, dashMm: FOLD_DASH_MM }),
    text(fold, wordEnd, y + 0.32 * WORD_EM_MM, WORD_EM_MM, {
      anchor: 'end',
      colour: QUIET_INK,
    }),
    line(widthMm - EDGE_MARK_MM, y, widthMm - LINE_MM / 2, y, mark),
  ];
}
