import type { FactBody } from '../facts.ts';
import { workOf } from '../job.ts';
import { joined, mainEndCapped } from '../line.ts';
import { renewed } from '../reach.ts';
import type { Sense } from '../sense.ts';
import type { KitPiece, RigState } from '../state.ts';
import { did, withPiece, type Outcome } from './outcome.ts';

/** Cap, tie-in or riser put on the service: the old one's cut end, or the line that leaves the renewal tee. */
export function placeOnLine(rig: RigState, piece: KitPiece): Outcome {
  const fits = piece.kind === 'purgeRiser' || piece.trueSize === rig.job.system.service.nps;
  const placed: FactBody = { fact: 'piece.placed', piece: piece.id, fits };
  const on = withPiece(rig, piece.id, { where: 'rig' });
  switch (piece.kind) {
    case 'serviceCap':
      return cap(rig, on, piece.id, placed);
    case 'tieIn':
      if (!renewed(rig) || !lineThere(rig)) return 'nothingBelow';
      if (rig.saddle.on === 'coupling') return 'covered';
      if (joined(rig)) return 'alreadyFitted';
      if (mainEndCapped(rig)) return 'occupied';
      if (!fits) return 'doesNotFit';
      return did({ ...on, line: { ...rig.line, tieIn: piece.id, tieInStrained: false } }, placed);
    default:
      if (!lineThere(rig)) return 'nothingBelow';
      if (rig.line.riser !== null) return 'alreadyFitted';
      if (rig.testSet.on === 'line') return 'occupied';
      return did({ ...on, line: { ...rig.line, riser: piece.id, riserOpen: 0 } }, placed);
  }
}

/** There is a line to join: laid, or the old one cut free. */
function lineThere(rig: RigState): boolean {
  const work = workOf(rig.job);
  return work === 'renew' ? rig.line.laid : work === 'reconnect' && rig.branch.cut === 'through';
}

/** The old service's end first, then the main end of a new line. */
function cap(rig: RigState, on: RigState, id: string, placed: FactBody): Outcome {
  if (rig.branch.cut !== 'through') return 'notCut';
  if (!rig.branch.capped) {
    if (joined(rig) && workOf(rig.job) === 'reconnect') return 'occupied';
    return did({ ...on, branch: { ...rig.branch, capped: true } }, placed);
  }
  if (!rig.line.laid || rig.line.cap !== null) return 'alreadyFitted';
  if (joined(rig)) return 'occupied';
  return did({ ...on, line: { ...rig.line, cap: id } }, placed);
}

/** The same taken off again, whatever stands behind it. */
export function removeFromLine(rig: RigState, back: RigState, piece: KitPiece, sense: Sense): Outcome {
  const gone = (pressureGaugePa: number): FactBody => ({
    fact: 'piece.removed',
    piece: piece.id,
    pressureGaugePa,
    thrustN: 0,
    gasMol: 0,
  });
  switch (piece.kind) {
    case 'serviceCap':
      if (piece.id === rig.line.cap)
        return did({ ...back, line: { ...rig.line, cap: null } }, gone(sense.gaugePa('line1')));
      return did({ ...back, branch: { ...rig.branch, capped: false } }, gone(sense.gaugePa('service1')));
    case 'tieIn':
      return did({ ...back, line: { ...rig.line, tieIn: null } }, gone(sense.gaugePa('barrel')));
    default:
      return did({ ...back, line: { ...rig.line, riser: null, riserOpen: 0 } }, gone(0));
  }
}
