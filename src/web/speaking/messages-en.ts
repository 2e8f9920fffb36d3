// English messages of what all parts of the app share: lists, and colours of stickers and crayons.

export const MESSAGES = {
  // `red, blue`; then `red, blue and green`.
  'comma.next': '{before}, {next}',
  'and.last': '{before} and {last}',
  // `a; b; c`, for items that hold an "and" themselves.
  'series.next': '{before}; {next}',
  // Of sentences.
  'sentences.next': '{before} {next}',
  'colour.red': 'red',
  'colour.orange': 'orange',
  'colour.yellow': 'yellow',
  'colour.green': 'green',
  'colour.blue': 'blue',
  'colour.purple': 'purple',
  'colour.pink': 'pink',
  'colour.brown': 'brown',
  'colour.grey': 'grey',
  'colour.black': 'black',
  'colour.white': 'white',
} as const;
