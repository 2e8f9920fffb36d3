export * from './activity.ts';
export { chanceAmong, chanceEachTime, chanceOfLaying, MOST_CHANCE } from './chance.ts';
export * from './features.ts';
export { DEEDS, type Deed, handLevel, hardestHand } from './hand.ts';
export { withNearestContent } from './nearest-content.ts';
export * from './parameters.ts';
export * from './registry.ts';
export { SKILLS, type Skill } from './skills.ts';
export { counted, numberWord } from './wording.ts';
