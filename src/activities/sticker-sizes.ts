// The dot stickers that can be bought, which printed dots can be as large as.

/** Diameters in mm of dot stickers that are sold, as choices of a parameter; common practice, no source. */
export const STICKERS_SOLD_MM = ['8', '10', '13', '16', '19', '25'] as const;
export type StickerSoldMm = (typeof STICKERS_SOLD_MM)[number];
