// What Supplies says; fetched with it.
import type { PaperName } from '../../page/index.ts';
import type { Printer } from '../../records/index.ts';
import { localeOf } from '../speaking/dates.ts';
import { spoken } from '../speaking/spoken.ts';
import { MESSAGES } from './messages-en.ts';

export const words = spoken('app/supplies', MESSAGES, ({ say, plain, under, language }) => {
  const longDay = new Intl.DateTimeFormat(localeOf(language), { dateStyle: 'long' });
  return {
    ...plain,
    counted: (at: number, given: number) =>
      say('counted', { day: longDay.format(new Date(at)), given }),
    row: (number: number) => say('row', { number }),
    removeRow: (number: number) => say('removeRow', { number }),
    printers: under('printers') satisfies Readonly<Record<Printer, string>>,
    paperNames: under('paperNames') satisfies Readonly<Record<PaperName, string>>,
    wrongNumber: (number: number) => say('wrongNumber', { number }),
  };
});
