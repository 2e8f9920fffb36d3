// The one place where lengths lose their last digits: what is written is in hundredths of a millimetre.

/** A length in hundredths of a millimetre, rounded to whole ones; a defect if it is not finite. */
export function hundredthsOf(lengthMm: number): number {
  // Adding nought turns −0 into 0.
  return Math.round(finite(lengthMm) * 100) + 0;
}

/** Whole hundredths as a number of mm. */
export function hundredthsText(hundredths: number): string {
  const place = hundredths + MOST_KEPT;
  if (place < 0 || place >= KEPT.length) return shortened(hundredths / 100);
  // Steps of outlines are short, so that the same few texts are written again and again.
  KEPT[place] ??= shortened(hundredths / 100);
  return KEPT[place];
}

/** Texts of up to 30 mm either way, once they were written. */
const MOST_KEPT = 3000;
const KEPT: (string | undefined)[] = Array.from({ length: 2 * MOST_KEPT + 1 });

/** A length in mm as text, rounded to 0.01 mm. */
export function mmText(lengthMm: number): string {
  return hundredthsText(hundredthsOf(lengthMm));
}

/** A factor (a matrix entry, a share of ink, the size of a font) as text, rounded to 0.00001. */
export function factorText(factor: number): string {
  return shortened((Math.round(finite(factor) * 100_000) + 0) / 100_000);
}

/** The shortest text of a number: no nought before the point. */
function shortened(value: number): string {
  const text = String(value);
  if (text.startsWith('0.')) return text.slice(1);
  return text.startsWith('-0.') ? `-${text.slice(2)}` : text;
}

function finite(value: number): number {
  if (!Number.isFinite(value)) {
    throw new Error(`press › number: expected a finite one, got ${value}`);
  }
  return value;
}
