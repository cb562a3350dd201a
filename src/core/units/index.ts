export * from './quantities.ts';
export * from './portable.ts';
export * from './chance.ts';
export * from './atMost.ts';
