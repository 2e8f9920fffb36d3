// How much waste the engine may let lie: the memory of a long pack is what is held, not what is forgotten.
import { setFlagsFromString } from 'node:v8';

/** Waste that the heap grows by before it is collected, in hundredths of what is held; the engine's own choice is several hundred. */
const MOST_WASTE_PERCENT = 50;

/** For the whole process, its workers included; to be called before anything large is made. */
export function keepHeapSmall(): void {
  setFlagsFromString(`--heap-growing-percent=${MOST_WASTE_PERCENT}`);
}
