// English messages of size-order.

export const MESSAGES = {
  name: 'smallest to biggest',
  about: 'Compares sizes, or how many dots there are, and finds the order they belong in.',
  'steps.1': 'the biggest of three is found',
  'steps.2': 'three become four',
  'steps.3': 'sizes come nearer to each other',
  'steps.4': 'colours differ as well and say nothing',
  'steps.5': 'all are brought into order, not the biggest alone',
  'steps.6': 'pointing becomes drawing lines to a row of places',
  'steps.7': 'the figures leave their ground line',
  'steps.8': 'four become five',
  'steps.9': 'sizes come as near to each other as is fair',
  'steps.10': 'shapes differ as well and say nothing',
  'set.content.label': 'Look at',
  'set.content.help':
    'What comes in sizes. Of letters, numerals, signs and pictures one is printed in several sizes. With dots the number counts and not the size. Colours and shapes that differ as well say nothing of the order.',
  'set.response.label': 'The child',
  'set.response.help':
    'What the child does. A ring is for one figure alone; dots, lines and scissors are for the whole order. Children cut out only with an adult beside them.',
  'set.response.point': 'points',
  'set.response.ring': 'draws a ring round it',
  'set.response.dots': 'numbers them with one dot, two dots and so on',
  'set.response.join': 'draws lines to a row of places that grow',
  'set.response.cut': 'cuts them out and sticks them in order',
  'set.asked.label': 'What to find',
  'set.asked.help':
    'One of them, or the whole order from the smallest to the biggest. For the one between, there are three or five.',
  'set.asked.biggest': 'the biggest',
  'set.asked.smallest': 'the smallest',
  'set.asked.middle': 'the one between',
  'set.asked.order': 'all in order',
  'set.figures.label': 'Figures',
  'set.figures.help': 'How many there are.',
  'set.difference.label': 'How far apart',
  'set.difference.help':
    'How much bigger each is than the next smaller one: always enough to be seen. The more there are, the less room there is for wide differences.',
  'set.difference.wide': 'wide',
  'set.difference.plain': 'plain',
  'set.difference.fine': 'fine',
  'set.layout.label': 'Laid out',
  'set.layout.help':
    'On one line heights can be compared at a glance; higher and lower they cannot. Cards to cut out and cards with dots have no ground line.',
  'set.layout.ground': 'on one line',
  'set.layout.loose': 'higher and lower',
} as const;
