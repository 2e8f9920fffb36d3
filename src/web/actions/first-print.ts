// Whether sheets come out of this browser for the first time, while nothing is known of its printer.
import { recall, remember } from '../children/remembered.ts';
import { recallMeasure } from './measured.ts';

/** True once at the most. */
export function isFirstPrint(): boolean {
  if (recall('printed') !== undefined) return false;
  remember('printed', 'yes');
  return recallMeasure() === undefined;
}
