// Papers and how they lie: page sizes, and the margins that home printers leave alone.
import type { Area } from './layout.ts';

export const PAPER_NAMES = ['A4', 'Letter'] as const;
export type PaperName = (typeof PAPER_NAMES)[number];

export const ORIENTATIONS = ['portrait', 'landscape'] as const;
export type Orientation = (typeof ORIENTATIONS)[number];

export interface PaperSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

/**
 * Upright sizes. A4: ISO 216. Letter: 8.5 × 11 inches of 25.4 mm (ANSI/ASME Y14.1, from memory).
 */
export const PAPERS: Readonly<Record<PaperName, PaperSize>> = {
  A4: { widthMm: 210, heightMm: 297 },
  Letter: { widthMm: 215.9, heightMm: 279.4 },
};

/** Nothing is drawn nearer to an edge: home printers leave 3–6.4 mm blank (common practice, no source). */
export const MARGIN_MM = 12;

/** The size of the page as it is read. */
export function pageSize(paper: PaperName, orientation: Orientation): PaperSize {
  const { widthMm, heightMm } = PAPERS[paper];
  return orientation === 'portrait'
    ? { widthMm, heightMm }
    : { widthMm: heightMm, heightMm: widthMm };
}

/** All of the page that may be printed on: the page less its margins. */
export function printArea(paper: PaperName, orientation: Orientation): Area {
  const { widthMm, heightMm } = pageSize(paper, orientation);
  return {
    left: MARGIN_MM,
    top: MARGIN_MM,
    width: widthMm - 2 * MARGIN_MM,
    height: heightMm - 2 * MARGIN_MM,
  };
}
