// English messages of what is printed in tasks, and of what drawings in them are for readers who cannot see them.

export const MESSAGES = {
  // The one word on a task itself, for the adult: where the page is folded.
  fold: 'fold',
  empty: 'empty place',
  'empty.circle': 'empty circle',
  'empty.sticker': 'empty circle for a sticker',
  'empty.outline': 'empty outline',
  // Where a piece of a field is missing.
  hole: 'hole',
  // What stands in a table is as big as what is drawn there.
  thatSize: 'that size',
  'thatSize.colour': '{colour}, that size',
} as const;
