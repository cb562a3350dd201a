import { constants } from '../catalogue/index.ts';
import { advanceDetector, advanceExcavation, oxygenFraction } from '../physics/index.ts';
import { freshAirM3PerS, holeVolumeM3, troubleSize, type Job, type RigState } from '../rig/index.ts';
import { ATM_PA } from '../units/index.ts';
import type { HoleAir } from './types.ts';

const c = constants;

export const cleanAir: HoleAir = {
  gasFraction: 0,
  detectorLelShare: 0,
  overRange: false,
  peakLelShare: 0,
  overAlarmS: [0, 0],
  alarm: 0,
  lowOxygenS: 0,
};

/** What came into the hole in a time, mol. */
export interface IntoHole {
  readonly airMol: number;
  readonly gasMol: number;
}

/** Oxygen below which a person down there passes out, and how long it takes, s (assumed: 10 %, a minute). */
const FAINT_OXYGEN = 0.1;
export const FAINT_S = 60;

/** What a blower on the ground brings to the bottom of the hole, m³/s (assumed: a small trunked fan, 200 cfm). */
const BLOWER_M3_PER_S = 0.094;

/** The hole's air and its detector after a time of steady inflow; the alarm stays as it was (the run turns it). */
export function advanceAir(air: HoleAir, rig: RigState, into: IntoHole, durationS: number): HoleAir {
  const { site, system } = rig.job;
  const { box } = advanceExcavation(
    {
      volumeM3: holeVolumeM3(rig),
      gasFraction: air.gasFraction,
      freshAirM3PerS: freshAirM3PerS(rig) + (rig.site.done.ventilate === undefined ? 0 : BLOWER_M3_PER_S),
      mixingFactor: c.holeMixingFactor.value,
      temperatureK: system.temperatureK,
      pressureAbsPa: ATM_PA,
    },
    { airMol: into.airMol, gasMol: into.gasMol + troubleSize(rig, 'otherLeak') * durationS },
    durationS,
  );
  const gasFraction = box.gasFraction < 1e-15 ? 0 : box.gasFraction;
  const meanLel = (air.gasFraction + gasFraction) / 2 / site.lelFraction;
  const detector = advanceDetector(
    { sensedLel: air.detectorLelShare, overRange: air.overRange },
    durationS > 0 ? meanLel : 0,
    durationS,
    c.detectorLagS.value,
  );
  const share = gasFraction / site.lelFraction;
  const over = (step: 0 | 1): number => air.overAlarmS[step] + (share >= site.alarms[step] ? durationS : 0);
  return {
    gasFraction,
    detectorLelShare: durationS > 0 ? detector.sensedLel : air.detectorLelShare,
    overRange: detector.overRange,
    peakLelShare: Math.max(air.peakLelShare, share),
    overAlarmS: [over(0), over(1)],
    alarm: air.alarm,
    lowOxygenS:
      rig.site.inHole && oxygenFraction(gasFraction, c.airOxygenFraction.value) < FAINT_OXYGEN
        ? air.lowOxygenS + durationS
        : 0,
  };
}

/** Alarm step the detector's reading calls for; it falls silent a tenth below the step it rose at. */
export function alarmFor(air: HoleAir, job: Job): 0 | 1 | 2 {
  const [low, high] = job.site.alarms;
  const reading = air.detectorLelShare;
  if (air.overRange || reading >= high) return 2;
  if (air.alarm === 2 && reading >= high * 0.9) return 2;
  if (reading >= low) return 1;
  return air.alarm >= 1 && reading >= low * 0.9 ? 1 : 0;
}
