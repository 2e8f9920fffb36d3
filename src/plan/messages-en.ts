// English messages of figures beside each other.

export const MESSAGES = {
  // What sets a figure apart from the other of a pair.
  smaller: 'smaller',
  bigger: 'bigger',
} as const;
