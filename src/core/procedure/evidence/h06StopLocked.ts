import { openings, shutInQuiet } from '../bleeding.ts';
import { lastTelling } from '../leakFluid.ts';
import { every, kindOf, latest, latestDone, since, stampOf } from '../recall.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';

/** Stop locked: nothing can push the stopper out, and the stop was still dry when the rig came off. */
export function stopLocked(told: Told): readonly EvidenceItem[] {
  const { facts, limits, job } = told;
  const load = latestDone(facts, 'rod.load', (a) => kindOf(job, a.piece) === 'keeperPlug');
  const stamp = load?.action.piece ? stampOf(job, load.action.piece) : null;
  const keeper = latest(facts, 'keeper.turned');
  const pull = latest(facts, 'keeper.turned', (f) => f.torqueNm >= limits.keeperNm);
  const gapM = keeper?.gapM ?? -1;
  const [low, high] = limits.keeperGapM;
  const movedTurns = keeper ? teeMovedSince(told, load?.atS ?? 0) : 0;
  const marked = latest(facts, 'marked', (f) => f.at === 'keeper');
  const fluid = lastTelling(
    every(facts, 'leak.looked', (f) => f.at === 'keeper'),
    (look) => look.watchS >= limits.fluidWatchS,
  );
  return [
    item('size', stamp === job.workpiece.teeSize),
    item('gap', keeper !== null && gapM >= low && gapM <= high, { gapM, lowM: low, highM: high }),
    item('torque', pull !== null, { torqueNm: largestTorque(told), limitNm: limits.keeperNm }),
    item('holdBack', pull !== null && pull.heldBack && movedTurns < limits.teeMovedTurns, {
      teeMovedTurns: movedTurns,
      limitTurns: limits.teeMovedTurns,
    }),
    item('marked', marked !== null && pull !== null && marked.atS >= pull.atS),
    item('bled', keeper !== null && quietBeforeOff(told, load?.atS ?? 0)),
    item('fluid', fluid !== null && fluid.bubbles === 'none', {
      watchS: fluid?.watchS ?? 0,
      fluidWatchS: limits.fluidWatchS,
    }),
  ];
}

function largestTorque(told: Told): number {
  return every(told.facts, 'keeper.turned').reduce((most, f) => Math.max(most, f.torqueNm), 0);
}

/** How far the tee was dragged round with the keeper, turns. */
function teeMovedSince(told: Told, fromS: number): number {
  const before = latest(told.facts, 'tee.turned', (f) => f.atS < fromS)?.turnsBack ?? 0;
  let most = 0;
  for (const f of since(told.facts, fromS, true)) {
    if (f.fact === 'branch.cut') break;
    if (f.fact === 'tee.turned') most = Math.max(most, Math.abs(f.turnsBack - before));
    if (f.fact === 'tee.strained') most = Math.max(most, Math.abs(f.turns));
  }
  return most;
}

/** With the keeper in: valve open, bled quiet, shut in and reopened without a puff, before the stack came off. */
function quietBeforeOff(told: Told, loadedS: number): boolean {
  const keeperS = since(told.facts, loadedS).find((f) => f.fact === 'keeper.turned')?.atS ?? null;
  if (keeperS === null) return false;
  const barrelOff = since(told.facts, keeperS).find(
    (f) => f.fact === 'piece.removed' && kindOf(told.job, f.piece) === 'isolationValve',
  );
  const untilS = barrelOff?.atS ?? told.nowS;
  const heard = openings(told).filter(
    (o) => o.openedS >= keeperS && o.openedS <= untilS && o.valve === 'open',
  );
  return shutInQuiet(heard, told.limits.shutS);
}
