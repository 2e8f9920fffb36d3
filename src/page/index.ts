export * from './ink.ts';
export * from './nodes.ts';
export * from './print-style.ts';
export * from './scene.ts';
