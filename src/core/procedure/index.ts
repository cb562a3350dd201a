export * from './settings.ts';
export * from './types.ts';
