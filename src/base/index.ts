export * from './path.ts';
export * from './random.ts';
export * from './refusal.ts';
export * from './shapes.ts';
export * from './told.ts';
export * from './units.ts';
