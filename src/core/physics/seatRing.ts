import { cbrtPortable, cos, pow } from '../units/index.ts';

/** A slot as the network takes it. */
export interface Slot {
  perimeterM: number;
  gapM: number;
  lengthM: number;
}

/** How a gap closes under squeeze. */
export interface GapLaw {
  /** Gap with no squeeze, m. */
  gapM: number;
  /** Squeeze that closes it. */
  sealSqueeze: number;
  exponent: number;
  /** What stays open however hard it is pressed (grit, a scratch, the molecular rest), m. */
  floorM: number;
}

/** A flat ring between two faces. */
export interface FlatRing {
  innerDiameterM: number;
  outerDiameterM: number;
  thicknessM: number;
}

/** Places round the ring at which a tilted gap is taken. */
const PLACES = 16;
const leanAt: readonly number[] = Array.from({ length: PLACES }, (_, i) =>
  cos(((i + 0.5) * 2 * Math.PI) / PLACES),
);

/** Gap at one place, m: gap0·(1 − ε/ε_seal)^n + floor; lifted off (negative squeeze), the lift is added. */
export function gapAtM(law: GapLaw, squeeze: number, thicknessM: number): number {
  if (squeeze <= 0) return law.gapM - squeeze * thicknessM + law.floorM;
  const open = Math.max(0, 1 - squeeze / law.sealSqueeze);
  return law.gapM * pow(open, law.exponent) + law.floorM;
}

/**
 * The slot under a seat ring whose squeeze leans from side to side by ±edgeSqueezeLost. The gap returned is the one
 * that passes as much laminar flow as the leaning one: the cube root of the mean cube.
 */
export function seatRingSlot(ring: FlatRing, law: GapLaw, squeeze: number, edgeSqueezeLost: number): Slot {
  let cubes = 0;
  for (let i = 0; i < PLACES; i += 1) {
    const lean = edgeSqueezeLost * leanAt[i];
    const gap = gapAtM(law, squeeze - lean, ring.thicknessM);
    cubes += gap * gap * gap;
  }
  return {
    perimeterM: (Math.PI * (ring.innerDiameterM + ring.outerDiameterM)) / 2,
    gapM: cbrtPortable(cubes / PLACES),
    lengthM: (ring.outerDiameterM - ring.innerDiameterM) / 2,
  };
}

/**
 * What part of a ring rests on nothing when it does not fit the boss: the open area, m², between two circles, at
 * which it leaks like a hole. Zero when the ring covers the opening.
 */
export function uncoveredAreaM2(ringInnerDiameterM: number, bossOuterDiameterM: number): number {
  const bare = ringInnerDiameterM * ringInnerDiameterM - bossOuterDiameterM * bossOuterDiameterM;
  return (Math.PI * Math.max(0, bare)) / 4;
}
