export * from './ids.ts';
export * from './planted.ts';
export * from './fault.ts';
export { faults } from './registry.ts';
export * from './strike.ts';
export { meaning, type Meaning, type MeaningKey } from './meaning.ts';
