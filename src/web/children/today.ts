// Days in the calendar of this place.
import type { Day } from '../../records/index.ts';

/** The day of a moment, in milliseconds since 1970. */
export function dayAt(at: number): Day {
  const moment = new Date(at);
  const twoDigits = (number: number) => String(number).padStart(2, '0');
  return `${moment.getFullYear()}-${twoDigits(moment.getMonth() + 1)}-${twoDigits(moment.getDate())}`;
}

export function today(): Day {
  return dayAt(Date.now());
}
