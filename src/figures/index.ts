export * from './contents.ts';
export {
  drawCounts,
  drawNearSizes,
  drawSizes,
  drawSpace,
  drawTurns,
  mostCounts,
} from './contents-draw.ts';
export * from './differences.ts';
export * from './discriminability.ts';
export * from './dot-figures.ts';
export { DOT_SHARE, dotPlaces, LEAST_DOT_SIZE, MOST_DOTS, mostDotSize } from './dots.ts';
export * from './figure.ts';
export * from './figure-schema.ts';
export * from './form-names.ts';
export * from './glyphs.ts';
export { INSIDE_FLOOR, insideShare } from './insides.ts';
export { contentsOfLanguage, offeredIn } from './language-contents.ts';
export { CAP_HEIGHT_SHARE, characterOf, isOfScript } from './letter-outlines.ts';
export * from './likeness.ts';
export { isPlainLine, type LinePoint, linePointsOf } from './line-points.ts';
export * from './name-letters.ts';
export { nameNotes, shownNotes } from './name-notes.ts';
export * from './names.ts';
export * from './outline.ts';
export {
  measureOutlineShare,
  measureTurnedShare,
  outlineShare,
  turnedOutlineShare,
} from './outline-distance.ts';
export * from './own-forms.ts';
export * from './own-pictures.ts';
export { isOwnColoured, type Paint as FigurePaint, paintOf } from './paint.ts';
export { pathFromText } from './path-text.ts';
export {
  categoryOf,
  PICTURE_CATEGORIES,
  PICTURE_CREDIT,
  type PictureCategory,
  type PicturePart,
  picturesOf,
} from './pictures.ts';
export * from './pools.ts';
export * from './room.ts';
export { SIGN_WIDTH_SHARE } from './sign-lines.ts';
export * from './symmetry.ts';
export * from './textures.ts';
export { placeOf, traced } from './traced.ts';
export * from './wanted-forms.ts';
export { FIGURE_WORDS, type FigureCase } from './words.ts';
