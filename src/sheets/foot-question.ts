// What stands at the foot of a sheet to be asked: as many whole sentences as its line has room for.
import { textWidthMm } from '../page/index.ts';

/** The em of the foot in mm, and what QR code and gaps take of its width; `drawFoot` does the rest. */
const EM_MM = 3.1;
const BESIDE_MM = 24;

/** The first of `say` with those after it that fit beside `about`; the others stand on the adult's page. */
export function footQuestion(say: readonly string[], about: string, widthMm: number): string {
  const room = widthMm - BESIDE_MM - textWidthMm(about, EM_MM);
  let question = say[0] ?? '';
  for (const sentence of say.slice(1)) {
    const longer = `${question} ${sentence}`;
    if (textWidthMm(longer, EM_MM) > room) break;
    question = longer;
  }
  return question;
}
