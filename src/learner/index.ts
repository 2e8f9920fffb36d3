export { AIM_TOLERANCE, type Aim, aimAt, NOTCH_LOGITS, notch } from './aim.ts';
export { type Asked, climb, settle } from './climb.ts';
export * from './difficulty.ts';
export { explainDifficulty } from './explain.ts';
export { meanDifficulty, type Sample, sampleSeeds } from './mean-difficulty.ts';
export { differentRungs, meansOf, placeThatFails } from './rungs.ts';
export * from './weights.ts';
