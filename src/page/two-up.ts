// Two pages of half a sheet on one whole sheet, to be printed together and cut apart.
import { moveBy } from '../base/index.ts';
import { FINE_MM, QUIET_INK } from './ink.ts';
import { group, line } from './nodes.ts';
import { MARGIN_MM, ORIENTATIONS, type PaperName, type PaperSize, pageSize } from './paper.ts';
import type { Group, Page, Shape } from './scene.ts';

/** Fine enough not to be taken for a line of a task. */
const CUT_DASH_MM = [1.5, 2.5] as const;

/** The paper that goes into the printer: two A5 are printed on one A4. */
export function printedPaperOf(paper: PaperName): PaperName {
  return paper === 'A5' ? 'A4' : paper;
}

/**
 * Pairs for cutting a whole stack at once: the first half of the items in the first places, the second half in the
 * second ones. After the cut, the pile of the first places laid on the other is all items in order. Of an odd number
 * the last sheet has no second.
 */
export function cutAndStack<T>(
  items: readonly T[],
): readonly (readonly [first: T, second: T | undefined])[] {
  const sheets = Math.ceil(items.length / 2);
  return items.slice(0, sheets).map((first, index) => [first, items[sheets + index]] as const);
}

/**
 * Two A5 pages that lie alike on one A4, at true size, each in the middle of its half, with a fine dashed line to cut
 * along: upright pages side by side, pages that lie sideways under one another. Without a second its half stays blank.
 */
export function twoUp(first: Page, second: Page | undefined): Page {
  const isUpright = first.heightMm > first.widthMm;
  const size = pageSize('A4', isUpright ? 'landscape' : 'portrait');
  for (const page of [first, ...(second ? [second] : [])]) refuseOther(page, isUpright);
  const half = isUpright
    ? { widthMm: size.widthMm / 2, heightMm: size.heightMm }
    : { widthMm: size.widthMm, heightMm: size.heightMm / 2 };
  const [across, down] = isUpright ? [half.widthMm, 0] : [0, half.heightMm];
  return {
    ...size,
    title: second ? `${first.title} · ${second.title}` : first.title,
    nodes: [
      partIn(half, first, 0, 0),
      ...(second ? [partIn(half, second, across, down)] : []),
      group('cut-line', [cutLine(size, isUpright)]),
    ],
  };
}

/** A page of another size would be cut off or lie askew: that is a defect of the caller. */
function refuseOther({ widthMm, heightMm, title }: Page, isUpright: boolean): void {
  const a5 = pageSize('A5', ORIENTATIONS[isUpright ? 0 : 1]);
  if (widthMm !== a5.widthMm || heightMm !== a5.heightMm) {
    throw new Error(`two on one page › ${title}: expected A5, got ${widthMm} × ${heightMm} mm`);
  }
}

function partIn(half: PaperSize, page: Page, leftMm: number, topMm: number): Group {
  const across = leftMm + (half.widthMm - page.widthMm) / 2;
  const down = topMm + (half.heightMm - page.heightMm) / 2;
  return { ...group('part', page.nodes), title: page.title, transform: moveBy(across, down) };
}

/** Across the whole page but its margins, which printers may leave blank. */
function cutLine({ widthMm, heightMm }: PaperSize, isUpright: boolean): Shape {
  const stroke = {
    colour: QUIET_INK,
    widthMm: FINE_MM,
    dashMm: CUT_DASH_MM,
    ends: 'square',
  } as const;
  return isUpright
    ? line(widthMm / 2, MARGIN_MM, widthMm / 2, heightMm - MARGIN_MM, stroke)
    : line(MARGIN_MM, heightMm / 2, widthMm - MARGIN_MM, heightMm / 2, stroke);
}
