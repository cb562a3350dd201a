/** Chains that draw the saddle down: each leg a spring with a tensioner, all legs alike. */
export interface ChainSet {
  legs: number;
  legStiffnessNPerM: number;
  /** Take-up a turn of a tensioner, m (two threads of opposite hand). */
  advancePerTurnM: number;
  /** Distance between left and right legs, m. */
  spanM: number;
}

/** What the saddle bears on: a rubber ring with a metal stop. */
export interface SeatSpring {
  stiffnessNPerM: number;
  thicknessM: number;
  /** Squeeze at which metal meets metal. */
  stopSqueeze: number;
  outerDiameterM: number;
}

/** How the saddle sits. */
export interface Seating {
  /** Sum of the legs, N, without gas under the saddle. */
  clampN: number;
  leftLegN: number;
  rightLegN: number;
  /** Mean squeeze of the rubber, as a share of its thickness, before gas pressure. */
  squeeze: number;
  /** What the slacker edge has less, and the tighter more, than the mean squeeze. */
  edgeSqueezeLost: number;
  onMetal: boolean;
}

/**
 * Turns past snug, left and right, to forces and squeeze. The mean of the turns draws the saddle down against rubber
 * and legs in series, and against the legs alone once metal meets metal. The *difference of turns*, not of force,
 * tilts the saddle. `slackM` is what has been lost again from every leg (crushed scale, a tap), m. A leg never
 * pushes; one leg pulls more than the other only as far as the ring's reaction can move to its edge.
 */
export function seatSaddle(
  chains: ChainSet,
  seat: SeatSpring,
  leftTurns: number,
  rightTurns: number,
  slackM = 0,
): Seating {
  const leftM = Math.max(0, leftTurns * chains.advancePerTurnM - slackM);
  const rightM = Math.max(0, rightTurns * chains.advancePerTurnM - slackM);
  const drawnM = (leftM + rightM) / 2;
  const legs = chains.legs * chains.legStiffnessNPerM;
  const series = seriesStiffness(legs, seat.stiffnessNPerM);
  const stopN = seat.stopSqueeze * seat.thicknessM * seat.stiffnessNPerM;
  const stopDrawnM = stopN / series;
  const onMetal = drawnM > stopDrawnM;
  const clampN = onMetal ? stopN + (drawnM - stopDrawnM) * legs : drawnM * series;
  const uneven = drawnM > 0 ? (leftM - rightM) / (2 * drawnM) : 0;
  const mostUneven = seat.outerDiameterM / chains.spanM;
  const leftShare = Math.max(-mostUneven, Math.min(mostUneven, uneven));
  return {
    clampN,
    leftLegN: (clampN / chains.legs) * (1 + leftShare),
    rightLegN: (clampN / chains.legs) * (1 - leftShare),
    squeeze: Math.min(clampN, stopN) / seat.stiffnessNPerM / seat.thicknessM,
    edgeSqueezeLost: (Math.abs(leftM - rightM) * seat.outerDiameterM) / 2 / chains.spanM / seat.thicknessM,
    onMetal,
  };
}

/**
 * Squeeze once gas pushes the saddle up, as a share: the rubber gives up stiffness share kr/(kr + kl) of the end load
 * and the legs take the rest, as in any preloaded joint; below zero the saddle has lifted.
 */
export function squeezeUnderGas(
  seating: Seating,
  chains: ChainSet,
  seat: SeatSpring,
  endLoadN: number,
): number {
  const legs = chains.legs * chains.legStiffnessNPerM;
  if (seating.onMetal) {
    const stopN = seat.stopSqueeze * seat.thicknessM * seat.stiffnessNPerM;
    const spareN = seating.clampN - stopN;
    if (endLoadN <= spareN) return seating.squeeze;
    return seating.squeeze - (endLoadN - spareN) / (legs + seat.stiffnessNPerM) / seat.thicknessM;
  }
  return seating.squeeze - endLoadN / (legs + seat.stiffnessNPerM) / seat.thicknessM;
}

/** Turns past snug at which the clamp reaches a force, both sides alike. */
export function turnsForClamp(chains: ChainSet, seat: SeatSpring, clampN: number): number {
  const legs = chains.legs * chains.legStiffnessNPerM;
  const series = seriesStiffness(legs, seat.stiffnessNPerM);
  const stopN = seat.stopSqueeze * seat.thicknessM * seat.stiffnessNPerM;
  const drawnM = clampN <= stopN ? clampN / series : stopN / series + (clampN - stopN) / legs;
  return drawnM / chains.advancePerTurnM;
}

function seriesStiffness(one: number, other: number): number {
  return (one * other) / (one + other);
}
