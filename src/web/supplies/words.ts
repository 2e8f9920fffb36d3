// What Supplies says; fetched with it.
import type { Printer, Tool } from '../../records/index.ts';
import { TOOL_NAMES } from '../planning/words.ts';

const PRINTER_NAMES: Readonly<Record<Printer, string>> = {
  colour: 'in colour',
  grey: 'in grey',
  none: 'none',
};

const LONG_DAY = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' });

export const words = {
  title: 'What is in the house',
  about:
    'Count once what there is. Each sheet that is recorded takes its stickers from here, and taking a record back puts them back. Plans keep to what there is; Make, Today and Week show what sheets take of it.',
  neverCounted: 'Nothing is counted yet.',
  counted: (at: number, given: number) =>
    `Counted on ${LONG_DAY.format(new Date(at))}${given === 0 ? '' : `; ${given === 1 ? 'one sheet was' : `${given} sheets were`} recorded since`}.`,
  looking: 'Looking through the records …',
  stickers: 'Round stickers',
  noStickers: 'None yet.',
  colour: 'Colour',
  diameter: 'Across, in mm',
  count: 'How many',
  row: (number: number) => `Stickers, row ${number}`,
  addRow: 'Add stickers',
  remove: 'Take out',
  removeRow: (number: number) => `Take out row ${number}`,
  crayons: 'Crayons or pens',
  tools: 'Other things',
  toolNames: TOOL_NAMES satisfies Readonly<Record<Tool, string>>,
  care: 'Small counters are small parts: not for children under three, who may choke on them. Stay beside a child who cuts. The rules of your country come first.',
  printer: 'Printer',
  printers: PRINTER_NAMES,
  save: 'Save the count',
  saved: 'The count is saved.',
  wrongNumber: (number: number) =>
    `Row ${number}: write whole numbers, 1 to 100 mm across and 0 to 100 000 stickers.`,
} as const;
