import { GRAVITY_M_PER_S2 } from '../units/index.ts';

/** What a free rod does when nobody holds it. */
export type RodVerdict = 'thrown' | 'still' | 'sinks';

/** A rod in its gland. */
export interface Rod {
  areaM2: number;
  massKg: number;
  glandFrictionN: number;
}

/** Thrust of gas on an area, N: p·A with gauge pressure, or the difference across a piece. */
export function thrustN(pressureDropPa: number, areaM2: number): number {
  return pressureDropPa * areaM2;
}

/** Area of a circle, m². */
export function circleM2(diameterM: number): number {
  return (Math.PI * diameterM * diameterM) / 4;
}

/** Net push on the rod before friction, N, upward positive: p·A − weight. */
export function rodPushN(rod: Rod, gaugePa: number): number {
  return thrustN(gaugePa, rod.areaM2) - rod.massKg * GRAVITY_M_PER_S2;
}

/** What the rod does when let go at a chamber pressure: friction holds it until the push outgrows it either way. */
export function rodVerdict(rod: Rod, gaugePa: number): RodVerdict {
  const push = rodPushN(rod, gaugePa);
  if (push > rod.glandFrictionN) return 'thrown';
  return push < -rod.glandFrictionN ? 'sinks' : 'still';
}

/** What a hand must hold a rod with, N: positive down, negative up; zero while friction does it. */
export function rodHoldN(rod: Rod, gaugePa: number): number {
  const push = rodPushN(rod, gaugePa);
  if (push > rod.glandFrictionN) return push - rod.glandFrictionN;
  return push < -rod.glandFrictionN ? push + rod.glandFrictionN : 0;
}

/** Speed a free piece is thrown with, m/s, when a steady push N moves it along a stroke m: v = √(2·F·s/m). */
export function thrownSpeedMPerS(pushN: number, strokeM: number, massKg: number): number {
  return pushN <= 0 ? 0 : Math.sqrt((2 * pushN * strokeM) / massKg);
}

/** What a stopper does under a pressure drop: friction on the wall holds it, then it creeps, then it slips. */
export type StopperVerdict = 'holds' | 'creeps' | 'slips';

/** Share of the friction limit from which rubber creeps rather than stands. Assumed. */
const CREEP_SHARE = 0.9;

/** Thrust against wall friction μ·σ·A of a stopper. */
export function stopperVerdict(thrustOnStopperN: number, frictionLimitN: number): StopperVerdict {
  const thrust = Math.abs(thrustOnStopperN);
  if (thrust > frictionLimitN) return 'slips';
  return thrust > CREEP_SHARE * frictionLimitN ? 'creeps' : 'holds';
}
