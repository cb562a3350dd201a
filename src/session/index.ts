export { UnreadableSitting, parseEvents, type Journal, type SittingEvent } from './events.ts';
export {
  fastestAssessed,
  longestAssessedWaitS,
  paces,
  type Pace,
  type Phase,
  type SittingMode,
} from './machine.ts';
export { kindOfTarget, readPulls, trialPulls, type Pull } from './gestures.ts';
export { momentAt, momentBefore, performAgain, type Performance } from './performance.ts';
export { openSitting, type Refusal, type Sitting, type SittingView } from './sitting.ts';
export type { Sample } from './trace.ts';
export { truthOf, type Truth } from './truth.ts';
export * from './vocabulary.ts';
