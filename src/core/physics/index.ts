/** Cells, links, flow and seal laws, forces and the solver; knows pressures and openings, no tees and no rods. */
export * from './network.ts';
export * from './compile.ts';
export * from './solver.ts';
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
