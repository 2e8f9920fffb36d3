// English messages of what is wrong with a task, said alike of several activities. They stand behind a colon, or by
// themselves with a capital and a full stop.

export const MESSAGES = {
  'no-answer': 'the page admits no answer',
  'several-answers': 'the page admits {count} answers',
  'other-key': 'the key is not the answer that the page admits',
  unreadable: 'this can no longer be read as a task',
  // Names of two figures.
  alike: 'hard to tell apart: {one} and {other}',
  'offered-twice': 'a figure is offered twice',
  'more-than-colour': 'the figures differ in more than their colour',
  'sticker-size': 'the size of the stickers is not told',
  'no-empty-cell': 'no cell is empty',
} as const;
