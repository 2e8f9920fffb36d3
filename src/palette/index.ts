export * from './colour-names.ts';
