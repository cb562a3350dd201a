export * from './job.ts';
export * from './state.ts';
export * from './actions.ts';
export * from './facts.ts';
export * from './hindrance.ts';
