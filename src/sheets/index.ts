// Recipes, sheets, packs, their codes, their pages and their files.
export { adultPages } from './adult-page.ts';
export { answerPages } from './answer-pages.ts';
export { childOnSheet } from './child-on-sheet.ts';
export { MAKER_VERSION, READABLE_VERSIONS, readCode, writeCode } from './code.ts';
export {
  CODE_ALPHABET,
  isTooLongToPrint,
  LONGEST_CODE,
  LONGEST_PRINTED_CODE,
  shortCode,
} from './code-characters.ts';
export { featuresToDo, materialsToDo, type SheetMaterial } from './cut-demands.ts';
export { cutPagesOf, notToBeCut } from './cut-pages.ts';
export { FRAMEWORKS, type Framework, GOALS, type GoalId, goalsOf } from './goals.ts';
export { frameworkNames } from './goals-served.ts';
export { EQUAL_LOGITS, numberedChildren } from './group.ts';
export { longNameRefusals, readChildren } from './group-names.ts';
export { type JsonLimits, readJson } from './json-text.ts';
export { MADE, type Made } from './made.ts';
export { makePack } from './make-pack.ts';
export { markingPages } from './marking-table.ts';
export {
  gatheredMaterials,
  type PackMaterials,
  packMaterials,
} from './materials.ts';
export { minutesFor } from './minutes.ts';
export { lettersShown } from './name-tasks.ts';
export { OWN_PICTURE_FIELDS } from './own-pictures.ts';
export { makePartSheet, type OnProgress, type Pack, type SeededRecipe } from './pack.ts';
export {
  type Check,
  type CheckNote,
  checkPackText,
  type OnChecked,
  type TaskFault,
} from './pack-check.ts';
export { type FiledPack, type FiledSheet, openPackText } from './pack-codes.ts';
export { PACK_CHARACTERS, packFileText } from './pack-file.ts';
export { packOfCodes } from './pack-of-codes.ts';
export { type PackPagesOptions, packPages, printedPapers, sheetPages } from './pack-pages.ts';
export { childFileName, packsOfChildren } from './packs-of-children.ts';
export { footLabels } from './page-catalogue.ts';
export { printedColours } from './printed-colours.ts';
export {
  RECIPE_CHARACTERS,
  readRecipe,
  readRecipeText,
  writtenChoices,
} from './read-recipe.ts';
export {
  type GroupChild,
  LONGEST_NAME,
  MOST_CHILDREN,
  type Recipe,
  type RecipePart,
  SORTINGS,
  type Sorting,
} from './recipe.ts';
export { rulerPages } from './ruler-page.ts';
export { closedObject, wholeNumber } from './schema-parts.ts';
export { refusalsOf } from './schema-refusals.ts';
export { type JsonSchema, SCHEMAS } from './schemas.ts';
export {
  makeSheet,
  makeSheetOfCode,
  type Sheet,
  type SheetChild,
  type SheetRequest,
} from './sheet.ts';
export { pagesInInks, sheetPage, taskGroups } from './sheet-page.ts';
export {
  adultPaperOf,
  coloursField,
  DEFAULT_PAGE,
  DEFAULT_PRINT,
  MOST_PARTS,
  MOST_SHEETS,
  MOST_TASKS,
  type PrintChoices,
  printChoicesOf,
  type SheetSpec,
  SIZES,
  stepForAge,
  styleOf,
  takesOwnPictures,
} from './sheet-spec.ts';
export { changesOf, valuesOf } from './sheet-values.ts';
export { shownOn } from './shown-on.ts';
export {
  PRINTERS,
  type Printer,
  readStockText,
  STOCK_CHARACTERS,
  STOCK_FIELDS,
  type StickerStock,
  type Stock,
  TOOLS,
  type Tool,
} from './stock-facts.ts';
export { TO_CUT, type ToCut, toCutField } from './to-cut.ts';
