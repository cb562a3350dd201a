export * from './abstract/index.ts';
export { prove } from './prove.ts';
export * from './types.ts';
export * from './sensitivity/index.ts';
