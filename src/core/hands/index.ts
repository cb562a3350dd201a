export * from './order.ts';
export * from './hand.ts';
export * from './felt.ts';
export * from './drive.ts';
export { steady } from './steady/index.ts';
export { hasty } from './hasty.ts';
