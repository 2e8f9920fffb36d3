// What is left to tasks on an upright sheet, whichever paper a home prints on.
import { HOME_PAPERS, sheetArea } from '../page/index.ts';
import type { Size } from './size.ts';

const AREAS = HOME_PAPERS.map((paper) => sheetArea(paper, 'portrait'));

/** As wide as the narrowest and as high as the shortest of these sheets. */
export const UPRIGHT_ROOM: Size = {
  widthMm: Math.min(...AREAS.map(({ width }) => width)),
  heightMm: Math.min(...AREAS.map(({ height }) => height)),
};

/** Whether each of these sheets has room for what is so large. */
export function fitsUpright({ widthMm, heightMm }: Size): boolean {
  return widthMm <= UPRIGHT_ROOM.widthMm && heightMm <= UPRIGHT_ROOM.heightMm;
}
