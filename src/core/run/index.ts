export * from './types.ts';
export * from './readings.types.ts';
