// English messages of Week. {day}, {date} and {weekday} are written as the language has them, {sheet} is a sheet's name.

export const MESSAGES = {
  // Where there is no child yet.
  firstVisit:
    'Sheets for each day of a week, for one child or a whole group, planned in one go and printed together.',
  weekOf: 'Week of {date}',
  before: 'Week before',
  after: 'Week after',
  backToNow: 'Back to this week',
  wanted: 'What to plan for',
  summary:
    'For {children}, {days}, {minutes, plural, one {about {minutes}\u00a0minute} other {about {minutes}\u00a0minutes}} a day',
  // Names of children where there are more than three.
  namesAndMore: '{first}, {second} and {more} more',
  daysInRow: '{first} to {last}',
  children: 'Children',
  all: 'All children',
  only: 'Only {child}',
  weekdays: 'Days',
  favoured: 'More of',
  favouredHelp: 'Every other sheet is of these. Each other skill still comes where there is room.',
  noChildChosen: 'Choose whom to plan for.',
  noDayLeft: 'None of these days is left in this week. Go on to the week after, or choose others.',
  plan: 'Plan the week',
  planFor: 'Plan the week for {children}',
  planAnew: 'Plan anew',
  anewHelp: 'From today on; what is done stays. You can take it back.',
  planning:
    '{total, plural, =1 {Planning for {child} …} other {Planning for {child}, {place} of {total} …}}',
  stop: 'Stop',
  planned:
    'Planned for {children}: {sheets, plural, one {{sheets} sheet} other {{sheets} sheets}}.',
  notKept:
    'This is on the screen, but could not be kept yet. {objection} Nothing of it is lost while this page is open.',
  calendar: 'The plan',
  child: 'Child',
  childBefore: 'Child before',
  childAfter: 'Next child',
  reading: 'Looking …',
  // A day, a date or a weekday by itself.
  day: '{day}',
  longDay: '{weekday} {date}',
  today: 'today',
  todayMarked: ' · today',
  listOf: '{child}, {weekday} {date}',
  nothing: 'Nothing planned',
  nothingWas: 'Nothing was planned',
  notPlannedYet: 'Nothing is planned for this week yet.',
  sheet: 'step\u00a0{step}\u00a0· {content}\u00a0· about\u00a0{minutes}\u00a0min',
  done: 'done',
  notDone: 'not done',
  movesOn: 'moves on to {weekday} {date}',
  movesOnToday: 'moves on to today',
  twice: 'the same activity as just before',
  more: '{sheet}: why, and where to, {weekday}',
  facts:
    'Step {step} of {steps}, {content}, {tasks, plural, one {{tasks} task} other {{tasks} tasks}}.',
  layOut: 'Lay out: {things}.',
  code: 'Sheet code',
  moveTo: 'Move to',
  moveToDay: 'Move to {weekday}',
  moveToToday: 'Move to today',
  onTheDay: 'On the day',
  earlier: 'Earlier',
  later: 'Later',
  takeOut: 'Take out',
  moved: '{sheet} is on {weekday} now.',
  movedInDay:
    '{place, plural, =1 {{sheet} comes first of what is left on that day.} other {{sheet} comes as number {place} of what is left on that day.}}',
  takenOut: '{sheet} is taken out of {weekday}.',
  onPaper: 'On paper',
  // With a control for which days, and one for the order.
  print:
    'Print {what}, {order}: {sheets, plural, one {{sheets} sheet} other {{sheets} sheets}} not done yet.',
  'print.what': 'Which days',
  'print.order': 'In which order',
  'print.week': 'the whole week',
  'orders.by-child': 'by child, then by day',
  'orders.by-day': 'by day, then by child',
  // Names of files; {monday} and {day} such as 2027-03-01.
  'file.week': '{who} week of {monday}',
  'file.day': '{who} {day}',
  'file.children': '{count, plural, one {{count} child} other {{count} children}}',
} as const;
