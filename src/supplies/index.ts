// Stickers, pens and tools: what the house has, what a pack uses, what is lacking, and packs made of nothing else.
export { houseFor, usedBy, usualStickerMm } from './hand-made.ts';
export { makePackAtHand, paperIn, printOn } from './pack-at-hand.ts';
export { makeSheetAtHand } from './sheet-at-hand.ts';
export {
  isEnough,
  type Lacking,
  lackingFor,
  type MaterialsOf,
  materialsReader,
  stockAfter,
  stockNow,
} from './stock.ts';
export { type Use, usesOf } from './uses.ts';
