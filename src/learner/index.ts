export {
  type Ability,
  abilityOf,
  type Belief,
  DRIFT_PER_DAY,
  newBelief,
  ninetyPercent,
  onDay,
  PRIOR_MEAN,
  PRIOR_SD,
} from './ability.ts';
export {
  afterAnswers,
  afterWholeSheet,
  expectedNarrowing,
  WHOLE_SHEET_WEIGHT,
  type WholeSheet,
} from './ability-update.ts';
export { AIM_TOLERANCE, type Aim, aimAt, NOTCH_LOGITS, notch } from './aim.ts';
export {
  type Candidate,
  type Choice,
  chooseSheet,
  type Reason,
  type ReasonCode,
} from './choose.ts';
export { type Asked, climb, settle } from './climb.ts';
export {
  ALARM,
  type ConfusionRow,
  confusionsIn,
  type Look,
  type Offered,
  offeredByLikeness,
} from './confusions.ts';
export * from './difficulty.ts';
export { expectedSuccess, logitsFor, SUCCESS_BAND, WANTED_SUCCESS } from './expected-success.ts';
export { explainDifficulty } from './explain.ts';
export { meanDifficulty, type Sample, sampleSeeds } from './mean-difficulty.ts';
export {
  type Answer,
  FORM_SD,
  HELP_LEVELS,
  HELP_LOGITS,
  type HelpLevel,
  LAPSE,
  OUTCOMES,
  type Outcome,
  rightProbability,
} from './response-model.ts';
export { differentRungs, meansOf, placeThatFails } from './rungs.ts';
export { type DatedSheet, riseOver } from './trend.ts';
export * from './weights.ts';
