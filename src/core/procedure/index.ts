export * from './settings.ts';
export * from './types.ts';
export * from './follow.ts';
export * from './guards.ts';
export * from './evidence/index.ts';
export * from './safeStates.ts';
export * from './due/index.ts';
export * from './recall.ts';
export * from './standing.ts';
export * from './bleeding.ts';
export { tell, type EvidenceItem, type Told } from './told.ts';
export { LOW_MAIN_PA } from './evidence/h04ServiceStopped.ts';
export { leftInGround } from './evidence/h12HandedBack.ts';
export { PILOT_DRILLED_S } from './evidence/h07DeadAtCut.ts';
export {
  firstChamber,
  newTeeChamber,
  secondChamber,
  highestPumpedGaugePa,
  type ProofChamber,
} from './proof.ts';
