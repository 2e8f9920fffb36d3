// How large figures and the gaps about them are, in mm, at the least size at which a page is calm.
import { type FormId, formOf, isLetter, isNumeral, isShape } from '../../figures/index.ts';
import { leastCellMm } from '../placing.ts';
import type { Printed } from './task.ts';

export interface Measures {
  /** Side of a figure's cell, or the diameter of a dot that takes a sticker. */
  readonly figureMm: number;
  /** What one figure takes up of a box, its gaps not counted. */
  readonly cellMm: number;
  /** Between figures, and between figures and the line of the box. */
  readonly gapMm: number;
  /** Between boxes: never less than inside them, so that what belongs together is in no doubt. */
  readonly betweenMm: number;
}

/** What a kind of figure takes up; a line drawn round it by a young hand may need a wider gap. */
interface Kind {
  readonly cellMm: number;
  readonly gapMm: number;
  readonly ringGapMm: number;
  readonly betweenMm: number;
}

/**
 * Common practice, no source: 14 mm is the least that is easy to see and to ring at three. A letter fills
 * about half of its cell, which leaves the gap inside it; the dots of a quantity must be large enough to
 * count, and stand on a card that leaves room round them. Where sizes differ, most figures leave some of
 * their cell free.
 */
const SHAPE: Kind = { cellMm: 18, gapMm: 5, ringGapMm: 6, betweenMm: 10 };
const LETTER: Kind = { cellMm: 21, gapMm: 3, ringGapMm: 3, betweenMm: 12 };
const FINE: Kind = { cellMm: 20, gapMm: 4.5, ringGapMm: 4.5, betweenMm: 10 };
const SIZED: Kind = { cellMm: 18, gapMm: 3.5, ringGapMm: 4, betweenMm: 10 };
const QUANTITY: Kind = { cellMm: 21.5, gapMm: 3.4, ringGapMm: 3.4, betweenMm: 10 };

/** The least that a child of three can be asked to touch; common practice, no source. */
const TARGET_MM = 12;
/** Of a sticker's diameter. */
const STICKER_GAP_SHARE = 0.28;
/** Of the gap inside a box. */
const BETWEEN_SHARE = 1.75;

/**
 * Blank all round a task, in mm: with what a sheet leaves between tasks, more than between boxes, so that
 * no box seems to belong to the task beside it.
 */
export const AROUND_MM = 2.5;

export function measuresOf(printed: Printed): Measures {
  const { cellMm, gapMm, ringGapMm, betweenMm } = kindOf(printed);
  const insideMm = printed.response === 'ring' ? ringGapMm : gapMm;
  return {
    figureMm: printed.stickerMm ?? cellMm,
    cellMm,
    gapMm: insideMm,
    betweenMm: Math.max(betweenMm, BETWEEN_SHARE * insideMm),
  };
}

/** The kind that needs most room among the figures. */
function kindOf({ boxes, stickerMm }: Printed): Kind {
  if (stickerMm !== undefined) return stickerKind(stickerMm);
  const figures = boxes.flatMap((box) => box.figures);
  const kind = kindOfForms(figures.map(formOf));
  const sized = figures.some(({ size = 1 }) => size !== 1) ? SIZED : kind;
  return { ...sized, cellMm: Math.max(kind.cellMm, leastCellMm(figures)) };
}

function kindOfForms(forms: readonly FormId[]): Kind {
  if (forms.includes('dots')) return QUANTITY;
  if (forms.every((form) => isLetter(form) || isNumeral(form))) return LETTER;
  return forms.every(isShape) ? SHAPE : FINE;
}

function stickerKind(stickerMm: number): Kind {
  const cellMm = Math.max(stickerMm, TARGET_MM);
  const gapMm = STICKER_GAP_SHARE * cellMm;
  return { ...SHAPE, cellMm, gapMm, ringGapMm: Math.max(gapMm, SHAPE.ringGapMm) };
}
