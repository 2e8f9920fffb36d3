// The day in the calendar of this place.
import type { Day } from '../../records/index.ts';

export function today(): Day {
  const now = new Date();
  const twoDigits = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;
}
