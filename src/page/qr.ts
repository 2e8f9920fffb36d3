// A QR code as one outline, so that no seam can show between its modules.
import { encode } from 'uqr';
import { scaleBy, transformPath } from '../base/index.ts';
import { INK } from './ink.ts';
import { kept } from './mirror.ts';
import { filled, group } from './nodes.ts';
import { modulesPath } from './qr-outline.ts';
import type { Group } from './scene.ts';

/** Blank modules that a QR code needs on every side (ISO/IEC 18004, as two QR libraries quote it). */
export const QUIET_MODULES = 4;
/** Side of a module in mm: 3.5 dots of a 200 dpi scan (common practice, no source). */
export const MODULE_MM = 0.45;

export interface QrDrawing {
  /** From (0, 0), without the quiet zone: keep `quietMm` blank on every side. */
  readonly group: Group;
  readonly sideMm: number;
  readonly quietMm: number;
}

/** More characters than this make a denser code, which is printed with less to spare so that it stays small. */
const LONG = 61;
/** Side of a module of such a code in mm: 4 dots of a 300 dpi print (common practice, no source). */
const DENSE_MODULE_MM = 0.36;

/**
 * `words` as a QR code that bears a loss of 15 % or more (level M of ISO/IEC 18004); long ones of 7 % (level L).
 */
export function drawQr(words: string, alt: string): QrDrawing {
  const isLong = words.length > LONG;
  const moduleMm = isLong ? DENSE_MODULE_MM : MODULE_MM;
  const { data, size } = encode(words, { ecc: isLong ? 'L' : 'M', border: 0 });
  const outline = transformPath(modulesPath(data), scaleBy(moduleMm));
  return {
    group: kept(group('qr', [filled(outline, INK)], alt), (size * moduleMm) / 2),
    sideMm: size * moduleMm,
    quietMm: QUIET_MODULES * moduleMm,
  };
}
