export * from './activity.ts';
export * from './features.ts';
export * from './parameters.ts';
export * from './registry.ts';
export { counted, numberWord } from './wording.ts';
