// Making up for a printer that enlarges or shrinks: pages scaled the other way, so that paper carries true sizes.
import {
  accept,
  compose,
  moveBy,
  type Refusal,
  type Result,
  refuse,
  scaleBy,
  told,
} from '../base/index.ts';
import { CHECK_LINE_MM } from './check-line.ts';
import { MARGIN_MM, PAPERS, type PaperName } from './paper.ts';
import type { Page } from './scene.ts';

/** What the 50 mm line may measure: further off, it is the print window that scales, not the printer (by judgement). */
export const MEASURES_MM = { least: 45, most: 55 } as const;
/** A ruler laid by hand tells no less, in mm (by judgement). */
export const RULER_MM = 0.5;

/** Floating point must not push a measure that is just enough over to the next tenth. */
const ROUNDING = 1e-9;

/** Whether a 50 mm line that measures so is as true as a ruler can tell. */
export function isTrueSize(measuredMm: number): boolean {
  return Math.abs(measuredMm - CHECK_LINE_MM) <= RULER_MM + ROUNDING;
}

/**
 * What the 50 mm line measured, in mm with at most one decimal behind a point or a comma. Refused at `at`: what is no
 * such number, and what is too far off to be put right here.
 */
export function readMeasure(text: string, at: string): Result<number> {
  const words = text.trim().replace(/mm$/, '').trimEnd();
  if (!/^\d{1,3}([.,]\d)?$/.test(words)) {
    const expected = told('reasons', 'expected.measure');
    return refuse({ code: 'wrong-type', at, got: text, expected });
  }
  const measuredMm = Number(words.replace(',', '.'));
  const { least, most } = MEASURES_MM;
  return measuredMm < least || measuredMm > most
    ? refuse({ code: 'not-correctable', at, got: measuredMm, least, most })
    : accept(measuredMm);
}

/**
 * The smallest measure in mm, up to the next tenth, that pages of this paper can be corrected for: enlarged any
 * further, what is printed up to the margin would leave the paper. The longer side decides.
 */
export function leastMeasureMm(paper: PaperName): number {
  const { widthMm, heightMm } = PAPERS[paper];
  const sideMm = Math.max(widthMm, heightMm);
  const leastMm = (CHECK_LINE_MM * (sideMm - 2 * MARGIN_MM)) / sideMm;
  return Math.max(MEASURES_MM.least, Math.ceil(leastMm * 10 - ROUNDING) / 10);
}

/** Why pages of these papers cannot be corrected for the measure; none if they can. */
export function measureRefusals(
  papers: readonly PaperName[],
  measuredMm: number,
  at: string,
): readonly Refusal[] {
  const tooLarge = papers.find((paper) => measuredMm < leastMeasureMm(paper));
  if (tooLarge === undefined) return [];
  const [least, { most }] = [leastMeasureMm(tooLarge), MEASURES_MM];
  return [{ code: 'not-correctable', at, got: measuredMm, least, most, paper: tooLarge }];
}

/**
 * The page for a printer on which a 50 mm line measures `measuredMm`: all that it shows scaled about its middle by
 * 50 / measured, the page itself as large as the paper. Absent, or exactly 50: the page as it is.
 */
export function corrected(page: Page, measuredMm: number | undefined): Page {
  if (measuredMm === undefined || measuredMm === CHECK_LINE_MM) return page;
  const [x, y] = [page.widthMm / 2, page.heightMm / 2];
  const scale = scaleBy(CHECK_LINE_MM / measuredMm);
  const transform = compose(moveBy(x, y), compose(scale, moveBy(-x, -y)));
  return {
    ...page,
    nodes: [{ kind: 'group', role: 'corrected', children: page.nodes, transform }],
  };
}

/** Each page corrected as it is taken. */
export function* correctedPages(
  pages: Iterable<Page>,
  measuredMm: number | undefined,
): Generator<Page> {
  for (const page of pages) yield corrected(page, measuredMm);
}
