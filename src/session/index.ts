export { UnreadableSitting, parseEvents, type Journal, type SittingEvent } from './events.ts';
export { paces, type Pace, type Phase } from './machine.ts';
export { kindOfTarget, leastPulls, readPulls, type Pull } from './gestures.ts';
export { momentAt, performAgain, type Performance } from './performance.ts';
export { openSitting, type Refusal, type Sitting, type SittingView } from './sitting.ts';
export type { Sample } from './trace.ts';
export { truthOf, type Truth } from './truth.ts';
export * from './vocabulary.ts';
