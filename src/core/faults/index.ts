export * from './ids.ts';
export * from './planted.ts';
