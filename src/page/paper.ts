// Papers and how they lie: page sizes, and the margins that home printers leave alone.
import type { Area } from './layout.ts';

/** In the order of sheet codes: new ones go to the end. */
export const PAPER_NAMES = ['A4', 'Letter', 'A3', 'A5'] as const;
export type PaperName = (typeof PAPER_NAMES)[number];
/** What home printers take: what every step of an activity is made to fit. */
export const HOME_PAPERS = ['A4', 'Letter'] as const satisfies readonly PaperName[];

export const ORIENTATIONS = ['portrait', 'landscape'] as const;
export type Orientation = (typeof ORIENTATIONS)[number];

/** `pocket`: blank enough for the frame of a wipe-clean pocket. */
export const MARGINS = ['usual', 'pocket'] as const;
export type Margin = (typeof MARGINS)[number];

/** A paper, how it lies, and what is left blank round it. */
export interface PageChoice {
  readonly paper: PaperName;
  readonly orientation: Orientation;
  /** Absent: the usual one. */
  readonly margin?: 'pocket';
}

export interface PaperSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

/**
 * Upright sizes. A3, A4, A5: ISO 216. Letter: 8.5 × 11 inches of 25.4 mm (ANSI/ASME Y14.1, from memory).
 */
export const PAPERS: Readonly<Record<PaperName, PaperSize>> = {
  A4: { widthMm: 210, heightMm: 297 },
  Letter: { widthMm: 215.9, heightMm: 279.4 },
  A3: { widthMm: 297, heightMm: 420 },
  A5: { widthMm: 148, heightMm: 210 },
};

/** Nothing is drawn nearer to an edge: home printers leave 3–6.4 mm blank (common practice, no source). */
export const MARGIN_MM = 12;
/** A pocket has a welded frame that hides the edge of its sheet and keeps a pen from it (common practice, no source). */
const POCKET_MARGIN_MM = 20;
const MARGIN_SIZES_MM: Readonly<Record<Margin, number>> = {
  usual: MARGIN_MM,
  pocket: POCKET_MARGIN_MM,
};

/** The size of the page as it is read. */
export function pageSize(paper: PaperName, orientation: Orientation): PaperSize {
  const { widthMm, heightMm } = PAPERS[paper];
  return orientation === 'portrait'
    ? { widthMm, heightMm }
    : { widthMm: heightMm, heightMm: widthMm };
}

/** All of the page that may be printed on: the page less its margins. */
export function printArea(
  paper: PaperName,
  orientation: Orientation,
  margin: Margin = 'usual',
): Area {
  const { widthMm, heightMm } = pageSize(paper, orientation);
  const marginMm = MARGIN_SIZES_MM[margin];
  return {
    left: marginMm,
    top: marginMm,
    width: widthMm - 2 * marginMm,
    height: heightMm - 2 * marginMm,
  };
}
