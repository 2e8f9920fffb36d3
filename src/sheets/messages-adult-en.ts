// English messages of the adult's page. {steps} and {numbers} are numbers such as `1–3, 7`, {count} how many steps.

export const MESSAGES = {
  title: 'For the adult',
  continued: 'For the adult, continued',
  'pack.part':
    '{sheets, plural, one {{sheets} sheet} other {{sheets} sheets}} of “{activity}”, {count, plural, one {step} other {steps}} {steps}',
  'pack.parts': '{parts}.',
  'pack.many':
    '{sheets, plural, one {{sheets} sheet} other {{sheets} sheets}} of {activities, plural, one {{activities} activity} other {{activities} activities}}.',
  layOut: 'Lay out',
  stickers: 'Stickers, {diameterMm}\u00a0mm across:',
  // Beside a dot of the colour.
  'stickers.entry': '{count} {colour}',
  // In grey print: which letter on the figures stands for which colour.
  marks: 'Letters stand for colours: {marks}.',
  'marks.entry': '{colour} ({mark})',
  crayons: '{count, plural, one {a {colours} crayon} other {crayons: {colours}}}',
  pencil: 'a pencil',
  scissors: 'scissors for children, with round ends; stay beside the child, or cut out yourself',
  glue: 'a glue stick for paper',
  counters: 'small counters in the colours of the sheet; not for children under three',
  pockets: 'a wipe-clean pocket, a pen that wipes off and a cloth',
  nothing: 'nothing: the child points',
  // For one kind of sheet of several, in a row with others.
  'brief.stickers': 'stickers, {diameterMm}\u00a0mm: {stickers}',
  'brief.pencil': 'a pencil',
  'brief.scissors': 'scissors',
  'brief.glue': 'glue',
  'brief.counters': 'counters',
  'brief.pockets': 'a wipe-clean pocket',
  'brief.nothing': 'nothing',
  start: 'To start',
  part: '“{activity}”, {count, plural, one {step} other {steps}} {steps} ({sheets, plural, one {sheet} other {sheets}} {numbers})',
  takes: 'Takes',
  // How long one of {sheets} takes.
  'minutes.same':
    '{sheets, plural, one {about {minutes, plural, one {{minutes} minute} other {{minutes} minutes}}} other {about {minutes, plural, one {{minutes} minute} other {{minutes} minutes}} a sheet}}',
  'minutes.range':
    '{sheets, plural, one {about {least} to {most} minutes} other {about {least} to {most} minutes a sheet}}',
  // {time} is one of those above; of the ages that the steps are a first guess for.
  'minutes.age': '{time}, for a child of about {least}',
  'minutes.ages': '{time}, for children of about {least} to {most}',
  say: 'Say',
  'say.words': '“{words}”',
  show: 'Show',
  'show.one': 'On sheet {sheet}: {how}',
  helpHere: 'Help',
  easier: 'Easier',
  harder: 'Harder',
  lookFor: 'Look for',
  help: 'Help, from least to most',
  'ladder.1': 'Wait a little, then say it again.',
  'ladder.2': 'Point out where to look, or cover the rest.',
  'ladder.3': 'Show how on another task.',
  'ladder.4': 'Do one together.',
  'ladder.5': 'Lead the hand only if the child wants it.',
  stop: 'When to stop',
  'stop.1':
    'Stop while it is fun, and when the child looks away, guesses or gets cross. What is left can wait for another day.',
  'stop.2':
    'Most children of five attend for 5 to 10\u00a0minutes (CDC, “Learn the Signs”, 2022). For younger ones no figure has been published: go by the child.',
  size: 'True size',
  'size.line': '50 mm',
  'size.check':
    'Lay a ruler along this line. If it is not 50\u00a0mm long, print again on {paper} paper at 100\u00a0% (“actual size”, not “fit to page”); otherwise stickers will not fit their dots.',
  'size.halves':
    'Where two sheets share a page, cut along the dashed line. Then lay the left or upper pile on the other: they lie in order.',
  cut: 'To cut out',
  'cut.cards':
    'Cards: one task each. Lay each at a place of its own; its code and number tell where it belongs.',
  'cut.key-card': 'Key card: lay it beside the sheet, on the side of the hand that does not work.',
  'cut.pieces':
    'Pieces: the child cuts them out one at a time and sticks each in its empty place, instead of what else the sheet asks the hand to do. A slip spoils one piece only. A short line on a piece is at its foot.',
  'cut.always.1': 'Print on one side of the paper only: what is on the back would be cut as well.',
  'cut.always.2': 'Cut pieces are small: keep them from children under three.',
  'cut.both':
    'Where pieces stand on the sheet itself as well, use those of the page to cut, which have more room round them. The others are spare.',
  pocket: 'In a wipe-clean pocket',
  'pocket.write':
    'Slide the sheet in. The child writes on the pocket, with a pen that wipes off in place of crayons and pencil. Try on an edge first that it does.',
  'pocket.stickers':
    'Stickers would be used up: let the child draw dots in their colours instead, or peel them off again.',
  'pocket.pieces': 'Pieces to cut are laid in place on the pocket, without glue.',
  'pocket.cut': 'Where pieces stand on the sheet itself, print it twice, and cut one of the two.',
  'pocket.fold': 'The paper is not folded there: cover its upper part with another sheet.',
  care: 'Take care',
  'care.1':
    'Stay beside a child who works with stickers or scissors, and keep what is left over out of reach.',
  'care.2':
    'If you use counters, buttons or beads instead: they are small parts and not for children under three, who may choke on them (16 CFR 1501 in the United States, EN 71-1 in Europe).',
  'care.3':
    'This is play and practice. It is no test and no diagnosis. Stop while it is still fun.',
  'care.4':
    'Colours mixed up at three or four prove nothing. If you worry about how a child sees or develops, ask an eye-care or child-development professional.',
  'care.5': 'The rules of your country, school or nursery come first.',
  sheets: 'The sheets',
  'sheets.more':
    'and {count, plural, one {{count} more sheet} other {{count} more sheets}}, each with its code at the foot.',
  // Of {tasks} tasks {proven} were proven; {doubts} are left.
  proof:
    '{doubts, plural, =0 {{tasks, plural, =1 {The task of this pack was proven} other {All {tasks} tasks of this pack were proven}}} other {{proven, plural, =0 {None of the {tasks} tasks of this pack were proven} other {{proven} of the {tasks} tasks of this pack were proven}}}}: a solver that reads only what is printed found the answer in the key, and no other. A sheet is made again from the code at its foot.',
  doubts: 'Changed, and not certain',
  // Then sentences that say why.
  'doubt.why': '{before} {next}',
  'doubt.several': 'Sheet {sheet}: task {task} has more than one answer.',
  'doubt.none': 'Sheet {sheet}: task {task} has no answer.',
  'doubt.unfit': 'Sheet {sheet}: task {task} breaks a rule of its activity.',
} as const;
