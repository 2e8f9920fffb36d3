// Sheets without a printer: guides for making them by hand, and half-made sheets.
export { type Guide, type GuideWishes, makeGuide } from './guide.ts';
export { guidePages } from './guide-pages.ts';
export { type HalfMade, halfMade } from './half-made.ts';
export { SECONDS } from './minutes.ts';
export { type MadeWishes, madeFaults, type PagesOf, pagesMade, pagesOf } from './pack-pages.ts';
export type { CopyReason, Fold, Pen, Placement, RuledBox, RuledLine } from './parts.ts';
export { quickRecipe } from './quick.ts';
export { RULER_MM } from './snap.ts';
export { STICKER_RANGE_MM } from './stickers.ts';
