// Days as the present language writes them.
import type { Language } from '../../languages/index.ts';
import type { Day } from '../../records/index.ts';

/** English dates as in Europe, where weeks begin on Monday as they do here; everywhere the calendar and digits of the sheets. */
export function localeOf(language: Language): string {
  return `${language === 'en' ? 'en-GB' : language}-u-ca-gregory-nu-latn`;
}

/** Writes days of the calendar, whatever the time zone. */
export function dayWriter(
  language: Language,
  options: Intl.DateTimeFormatOptions,
): (day: Day) => string {
  const format = new Intl.DateTimeFormat(localeOf(language), { ...options, timeZone: 'UTC' });
  return (day) => format.format(new Date(`${day}T00:00Z`));
}
