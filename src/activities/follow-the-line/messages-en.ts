// English messages of follow-the-line.

export const MESSAGES = {
  name: 'follow the line',
  about: 'Follows a winding line with the eyes from start to end, across other lines.',
  'steps.1': 'two lines in two colours wind side by side',
  'steps.2': 'the two lines cross once',
  'steps.3': 'two lines become three',
  'steps.4': 'one crossing becomes two',
  'steps.5': 'all lines are in one ink',
  'steps.6': 'two crossings become four',
  'steps.7': 'three lines become four',
  'steps.8': 'four crossings become six',
  'steps.9': 'four lines become five',
  'steps.10': 'following with a finger becomes drawing along the line',
  'steps.11': 'six crossings become eight',
  'steps.12': 'eight crossings become ten',
  'steps.13': 'five lines become six',
  'steps.14': 'ten crossings become thirteen',
  'set.content.label': 'Lines start from',
  'set.content.help': 'What stands where the lines start, and tells one start from another.',
  'set.response.label': 'The child',
  'set.response.help':
    'What the child does. To point or to draw, each line leads to something; for stickers and colouring in, to an empty circle. Stickers go with coloured dots only.',
  'set.response.point': 'follows with a finger and tells',
  'set.response.trace': 'draws along each line',
  'set.response.sticker': 'puts a sticker at the end',
  'set.response.colour-in': 'colours in the end',
  'set.lines.label': 'Lines',
  'set.lines.help': 'How many lines there are to follow.',
  'set.crossings.label': 'Crossings',
  'set.crossings.help': 'How often two lines cross in all. They always cross at a clear angle.',
  'set.lineColours.label': 'Lines are',
  'set.lineColours.help':
    'Lines in colours of their own are easy to keep apart. In grey print all are in ink.',
  'set.lineColours.own': 'each in its own colour',
  'set.lineColours.ink': 'all in one ink',
  'set.direction.label': 'Lines run',
  'set.direction.help':
    '{reading, select, leftward {Whether the lines start at the right or at the top; those to an empty circle start at the left, away from the hand. For the left hand, they always run down.} other {Whether the lines start at the left or at the top. For the left hand, lines to an empty circle always run down.}}',
  'set.direction.across':
    '{reading, select, leftward {from side to side} other {from left to right}}',
  'set.direction.down': 'from top to bottom',
  'set.stickerMm.label': 'Sticker size',
  'set.stickerMm.help': 'How wide the dots and empty circles are where the child puts stickers.',
  'say.where': 'Where does each line lead?',
  'say.point': 'Follow each line with your finger and tell me what it leads to.',
  'say.trace': 'Draw along each line to where it ends.',
  'say.sticker': 'Put a sticker of the same colour where its line ends.',
  'say.colour-in': 'Colour in the circle where its line ends, in the same colour.',
  show: 'Put a finger on the first start and go slowly along its line. Where another line crosses, say: we go straight on.',
  'help.1': 'Go along with your finger just ahead of the child’s, and stop before each crossing.',
  easier: 'Draw over one line with a bright crayon, and let the child follow that one.',
  harder:
    'Let the child follow with the eyes alone, say where it ends, and then go along with a finger.',
  'lookFor.1': 'Changing to another line comes from turning off where lines cross.',
  'lookFor.2': 'Jumping to the nearest end may mean that the line was not followed at all.',
  'describe.lines':
    '{count, plural, one {{number} line} other {{number} lines}} wind from one side to the other.',
  'describe.starts':
    '{direction, select, down {{reading, select, leftward {They start at the top, from right to left, from: {names}.} other {They start at the top, from left to right, from: {names}.}}} other {{reading, select, leftward {They start at the right, from top to bottom, from: {names}.} other {They start at the left, from top to bottom, from: {names}.}}}}',
  'describe.ends':
    '{direction, select, down {{reading, select, leftward {They end at the bottom, from right to left, at: {names}.} other {They end at the bottom, from left to right, at: {names}.}}} other {{reading, select, leftward {They end at the left, from top to bottom, at: {names}.} other {They end at the right, from top to bottom, at: {names}.}}}}',
  'describe.circles':
    '{direction, select, down {They end at the bottom at empty circles.} other {{reading, select, leftward {They end at the left at empty circles.} other {They end at the right at empty circles.}}}}',
  'answer.circle':
    '{direction, select, down {{reading, select, leftward {the {ordinal} circle from the right} other {the {ordinal} circle from the left}}} other {the {ordinal} circle from the top}}',
  'answer.line': '{start} to {end}',
  answer: 'The lines lead from {lines}.',
} as const;
