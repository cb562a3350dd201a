import { pieces, taperThreads, WASHER_BELOW_PORT_M } from '../../catalogue/index.ts';
import type { FactBody } from '../facts.ts';
import { madeUpTurns } from '../reach.ts';
import type { RigState } from '../state.ts';
import { stopperClearsBore } from '../stopping.ts';
import { stopperGone } from '../strikes.ts';
import { tidy } from './outcome.ts';

/** From the keeper's stem down to the stopper, m; grows as the keeper stands higher, negative where it would be in it. */
function stemAboveM(rig: RigState): number {
  const size = rig.job.workpiece.teeSize;
  const short = (madeUpTurns(rig.job) - rig.keeper.engagedTurns) * taperThreads[size].pitchM;
  const deeper = rig.stopper.belowPortM - WASHER_BELOW_PORT_M;
  const { stemLongM, stemShortM } = rig.keeper.piece === null ? {} : rig.kit[rig.keeper.piece].defects;
  const longerM = (stemLongM ?? 0) - (stemShortM ?? 0);
  return pieces.keeperPlug.dims(size).gapM + short + deeper - longerM;
}

/** Gap between the keeper's stem and the stopper under it, m; 0 where the stem stands on it. */
export function keeperGapM(rig: RigState): number {
  return Math.max(0, stemAboveM(rig));
}

/**
 * A stem that would stand in the stopper pushes it down before it: a pipe thread is stronger than any rubber's grip on
 * the bore. Pushed until no rubber is left in the bore, it falls into the main.
 */
export function pressedByStem(rig: RigState): { rig: RigState; facts: readonly FactBody[] } {
  const byM = tidy(-stemAboveM(rig));
  if (byM <= 0 || rig.keeper.at !== 'tee' || rig.stopper.at !== 'set') return { rig, facts: [] };
  const belowPortM = tidy(rig.stopper.belowPortM + byM);
  const deeper: RigState = { ...rig, stopper: { ...rig.stopper, belowPortM } };
  const pushed: FactBody = { fact: 'stopper.pushed', byM, belowPortM };
  return stopperClearsBore(deeper)
    ? { rig: stopperGone(deeper), facts: [pushed, { fact: 'stopper.dropped', into: 'main' }] }
    : { rig: deeper, facts: [pushed] };
}
