import { circleM2, thrustN } from '../physics/index.ts';
import { constants, taperThreads } from '../catalogue/index.ts';
import type { FactBody } from './facts.ts';
import { hashNoise } from '../units/index.ts';
import type { Sense } from './sense.ts';
import type { RigState } from './state.ts';

/** A part thrown with more than this ends the exercise as it would end the job: about 100 lbf (assumed). */
export const HURT_THRUST_N = 450;
/** A plug or tee let go in the open is light: it hurts from this thrust on, N (assumed: 70 lbf). */
export const HURT_SMALL_PART_N = 310;

/** Thrust of the gas on a part as its thread lets go, N, on its pitch diameter at the hand-tight plane. */
export function freeThrustN(rig: RigState, differencePa: number): number {
  return thrustN(Math.max(0, differencePa), circleM2(taperThreads[rig.job.workpiece.teeSize].e1M));
}

/** Thrust on the underside of a piece of the stack as it comes off, N. */
export function stackThrustN(gaugePa: number): number {
  return thrustN(Math.max(0, gaugePa), circleM2(constants.rigBoreM.value));
}

/** Share of loose stoppers that catch across the port instead of going on into the main (assumed: an even chance). */
const CATCHES_SHARE = 0.5;

/** A loose stopper goes down the tee: it hangs across the port, or is gone into the main. Chance by seed and time. */
export function fallThrough(rig: RigState, sense: Sense): { rig: RigState; facts: readonly FactBody[] } {
  const drawn = (1 + hashNoise(sense.seed, 'stopper.falls', Math.floor(sense.atS))) / 2;
  if (rig.tee.at === 'coupling' && drawn < CATCHES_SHARE) {
    const stopper = { ...rig.stopper, at: 'fallen', belowPortM: 0, torqueNm: 0, squeezeTurns: 0 } as const;
    return { rig: { ...rig, stopper }, facts: [{ fact: 'stopper.dropped', into: 'tee' }] };
  }
  return { rig: stopperGone(rig), facts: [{ fact: 'stopper.dropped', into: 'main' }] };
}

/** The stopper has left the tee below: it lies in the main. */
export function stopperGone(rig: RigState): RigState {
  const id = rig.stopper.piece;
  const kit: RigState['kit'] =
    id === null ? rig.kit : { ...rig.kit, [id]: { ...rig.kit[id], where: 'lost' } };
  const stopper = { ...rig.stopper, at: 'lost', belowPortM: 0, torqueNm: 0, squeezeTurns: 0 } as const;
  const rod = rig.rod.load === 'stopper' ? { ...rig.rod, load: null, engaged: null } : rig.rod;
  return { ...rig, kit, rod, stopper };
}

/** Ends the run when a part is thrown hard enough to hurt; the facts keep their numbers either way. */
export function strikes(rig: RigState, facts: readonly FactBody[], hurts: boolean, cause: string) {
  if (!hurts || rig.ending !== null) return { rig, facts };
  const ending = { kind: 'hurt', cause } as const;
  return { rig: { ...rig, ending }, facts: [...facts, { fact: 'ended', ending } as const] };
}
