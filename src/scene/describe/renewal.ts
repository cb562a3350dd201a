import { pieces } from '../../core/catalogue/index.ts';
import type { RigState } from '../../core/rig/index.ts';
import type { ShapeSpec } from '../pieces/part.ts';
import type { Stand } from './stand.ts';
import type { ItemView } from './view.ts';

const still = { turns: 0, tiltRad: 0, joints: {} } as const;

/** What a renewal adds: the new tee on its way down, its own plug, and the joint to the line. */
export function renewalItems(rig: RigState, stand: Stand, spec: ShapeSpec): ItemView[] {
  const { geometry: g, tipZM } = stand;
  const { renewal, line } = rig;
  const items: ItemView[] = [];
  const turns = rig.rod.turns;
  if (renewal.at === 'rod' && renewal.piece !== null && tipZM !== null) {
    const zM = tipZM - (g.plugShoulderZM - g.portAxisZM);
    items.push({ id: renewal.piece, kind: 'renewalTee', spec, position: [0, 0, zM], ...still, turns });
  }
  const { plug } = renewal;
  if (plug.piece !== null && plug.at !== 'board') {
    const lift = rig.tee.turnsBack * stand.pitchM;
    const inTee = g.plugShoulderZM + lift + (stand.madeUpTurns - plug.engagedTurns) * stand.pitchM;
    const zM = plug.at === 'tee' ? inTee : (tipZM ?? inTee);
    items.push({ id: plug.piece, kind: 'newTopPlug', spec, position: [0, 0, zM], ...still, turns });
  }
  if (line.tieIn !== null) {
    const yM = pieces.renewalTee.dims(rig.job.workpiece.teeSize).bodyOdM / 2;
    const own = { ...spec, teeSize: rig.job.system.service.nps };
    items.push({ id: line.tieIn, kind: 'tieIn', spec: own, position: [0, yM, g.portAxisZM], ...still });
  }
  return items;
}
