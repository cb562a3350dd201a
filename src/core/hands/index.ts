export * from './order.ts';
export * from './hand.ts';
export * from './felt.ts';
export * from './drive.ts';
export { steady, steadyUpTo } from './steady/index.ts';
export { hasty } from './hasty.ts';
export { trusting } from './trusting.ts';
export { heavy, light } from './heavyAndLight.ts';
export { muddled, muddledBy } from './muddled.ts';
