// English messages of Supplies.

export const MESSAGES = {
  title: 'What is in the house',
  about:
    'Count once what there is. Each sheet that is recorded takes its stickers from here, and taking a record back puts them back. Plans keep to what there is; Make, Today and Week show what sheets take of it.',
  neverCounted: 'Nothing is counted yet.',
  counted:
    '{given, plural, =0 {Counted on {day}.} =1 {Counted on {day}; one sheet was recorded since.} other {Counted on {day}; {given} sheets were recorded since.}}',
  looking: 'Looking through the records …',
  stickers: 'Round stickers',
  noStickers: 'None yet.',
  colour: 'Colour',
  diameter: 'Across, in mm',
  count: 'How many',
  row: 'Stickers, row {number}',
  addRow: 'Add stickers',
  remove: 'Take out',
  removeRow: 'Take out row {number}',
  crayons: 'Crayons or pens',
  tools: 'Other things',
  care: 'Small counters are small parts: not for children under three, who may choke on them. Stay beside a child who cuts. The rules of your country come first.',
  printer: 'Printer',
  printerHelp:
    'In grey, colours carry letters. Without a printer, Make tells how sheets are made by hand.',
  'printers.colour': 'in colour',
  'printers.grey': 'in grey',
  'printers.none': 'none',
  papers: 'Paper',
  papersHelp:
    'Where one is chosen, plans are for that paper, and packs say when theirs is missing. None chosen: any.',
  'paperNames.A4': 'A4',
  'paperNames.Letter': 'US Letter',
  'paperNames.A3': 'A3',
  'paperNames.A5': 'A5',
  save: 'Save the count',
  saved: 'The count is saved.',
  wrongNumber: 'Row {number}: write whole numbers, 1 to 100 mm across and 0 to 100 000 stickers.',
} as const;
