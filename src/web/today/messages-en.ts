// English messages of Today. {sheet} is the name of an activity with a capital letter, {child} a child's.

export const MESSAGES = {
  today: 'Today for {child}',
  // Where there is no child yet.
  firstVisit:
    'Each day two to four sheets that suit your child, each with the reason why it was chosen.',
  day: '{day}',
  looking: 'Looking for what suits {child} …',
  minutes:
    '{minutes, plural, one {about {minutes}\u00a0minute} other {about {minutes}\u00a0minutes}}',
  tasks: '{tasks, plural, one {{tasks} task} other {{tasks} tasks}}',
  'sum.all': '{sheets, plural, one {{sheets} sheet} other {{sheets} sheets}}, {minutes}.',
  'sum.left':
    '{left} of {sheets, plural, one {{sheets} sheet} other {{sheets} sheets}} left, {minutes}.',
  'sum.done':
    '{sheets, plural, one {{sheets} sheet} other {{sheets} sheets}}, and all of it is done.',
  sheets: 'Sheets of the day',
  picture: 'Picture of the sheet: {name}',
  about: 'with {content}\u00a0· step\u00a0{step}\u00a0of\u00a0{steps}',
  'about.left':
    'with {content}\u00a0· step\u00a0{step}\u00a0of\u00a0{steps} · for the left\u00a0hand',
  size: '{minutes} · {tasks}',
  layOutFor: 'Lay out {things}.',
  done: 'Done',
  seeRecord: 'See it in Record',
  record: 'Record how it went',
  of: '{what}: {name}',
  change: 'Change',
  changing: 'Changing …',
  'changes.something-else': 'Something else',
  'changes.easier': 'Easier',
  'changes.harder': 'Harder',
  'changes.earlier': 'Give it earlier',
  'changes.later': 'Give it later',
  'changes.not-today': 'Not today',
  'changed.something-else': '“{sheet}” takes the place of “{before}”.',
  'changed.easier': '“{sheet}”, one notch easier.',
  'changed.harder': '“{sheet}”, one notch harder.',
  noOther: 'Nothing else suits now. More may suit with other wishes, or once more is recorded.',
  'moved.earlier': '“{sheet}” comes earlier.',
  'moved.later': '“{sheet}” comes later.',
  takenOut: '“{sheet}” is taken out of today.',
  putOff: '“{sheet}” is put off again, and planned for tomorrow.',
  notKept: 'The plan could not be kept. {reason}',
  forTheDay: 'For the whole day',
  layOut: 'Lay out',
  lacking: 'By the last count of your supplies you lack {things}.',
  another: 'Another plan for today',
  anotherMade: 'Another plan for today.',
  noOtherPlan: 'There is no other plan that suits now. More may suit with other wishes.',
  keptStands:
    'This plan is kept, so it stands as it is. “Another plan for today” follows the wishes.',
  nothingLeft: 'Nothing is planned for today any more.',
  // {wishes} is the heading of the wishes for plans.
  'nothingSuits.things':
    'No sheet suits {child} with {things} in the house. More can be chosen under “{wishes}”.',
  'nothingSuits.things.grey':
    'No sheet suits {child} printed in grey with {things} in the house. More can be chosen under “{wishes}”.',
  'nothingSuits.nothing':
    'No sheet suits {child} with nothing in the house. More can be chosen under “{wishes}”.',
  'nothingSuits.nothing.grey':
    'No sheet suits {child} printed in grey with nothing in the house. More can be chosen under “{wishes}”.',
  'nothingSuits.grey':
    'No sheet printed in grey suits {child}. Colour can be chosen under “{wishes}”.',
  'nothingSuits.child':
    'No sheet suits what is recorded of {child}. What the hand does well and the colour vision can be changed in Record.',
} as const;
