export * from './types.ts';
export * from './readings.types.ts';
export * from './record.ts';
export * from './digest.ts';
export { begin } from './begin.ts';
export { advance } from './advance.ts';
export { attempt, could } from './attempt.ts';
export { read, trueFlows, truePressures } from './read.ts';
export { replay } from './replay.ts';
