export * from './abstract/index.ts';
export { MOST_DEVIATIONS, prove } from './prove.ts';
export { noticingOf, withNoticing } from './noticing.ts';
export * from './types.ts';
export * from './sensitivity/index.ts';
