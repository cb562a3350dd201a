import { every, kindOf, latest, stampOf } from '../recall.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';
import type { KitKind } from '../../rig/index.ts';

/** Tee fits and the rig is at hand: once its bite is broken there must be nothing left to fetch, file or find. */
export function teeFits(told: Told): readonly EvidenceItem[] {
  const { facts, limits } = told;
  const ring = latest(facts, 'gaugeRing.tried');
  const bolts = latest(facts, 'collarBolt.turned')?.bolts ?? [0, 0];
  const unevenTurns = Math.abs(bolts[0] - bolts[1]);
  const on = placedOf(told, 'cupGasket') && placedOf(told, 'splitCollar');
  const boltsUp = Math.min(bolts[0], bolts[1]) > 0 && unevenTurns <= limits.tensionerEvenTurns;
  const atHand = latest(facts, 'site.done', (f) => f.task === 'bringRig') !== null;
  const evenMetal = latest(facts, 'looked', (f) => f.at === 'gasketSeat' && f.saw.face === 'sound') !== null;
  const ready = evenMetal && inspectedOf(told, 'cupGasket') && inspectedOf(told, 'splitCollar');
  return [
    item('gaugeRing', ring?.passes === true, { sweptM: ring?.sweptM ?? 0 }),
    item('capped', serviceCapped(told)),
    item('gasket', (on && boltsUp) || (!on && ready), { unevenTurns, limitTurns: limits.tensionerEvenTurns }),
    item('atHand', atHand),
  ];
}

/** The dead service's end stands capped. */
export function serviceCapped(told: Told): boolean {
  const on = new Set<string>();
  for (const f of told.facts) {
    if (f.fact === 'piece.placed' && kindOf(told.job, f.piece) === 'serviceCap') on.add(f.piece);
    if (f.fact === 'piece.removed') on.delete(f.piece);
  }
  return on.size > 0;
}

function placedOf(told: Told, kind: KitKind): boolean {
  const placed = latest(told.facts, 'piece.placed', (f) => kindOf(told.job, f.piece) === kind);
  const removed = latest(told.facts, 'piece.removed', (f) => kindOf(told.job, f.piece) === kind);
  return placed !== null && (removed === null || removed.atS < placed.atS);
}

function inspectedOf(told: Told, kind: KitKind): boolean {
  return every(told.facts, 'piece.inspected').some((f) => {
    const stamp = stampOf(told.job, f.piece);
    return kindOf(told.job, f.piece) === kind && (stamp === null || stamp === told.job.workpiece.teeSize);
  });
}
