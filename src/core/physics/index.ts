/** Cells, links, flow and seal laws, forces and the solver; knows pressures and openings, no tees and no rods. */
export * from './network.ts';
export { compile, sameShape, type CompiledNetwork } from './compile.ts';
export { fillMol, gasFractions, linkFlows, linkRates, pressuresAbsPa } from './contents.ts';
export { firstStepS, naturalStep, solverSteps, stepTo } from './solver.ts';
export {
  criticalRatio,
  exactNozzlePsi,
  fitNozzleCurve,
  nozzleCurve,
  nozzleMassFlowKgPerS,
  nozzlePsi,
  SMOOTH_BAND,
} from './nozzle.ts';
export { darcyFrictionFactor } from './friction.ts';
export { isothermalChokeAbsPa, pipeMassFlowKgPerS, pipeSize } from './pipeFlow.ts';
export { AIR, FUEL_GAS } from './gases.ts';
export { liftShare } from './linkLaw.ts';
export * from './excavation.ts';
export * from './detector.ts';
export * from './sound.ts';
export * from './valveArea.ts';
export * from './seatRing.ts';
export * from './seals.ts';
export * from './stopper.ts';
export * from './chain.ts';
export * from './threads.ts';
export * from './torque.ts';
export * from './thermal.ts';
export * from './forces.ts';
export * from './jet.ts';
export * from './pump.ts';
export * from './blowdown.ts';
export { checkLaws, type LawCheck } from './laws.ts';
export { locateCrossing } from './crossing.ts';
export { closureOf, evenContents, liveRig, openAtRandom, type OpeningsReport } from './bench.ts';
export { type JobOutcomes, readSensitivity, type Sensitivity, type SensitivityRow } from './sensitivity.ts';
