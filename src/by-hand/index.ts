// Sheets without a printer: guides for making them by hand, and half-made sheets.
export type { Fold } from './folds.ts';
export { type Guide, type GuideWishes, makeGuide, type RuledBox, type RuledLine } from './guide.ts';
export { guidePages } from './guide-pages.ts';
export { type HalfMade, halfMade } from './half-made.ts';
export type { CopyReason } from './layout.ts';
export { SECONDS } from './minutes.ts';
export type { Pen, Placement } from './placements.ts';
export { RULER_MM } from './snap.ts';
