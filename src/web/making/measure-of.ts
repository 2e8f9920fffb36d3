// What the 50 mm line measured, judged by the core: as it was typed, and for the papers of what is pressed.
import { accept, type Result, refuse } from '../../base/index.ts';
import {
  isTrueSize,
  measureRefusals,
  PAPER_NAMES,
  type PaperName,
  printedPaperOf,
  readMeasure,
} from '../../page/index.ts';
import { DEFAULT_PAGE } from '../../sheets/index.ts';
import type { Measure, PressOrder } from './protocol.ts';

/** Where a measure is refused, as the sentence names it. */
const AT = 'True size';

/** Refuses also what the sheets in view, on their paper, cannot be corrected for. */
export function measureOf(text: string, paper: string): Result<Measure> {
  const measured = readMeasure(text, AT);
  if (!measured.ok) return measured;
  const refusals = measureRefusals([printedPaperOf(paperNamed(paper))], measured.value, AT);
  if (refusals.length > 0) return refuse(...refusals);
  return accept({ measuredMm: measured.value, isTrue: isTrueSize(measured.value) });
}

/** By how much the pages of an order are to be corrected, where they can be. */
export function correctionOf(
  { measuredMm }: Pick<PressOrder, 'measuredMm'>,
  papers: readonly PaperName[],
): Result<number | undefined> {
  if (measuredMm === undefined || papers.length === 0) return accept(undefined);
  const refusals = measureRefusals(papers, measuredMm, AT);
  return refusals.length > 0 ? refuse(...refusals) : accept(measuredMm);
}

/** The paper of this name; that of a first visit where there is none. */
export function paperNamed(name: string): PaperName {
  return PAPER_NAMES.find((paper) => paper === name) ?? DEFAULT_PAGE.paper;
}
