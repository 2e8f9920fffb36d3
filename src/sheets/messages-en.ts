// English messages of the pages that go round the tasks, but for the adult's page: foot, answers, marking, pages to cut,
// the page that checks a printer. {steps} are numbers such as `1–3, 7`, {count} how many they are.

export const MESSAGES = {
  'foot.name': 'Name',
  'foot.date': 'Date',
  'foot.qr': 'The sheet code as a QR code',
  // Below the beginning of a code.
  'foot.inFile': 'The whole code is too long to print: it is in the pack file.',
  about: '{activity} · step {step}',
  'about.changed': '{activity} · step {step} · changed',
  'title.sheet': '{activity}, step {step}, sheet {code}',
  'title.document': 'Samewise: {parts}',
  // Some sheets of an activity.
  part: '“{activity}”, {count, plural, one {step} other {steps}} {steps}',
  answers: '{pages, plural, =1 {Answers} other {Answers, page {page} of {pages}}}',
  'answers.label': '{number} · {activity} · step {step}',
  'marking.title': 'The group',
  'marking.how':
    'Write how many were right without help. Sheets in a column differ; those of one step are equally hard.',
  'marking.page': '{pages, plural, =1 {The group} other {The group, page {page} of {pages}}}',
  'marking.column': '{number} · {activity}, {count, plural, one {step} other {steps}} {steps}',
  // Out of how many tasks, small in a cell with room to write before it.
  'marking.outOf': 'of {tasks}',
  'cut.cards': 'The tasks of sheet {code} as cards. Print on one side only.',
  'cut.cards.title': 'Cards of sheet {code}',
  'cut.key': 'Cut out and lay beside sheet {code}. Print on one side only.',
  'cut.key.title': 'Key of sheet {code}',
  'cut.key.alt': 'what to look back at, as on the sheet',
  'cut.pieces': 'Pieces for sheet {code}. Print on one side only.',
  'cut.pieces.title': 'Pieces for sheet {code}',
  'cut.page': '{page} of {pages}',
  'ruler.title': 'Check your printer',
  'ruler.about':
    'Stickers fit their dots only if a page comes out at true size. These two lines show whether it does.',
  'ruler.steps.1': 'Print this page at 100\u00a0% (“actual size”), not “fit to page”.',
  'ruler.steps.2':
    'Measure both lines with a ruler, from the middle of one end mark to the middle of the other. Each should be 50\u00a0mm long.',
  'ruler.steps.3': '49.5 to 50.5\u00a0mm is true size: you are done.',
  'ruler.steps.4': 'If not, look for the scale in the print window, and print this page once more.',
  'ruler.steps.5':
    'If a line is still too long or too short, type in what it measures where you got this page. Sheets are then made larger or smaller for this printer. If the two lines differ, type what lies between.',
  'ruler.across': 'Across: 50 mm',
  'ruler.upright': 'Upright: 50 mm',
  // {line} is a line to write on.
  'ruler.measured': 'It measures {line} mm',
} as const;
