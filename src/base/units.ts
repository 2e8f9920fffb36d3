// Lengths: everything inside is millimetres; the PDF's unit is the point.

/** Millimetres in one PDF point: 25.4 / 72 (ISO 32000 default user space unit, 1/72 inch). */
export const MM_PER_POINT = 25.4 / 72;

/** Points for a length in mm. */
export function pointsFromMm(mm: number): number {
  return mm / MM_PER_POINT;
}
