// Changing tasks, with the proof running along: places, edits, verdicts, offers, repairs, history.
export { type Doubt, type EditedTasks, editedTasks, editsField } from './edited-tasks.ts';
export { drawnTask, type Ground } from './ground.ts';
export { changed, type History, historyOf, redone, undone } from './history.ts';
export { EDITABLE, type Editable, type Offer, type OfferGroup, offersAt } from './offers.ts';
export { placeName } from './place-names.ts';
export {
  choicesFor,
  type Fact,
  factName,
  factsIn,
  listsIn,
  type Path,
  type Place,
  placesIn,
  tracedTask,
} from './places.ts';
export { type Repair, smallestRepair } from './repair.ts';
export type { ShapeChange } from './shape-change.ts';
export { type ShapeOffer, shapeOffersAt } from './shape-offers.ts';
export {
  type Deed,
  doDeed,
  type Lying,
  lockedIn,
  lyingTask,
  NO_EDITS,
  repairAsked,
  type SheetEdits,
  type Spot,
} from './sheet-edits.ts';
export {
  editBetween,
  isIdle,
  MOST_FACTS,
  MOST_NUMBER,
  MOST_PLACES,
  MOST_SHAPE_CHANGES,
  type TaskEdit,
  withEdit,
} from './task-edit.ts';
export { doubtSentences, judge, type Problem, type Verdict } from './verdict.ts';
export { type EmptyCell, emptyCellsIn, type Whole, wholesIn } from './wholes.ts';
export { EDITING_WORDS } from './words.ts';
