export * from './abstract/index.ts';
