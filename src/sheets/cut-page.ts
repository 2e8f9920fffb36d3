// What all pages to cut have in common: dashed lines, one round each thing to cut out, and a small foot for the adult.
import type { Language } from '../activities/index.ts';
import { moveBy } from '../base/index.ts';
import {
  type Area,
  centredIn,
  FAINT_INK,
  FINE_MM,
  fitText,
  type Group,
  group,
  LINE_MM,
  line,
  type Orientation,
  type Page,
  type PaperName,
  pageIn,
  pageSize,
  printArea,
  QUIET_INK,
  SCISSORS_SIZE,
  type SceneNode,
  scissorsSign,
  text,
  textWidthMm,
} from '../page/index.ts';

/** Least blank between two things to cut out, and between them and the margin, in mm: a small hand's slip spoils one. */
export const SPARE_MM = 8;
/** Between neighbours, their lines included. */
export const CUT_GAP_MM = SPARE_MM + LINE_MM;
const EM_MM = 3.1;
const FOOT_MM = 6;
const SIGN_GAP_MM = 2;
const WORDS_GAP_MM = 5;
/** Dash and gap in mm, as nearly as they divide a side; by eye. */
const DASH_MM = 2.4;
const DASH_GAP_MM = 1.8;

export interface CutPageChoice {
  readonly paper: PaperName;
  readonly orientation: Orientation;
}

/** Where things to cut out may stand: away from the margins, and from the foot. */
export function cutArea({ paper, orientation }: CutPageChoice, spareMm = SPARE_MM): Area {
  const area = printArea(paper, orientation);
  return {
    left: area.left + spareMm,
    top: area.top + spareMm,
    width: area.width - 2 * spareMm,
    height: area.height - spareMm - FOOT_MM - SPARE_MM,
  };
}

export interface CutPage {
  readonly language: Language;
  readonly page: CutPageChoice;
  readonly title: string;
  /** What the adult reads at the foot, at its beginning and at its end. */
  readonly foot: readonly [begin: string, end: string];
  readonly nodes: readonly SceneNode[];
}

/** A page with its small foot: the sign for cutting, what it is, and which page of how many. */
export function cutPage({ language, page, title, foot, nodes }: CutPage): Page {
  const { paper, orientation } = page;
  return pageIn(language, {
    ...pageSize(paper, orientation),
    title,
    nodes: [...nodes, footOf(printArea(paper, orientation), foot)],
  });
}

function footOf({ left, top, width, height }: Area, [words, number]: CutPage['foot']): Group {
  const bottom = top + height;
  const from = left + SCISSORS_SIZE.widthMm + SIGN_GAP_MM;
  const numberMm = textWidthMm(number, EM_MM);
  const room = left + width - from - numberMm - WORDS_GAP_MM;
  const colour = QUIET_INK;
  return group('cut-foot', [
    scissorsSign(left, bottom - SCISSORS_SIZE.heightMm),
    text(fitText(words, room, EM_MM), from, bottom - 1.2, EM_MM, { colour }),
    text(number, left + width, bottom - 1.2, EM_MM, { colour, anchor: 'end' }),
  ]);
}

/** The line to cut along: dashes that begin and end in the corners, their middle on the edge of the area. */
export function cutLine({ left, top, width, height }: Area): Group {
  const [right, bottom] = [left + width, top + height];
  const stroke = { colour: FAINT_INK, widthMm: FINE_MM, ends: 'square' } as const;
  const across = dashesAlong(width).flatMap(([from, to]) => [
    line(left + from, top, left + to, top, stroke),
    line(left + from, bottom, left + to, bottom, stroke),
  ]);
  const down = dashesAlong(height).flatMap(([from, to]) => [
    line(left, top + from, left, top + to, stroke),
    line(right, top + from, right, top + to, stroke),
  ]);
  return group('cut-line', [...across, ...down]);
}

function dashesAlong(lengthMm: number): readonly (readonly [from: number, to: number])[] {
  const count = Math.max(2, Math.round((lengthMm + DASH_GAP_MM) / (DASH_MM + DASH_GAP_MM)));
  const dash = (lengthMm - (count - 1) * DASH_GAP_MM) / count;
  return Array.from({ length: count }, (_, index) => {
    const from = index * (dash + DASH_GAP_MM);
    return [from, from + dash] as const;
  });
}

/** A drawing, given from (0, 0), where it stands. */
export function standing(drawing: Group, { left, top }: Pick<Area, 'left' | 'top'>): Group {
  return { ...group('standing', [drawing]), transform: moveBy(left, top) };
}

/** Equal things in rows and columns in the middle of the area, `gapMm` apart; a last row that is not full at the left. */
export function gridInMiddle(
  count: number,
  one: { readonly widthMm: number; readonly heightMm: number },
  area: Area,
  gapMm: number,
): readonly Area[] {
  const { columns } = gridRoom(one, area, gapMm);
  const wide = Math.min(columns, count);
  const rows = Math.ceil(count / wide);
  const whole = centredIn(
    area,
    wide * (one.widthMm + gapMm) - gapMm,
    rows * (one.heightMm + gapMm) - gapMm,
  );
  return Array.from({ length: count }, (_, index) => ({
    left: whole.left + (index % wide) * (one.widthMm + gapMm),
    top: whole.top + Math.floor(index / wide) * (one.heightMm + gapMm),
    width: one.widthMm,
    height: one.heightMm,
  }));
}

/** How many equal things stand beside each other, and below each other. */
export function gridRoom(
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
  area: Area,
  gapMm: number,
): { readonly columns: number; readonly rows: number } {
  // A hundredth of a mm too long is not too long: it comes from the last digits of sums.
  const fits = (length: number, one: number) => Math.floor((length + gapMm + 0.01) / (one + gapMm));
  return { columns: fits(area.width, widthMm), rows: fits(area.height, heightMm) };
}
