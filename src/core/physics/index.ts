export * from './network.ts';
export * from './compile.ts';
export * from './solver.ts';
