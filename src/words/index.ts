// What the program says around the activities: sentences for refusals, and the shell's own words.
export { nearestOf } from './nearest.ts';
export { plainText } from './plain-text.ts';
export { amountIn, reasonIn } from './reasons.ts';
export { sentenceIn, sentenceOf } from './sentences.ts';
export { ENGLISH as SHELL_WORDS } from './shell-en.ts';
export type { ShellWords } from './shell-words.ts';
export { type WeekOfChild, YEAR_WORDS } from './year-en.ts';
