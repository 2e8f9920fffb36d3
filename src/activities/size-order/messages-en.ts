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
  // {look} is what the order is by: dots or sizes. {asked} is biggest, smallest, middle or order.
  'say.biggest':
    '{look, select, dots {Which card has the most dots?} other {Which is the biggest?}}',
  'say.smallest':
    '{look, select, dots {Which card has the fewest dots?} other {Which is the smallest?}}',
  'say.middle':
    '{look, select, dots {Which card has more dots than {number} and fewer than {number}?} other {{count, plural, =1 {Which is bigger than one and smaller than the other?} other {Which is bigger than {number} of them and smaller than {number} of them?}}}}',
  'say.point': 'Put your finger on it.',
  'say.ring': 'Draw a ring round it.',
  'order.point':
    '{look, select, dots {Point to them one after the other, from the fewest dots to the most.} other {Point to them one after the other, from the smallest to the biggest.}}',
  'order.dots':
    '{look, select, dots {Put one dot in the box under the card with the fewest dots.} other {Put one dot in the box under the smallest.}}',
  'order.dots.next': 'Put two dots under the next, then three, and so on.',
  'order.join':
    '{look, select, dots {Find the fewest dots and draw a line from them to the smallest box.} other {Find the smallest and draw a line from it to the smallest box.}}',
  'order.join.next':
    '{look, select, dots {Go on from box to box, up to the most.} other {Go on from box to box, up to the biggest.}}',
  'order.cut': 'Cut them all out.',
  'order.cut.next':
    '{look, select, dots {Stick them in the frame, from the fewest dots to the most.} other {Stick them in the frame, from the smallest to the biggest.}}',
  show: '{look, select, dots {Look at two cards at a time and ask which has more dots; let the child tell at a glance or count, as it likes.} other {Look at two at a time and ask which is bigger; lay a finger across from the top of one to the other.}}',
  'show.order': 'Find the first together, cover it, and look for the first of those that are left.',
  'help.1':
    '{look, select, dots {Cover all but two, and ask which has more.} other {Cover all but two, and ask which is bigger.}}',
  'help.2':
    '{look, select, dots {Touch one dot here and one dot there together, until one card has none left.} other {Mark the height of one on a strip of paper, and hold the strip against the next.}}',
  easier:
    '{asked, select, order {Cover one or two in between, and let the child only point to the others in order.} other {Cover those that come nearest to the one you ask for.}}',
  harder:
    '{asked, select, order {Ask for the order the other way round as well.} other {Ask which one comes next, and which after that.}}',
  'lookFor.1':
    '{look, select, dots {Dots that lie far apart may be taken for more.} other {The brightest, or the one nearest to hand, may be taken for the biggest.}}',
  'lookFor.2':
    '{asked, select, order {If only neighbours are in order, look together for the first of all that are left.} other {The first that seems right may be taken before all were compared.}}',
  'describe.cards':
    '{count, plural, one {{number} card.} other {{number} cards, each with another number of dots.}}',
  'describe.one-name':
    '{reading, select, leftward {From right to left, each in another size: {number} times {name}.} other {From left to right, each in another size: {number} times {name}.}}',
  'describe.names':
    '{reading, select, leftward {From right to left, each in another size: {names}.} other {From left to right, each in another size: {names}.}}',
  'answer.order':
    '{look, select, dots {{reading, select, leftward {From the fewest dots to the most, counted from the right: {places}.} other {From the fewest dots to the most, counted from the left: {places}.}}} other {{reading, select, leftward {From the smallest to the biggest, counted from the right: {places}.} other {From the smallest to the biggest, counted from the left: {places}.}}}}',
  'answer.place': 'the {ordinal}',
  'answer.biggest':
    '{look, select, dots {{reading, select, leftward {The one with the most dots is the {ordinal} from the right.} other {The one with the most dots is the {ordinal} from the left.}}} other {{reading, select, leftward {The biggest is the {ordinal} from the right.} other {The biggest is the {ordinal} from the left.}}}}',
  'answer.smallest':
    '{look, select, dots {{reading, select, leftward {The one with the fewest dots is the {ordinal} from the right.} other {The one with the fewest dots is the {ordinal} from the left.}}} other {{reading, select, leftward {The smallest is the {ordinal} from the right.} other {The smallest is the {ordinal} from the left.}}}}',
  'answer.middle':
    '{look, select, dots {{reading, select, leftward {The one between in number is the {ordinal} from the right.} other {The one between in number is the {ordinal} from the left.}}} other {{reading, select, leftward {The one between in size is the {ordinal} from the right.} other {The one between in size is the {ordinal} from the left.}}}}',
  // Why a task is unfit; {place}, {box} and the like are numbers.
  'fault.done': 'the figures stand in order already',
  'fault.few': 'fewer than three figures have no order to be found',
  'fault.mixed': 'dots stand beside other figures, so that number and size are mixed up',
  'fault.twofold': 'the dots differ in number and in size',
  'fault.own-order':
    'letters, numerals or pictures differ, which have an order or a size of their own',
  'fault.response': 'what the child does cannot show what is asked for',
  'fault.two-middle': 'two figures stand in the middle',
  // Why something cannot be asked for, in brackets behind what was expected.
  'no.ring': 'a ring finds one, and shows no order',
  'no.one': 'one figure alone is pointed to or ringed',
  'no.even': 'of an even number none stands between',
  'no.dots': 'six dots leave no more numbers that are so far apart',
  'no.frame': 'a frame for more to be stuck in is wider than a page',
} as const;
