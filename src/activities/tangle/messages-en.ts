// English messages of tangle.

export const MESSAGES = {
  name: 'tangle',
  about: 'Sees each outline for itself where several lie over one another.',
  'steps.1': 'two shapes lie a little over one another, and one of three is not there',
  'steps.2': 'two of those to choose from are not there',
  'steps.3': 'the shapes lie half over one another',
  'steps.4': 'two shapes in the tangle become three',
  'steps.5': 'pointing becomes drawing rings',
  'steps.6': 'three of those to choose from are not there',
  'steps.7': 'the shapes lie much over one another',
  'steps.8': 'three shapes in the tangle become four',
  'steps.9': 'four of those to choose from are not there',
  'steps.10': 'four shapes in the tangle become five',
  'steps.11': 'five shapes in the tangle become six',
  'set.content.label': 'Look at',
  'set.content.help':
    'Which outlines lie over one another. Of letters and numerals only a few have lines that are not found in each other.',
  'set.response.label': 'The child',
  'set.response.help': 'What the child does with those below that are in the tangle.',
  'set.response.point': 'points to them',
  'set.response.ring': 'draws rings round them',
  'set.response.colour-in': 'colours them in',
  'set.shown.label': 'In the tangle',
  'set.shown.help': 'How many outlines lie over one another.',
  'set.absent.label': 'Not in the tangle',
  'set.absent.help':
    'How many of those to choose from are not there, not even made up of parts of others.',
  'set.overlap.label': 'How close',
  'set.overlap.help': 'How far the outlines lie over one another. All lines can be seen.',
  'set.overlap.little': 'a little over one another',
  'set.overlap.half': 'half over one another',
  'set.overlap.much': 'much over one another',
  'say.look': 'Look at the tangle of lines.',
  'say.which': 'Which of those below are in it, just as big?',
  'say.point': 'Put your finger on each one that you find.',
  'say.ring': 'Draw a ring round each one that you find.',
  'say.colour-in': 'Colour in each one that you find.',
  show: 'Take the first one below, go round it with a finger, and then look for the same line in the tangle and go round it there. Say also of one that is not there: I cannot find it.',
  'help.1': 'Go slowly round one outline in the tangle, and ask which of those below it is.',
  easier: 'Draw over each outline of the tangle in a colour of its own.',
  harder: 'Ask how many are in the tangle before you look at those below.',
  'lookFor.1':
    'Saying yes to one that is not there may come from pieces of other lines that look like it.',
  'lookFor.2':
    'Turning off where lines cross makes shapes that are not there: go on along the same line.',
  'describe.tangle':
    '{count, plural, one {{number} outline} other {{number} outlines}} lie over one another.',
  'describe.choices': 'To choose from: {names}.',
  'describe.choice': '{place} {name}',
  answer: 'In the tangle: {names}.',
  // Why a task is unfit; {place}, {box} and the like are numbers.
  'fault.one-outline': 'there is only one outline, so nothing is tangled',
  'fault.all-in': 'all to choose from are in the tangle',
  'fault.not-offered': 'an outline of the tangle is not among those to choose from',
  'fault.choices-alike': 'two to choose from cannot be told apart',
  'fault.outlines-alike': 'two outlines of the tangle cannot be told apart',
  'fault.about-middle': 'an outline lies about the middle of another',
  // Why something cannot be asked for, in brackets behind what was expected.
  'no.directions':
    'of directions without left and right no more than {most} can be kept from being found in each other',
  'no.outlines': 'of {content} no more than {most} can be kept from being found in each other',
} as const;
