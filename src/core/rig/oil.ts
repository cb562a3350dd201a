import { exp } from '../units/index.ts';
import type { OilPlace } from './actions.ts';
import type { RigState } from './state.ts';

/** Share of an old bite that penetrating oil takes away in the end, and the time it soaks in, s (both assumed). */
const OIL_LOOSENS_SHARE = 0.4;
const OIL_SOAKS_S = 600;

/** Torque that breaks the old bite of plug or tee now, N·m: less once oil has had time. */
export function biteNm(rig: RigState, at: OilPlace, atS: number): number {
  const { plugBreakNm, teeBreakNm } = rig.job.workpiece;
  const dryNm = at === 'plug' ? plugBreakNm : teeBreakNm;
  const oiledAtS = rig.site.oiledAtS[at];
  if (oiledAtS === undefined) return dryNm;
  return dryNm * (1 - OIL_LOOSENS_SHARE * (1 - exp(-Math.max(0, atS - oiledAtS) / OIL_SOAKS_S)));
}
