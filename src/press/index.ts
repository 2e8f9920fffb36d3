export { coverageOf } from './coverage.ts';
export * from './pdf.ts';
export type { FontFiles } from './pdf-lettering.ts';
export * from './svg.ts';
