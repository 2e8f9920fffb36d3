export * from './figure.ts';
export * from './form-names.ts';
