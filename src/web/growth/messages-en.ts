// English messages of Growth, on the screen and in the printed report alike. {day} is a day of the calendar, {name} an
// activity's or a child's, {course} a step or what is known of one.

export const MESSAGES = {
  day: '{day}',
  looking: 'Looking through the records …',
  title: 'How {child} is getting on',
  noRecords:
    'Nothing is recorded of {child} yet. Once sheets are recorded, this page shows which steps fit, how that moves over the weeks, and what is mixed up.',
  recordFirst: 'Record a sheet',
  facts:
    '{sheets, plural, one {{sheets} sheet} other {{sheets} sheets}} on {days, plural, one {{days} day} other {{days} days}}, from {from} to {to}.',
  'facts.oneDay':
    '{sheets, plural, one {{sheets} sheet} other {{sheets} sheets}} on {days, plural, one {{days} day} other {{days} days}}, {to}.',
  'allSkills.unknown': 'All skills together: too few answers so far to say whether it moved.',
  'allSkills.unclear': 'All skills together: the answers so far do not tell whether it moved.',
  'allSkills.rising':
    'All skills together: more goes right than some weeks ago, or as much at harder sheets.',
  'allSkills.falling':
    'All skills together: less goes right than some weeks ago, or as much only at easier sheets. That can have many reasons.',
  // Of one skill; where nothing can be said, in few words, since it is so of most.
  'skillTrend.unknown': 'Whether it moved is not known yet.',
  'skillTrend.unclear': 'Whether it moved is not clear yet.',
  'skillTrend.rising': 'More goes right than some weeks ago, or as much at harder sheets.',
  'skillTrend.falling':
    'Less goes right than some weeks ago, or as much only at easier sheets. That can have many reasons.',
  unread:
    '{count, plural, =1 {One record has a code that this version cannot read. It is left out here.} other {{count} records have codes that this version cannot read. They are left out here.}}',
  notMet: 'No sheet of this skill is recorded yet.',
  fitsNow: 'Fits now',
  guide: 'step\u00a0{step}',
  stepOf: 'step\u00a0{step} of\u00a0{steps}',
  // How sure it is which step fits.
  'sure.unknown': 'how far is not known well yet',
  'sure.one': 'probably step\u00a0{least}',
  'sure.orEasier': 'probably step\u00a0{most} or easier',
  'sure.orHarder': 'probably step\u00a0{least} or harder',
  'sure.between': 'probably between step\u00a0{least} and step\u00a0{most}',
  fittingStep: '{name}, {step}',
  fittingLine: '{name}: {step}, {sure}.',
  skillAbout: '{about}.',
  noCourse: 'How it moves is drawn once such sheets are recorded on a second day.',
  course:
    '{skill} from {from} to {to}, in steps of {name}: {first} fitted at first, {last} fits now, {sure}.',
  measured: 'The marks are steps of “{name}”.',
  harder: 'harder',
  easier: 'easier',
  asTable: 'Show as table',
  asTableOf: 'Show as table: {skill}',
  tableOf: '{skill}, week by week, in steps of {name}',
  week: 'Up to',
  sheets: 'Sheets',
  fitted: 'Step that fits',
  sure: 'How sure',
  mixedUp: 'Mixed up',
  nothingMixedUp:
    'Nothing was noted in the last half year. Where you note in Record what was chosen instead of the right one, the pairs that are mixed up come to stand here.',
  mixedUpFacts:
    'How often one was chosen instead of the other in the last half year, of how often it could have been. Why, the counts do not say.',
  pairs: 'Pairs that were mixed up',
  pair: 'Pair',
  howOften: 'How often',
  pairName: '{one} with {other}',
  pairCounts:
    '{times, plural, one {{times} time} other {{times} times}} out of {chances, plural, one {{chances} chance} other {{chances} chances}}',
  confused: 'more often than by chance',
  seldom:
    '{count, plural, one {{count} pair was} other {{count} pairs were}} mixed up once or twice',
  worthALook: 'Worth a look',
  'watches.colours':
    'Two colours are taken for each other more often than by chance; they are marked under “Mixed up”. At three and four this is common, and it says nothing about the eyes. If you wonder about colour sight, an eye-care professional can check it.',
  'watches.pair':
    'Two things are taken for each other more often than by chance; they are marked under “Mixed up”. This is common while such things are new, and it does not say why. If you worry about how the child sees or develops, an eye-care or child-development professional can look.',
  'watches.falling':
    'Over the last weeks clearly less goes right than before. Tiredness, illness, a change at home or sheets that do not suit can all do that. If it lasts and you worry, speak with a child-development or eye-care professional.',
  care: 'This is play and practice, not a test. What fits is worked out from the sheets recorded here alone, by rules that are still provisional. It gives no age, compares the child with nobody, and is no diagnosis.',
  'report.heading': 'A report on paper',
  'report.about':
    'For the other parent, the nursery or the school: what stands here with its cautions, on one or two pages, with room for a remark.',
  // With a control for the paper, and one for whether notes are in it.
  'report.sentence': 'On {paper}.',
  'report.sentence.notes': 'On {paper}, {notes}.',
  'report.paper': 'Paper',
  'report.withNotes': 'Your notes',
  'report.notes.true': 'with your notes',
  'report.notes.false': 'without your notes',
  'report.lookThrough': 'Look through the notes before you pass them on.',
  'report.nothing': 'Nothing is recorded yet.',
  'report.written': 'Written on {day}.',
  'report.howToRead': 'Of each skill the steps of its sheets that fit now are named.',
  'report.drawings':
    'In the drawings the line is what fitted best, week by week; the pale band is where it probably lies, nine times in ten.',
  'report.notMet': 'Not met yet',
  'report.notMetOf': '{skills}.',
  'report.pairsOf': 'Of {all} pairs these are the most telling.',
  'report.morePairs': 'There was no room for further pairs.',
  'report.pairRow': '{pair}: {counts}',
  'report.pairRow.confused': '{pair}: {counts}, more often than by chance',
  'report.notesHeading': 'Notes',
  'report.note': '{day}: {note}',
  'report.moreNotes': 'There was no room for further notes.',
  'report.care': 'What this is, and what it is not',
  'report.careFurther':
    'Colours or letters that are mixed up at three or four prove nothing. If you worry about how a child sees or develops, ask an eye-care or child-development professional.',
  'report.remarks': 'Remarks',
  'report.field.date': 'Date',
  'report.field.signature': 'Signature',
  'report.foot': '{child} · {day} · Samewise',
  'report.page': '{page} of {pages}',
  'report.lacking':
    'Where an underline stands, letters are missing that the font of this page does not have. Please write them in by hand.',
} as const;
