export * from './types.ts';
export * from './catalogue.ts';
