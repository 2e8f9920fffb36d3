// How the sheets of a pack come about: printed, printed but for the dots, or made by hand from a guide.

export const MADE = ['printed', 'half-made', 'by-hand'] as const;
export type Made = (typeof MADE)[number];
