// English messages of what-changed.

export const MESSAGES = {
  name: 'what has changed',
  about: 'Compares two pictures place by place and finds what is different in the second.',
  'steps.1': 'four figures in colours, of which one is gone',
  'steps.2': 'one figure has become another',
  'steps.3': 'four figures become six',
  'steps.4': 'pointing becomes drawing a ring',
  'steps.5': 'one change becomes two',
  'steps.6': 'the figures stand a little out of line',
  'steps.7': 'six figures become eight',
  'steps.8': 'the colour may change instead of the shape',
  'steps.9': 'changed figures are rather like what they were',
  'steps.10': 'two changes become three',
  'steps.11': 'the size may change as well',
  'steps.12': 'eight figures become ten',
  'set.content.label': 'Look at',
  'set.content.help': 'What the figures of a picture differ in, and what can change.',
  'set.response.label': 'The child',
  'set.response.help': 'What the child does with each change, in the second picture.',
  'set.response.point': 'points to it',
  'set.response.ring': 'draws a ring round it',
  'set.response.cross': 'crosses it out',
  'set.kind.label': 'What happens',
  'set.kind.help':
    'What is different in the second picture. Changes of places are asked for by that name, so that nobody counts two places as one.',
  'set.kind.gone': 'figures go',
  'set.kind.added': 'figures come',
  'set.kind.first': 'figures change in the first thing to look at',
  'set.kind.any': 'figures change in any one thing to look at',
  'set.kind.mixed': 'figures change, go or come',
  'set.kind.swapped': 'two figures change places',
  'set.figures.label': 'Figures',
  'set.figures.help': 'How many figures the fuller picture has.',
  'set.changes.label': 'Changes',
  'set.changes.help': 'How many places are different. The child is told the number.',
  'set.likeness.label': 'How like they are',
  'set.likeness.help':
    'Whether a changed figure is quite unlike what it was, or rather like it, always far enough to be told apart.',
  'set.likeness.far': 'quite unlike',
  'set.likeness.near': 'rather like',
  'set.layout.label': 'Laid out',
  'set.layout.help': 'How the figures stand, the same in both pictures.',
  'set.layout.grid': 'in straight rows',
  'set.layout.loose': 'a little out of line',
  'say.look': 'Look at both pictures.',
  'say.swaps':
    '{pairs, plural, =1 {In the second picture two have changed places.} other {In the second picture {number} pairs have changed places.}}',
  'say.places':
    '{count, plural, one {The second picture is different in {number} place.} other {The second picture is different in {number} places.}}',
  'say.point':
    '{count, plural, one {Put your finger on it, in the second picture.} other {Put your finger on each of them.}}',
  'say.ring':
    '{count, plural, one {Draw a ring round it, in the second picture.} other {Draw a ring round each of them.}}',
  'say.cross':
    '{count, plural, one {Cross it out in the second picture.} other {Cross out each of them in the second picture.}}',
  show: 'Put one finger on a place in the first picture and one on the same place in the second, and ask: is it the same here and there? Go on like this from place to place; an empty place counts too.',
  'help.1': 'Cover all but one row, the same in both pictures, and go on row by row.',
  'help.2':
    'Say what is in a place of the first picture, and let the child say what is there in the second.',
  easier: 'Say in which row to look.',
  harder:
    'Let the child look well at the first picture, cover it, and say from memory what is different.',
  'lookFor.1':
    'Naming things in the second picture alone may mean that the two are not compared place by place.',
  'lookFor.2': 'An empty place is easily missed: ask what was there.',
  describe: 'The first picture, row by row: {first}. The second picture: {second}.',
  'describe.empty': 'an empty place',
  answer:
    '{count, plural, one {{number} place is different, counted along the rows: {places}.} other {{number} places are different, counted along the rows: {places}.}}',
  'answer.place': 'the {ordinal} (first {before}, then {after})',
  'answer.nothing': 'nothing',
  // Why a task is unfit; {place}, {box} and the like are numbers.
  'fault.places': 'the pictures do not have the same places',
  'fault.count': '{differing} places differ, but the child is told to find {asked}',
  'fault.half': 'more than half of the places differ',
  'fault.near': 'figures stand too near each other',
  'fault.too-little': 'place {place} differs too little to be seen',
  'fault.twofold': 'place {place} differs in two ways, which may be counted as two',
  'fault.moved': 'what left place {from} may be seen to have moved to place {to}',
  'fault.unpaired': 'not all that differs has changed places',
  // Why something cannot be asked for, in brackets behind what was expected.
  'no.half': 'at least half of the figures stay as they are, so that the others stand out',
  'no.one-change': 'one change cannot be of several kinds',
  'no.two': 'two must change places',
  'no.swapped': 'figures change places two and two',
} as const;
