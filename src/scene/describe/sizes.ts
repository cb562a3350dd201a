import type { RigState } from '../../core/rig/index.ts';
import { rodRange } from '../../core/catalogue/index.ts';
import { leaned, type Stand } from './stand.ts';
import type { SizeView } from './view.ts';

/** Dimension lines stand off the axis by these, one beside another, on the side away from the service, m. */
const LINES_AT_M = {
  bossToPort: 0.042,
  seatToBoss: 0.042,
  travel: 0.026,
  tipOffset: 0.04,
  stackHeight: 0.15,
};

/** The lengths a crew measures, and how far the rod has gone: between which heights, and where the line stands. */
export function sizeViews(rig: RigState, stand: Stand): SizeView[] {
  const { geometry: g } = stand;
  const views: SizeView[] = [];
  const size = (id: SizeView['id'], fromZM: number, toZM: number, atY: number) => {
    const at = (z: number) => leaned(stand, 0, -atY, z);
    const foot = (z: number) => leaned(stand, 0, 0, z);
    views.push({
      id,
      lengthM: Math.abs(toZM - fromZM),
      line: [at(fromZM), at(toZM)],
      feet: [foot(fromZM), foot(toZM)],
    });
  };
  if (rig.tee.at === 'coupling') {
    const lift = rig.tee.turnsBack * stand.pitchM;
    size('bossToPort', g.bossZM + lift, g.portUndersideZM + lift, LINES_AT_M.bossToPort);
    if (rig.saddle.on === 'tee' && stand.seatZM !== null) {
      size('seatToBoss', stand.seatZM, g.bossZM + lift, LINES_AT_M.seatToBoss);
    }
  }
  const barrel = stand.standing.find((s) => s.kind === 'rodBarrel');
  if (barrel && stand.seatZM !== null) {
    size('stackHeight', rodRange(barrel.seatZM).upZM, stand.seatZM, LINES_AT_M.stackHeight);
  }
  if (stand.rodZM !== null && stand.tipZM !== null) {
    if (rig.rod.travelM > 0) size('travel', stand.rodZM + rig.rod.travelM, stand.rodZM, LINES_AT_M.travel);
    if (stand.tipZM < stand.rodZM) size('tipOffset', stand.rodZM, stand.tipZM, LINES_AT_M.tipOffset);
  }
  return views;
}
