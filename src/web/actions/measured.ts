// What the 50 mm line measures on the printer of this device, remembered in this browser until it is reset.
import { recall, remember } from '../children/remembered.ts';

/** In mm; absent: nothing is to be made up for. What cannot be read is as good as nothing. */
export function recallMeasure(): number | undefined {
  const text = recall('measured') ?? '';
  return /^\d\d(\.\d)?$/.test(text) ? Number(text) : undefined;
}

/** Forgets it where there is none. */
export function rememberMeasure(measuredMm: number | undefined): void {
  remember('measured', measuredMm === undefined ? undefined : String(measuredMm));
}
