import { constants } from '../../core/catalogue/index.ts';
import { FUEL_GAS, nozzleCurve, nozzleMassFlowKgPerS } from '../../core/physics/index.ts';
import { serviceVolumeM3, type Job } from '../../core/rig/index.ts';
import { ATM_PA, GAS_CONSTANT, PSI_PA } from '../../core/units/index.ts';

/** Share of its gas that is let out in one step of the sum. */
const STEP_SHARE = 0.002;

/**
 * How long the bleed hisses while the stopped service empties, s: chamber and service by the model's own nozzle, at the
 * site's temperature, from the ordered pressure down to 1 psi. The tee's own barrel, under a hundredth of it, is left out.
 */
export function expectedHissS(job: Job): number {
  const { orderPressureGaugePa, temperatureK } = job.system;
  const volumeM3 = constants.wholeFirstM3.value + serviceVolumeM3(job);
  const boreM = constants.bleedDiameterM.value;
  const cdAM2 = (constants.bleedDischarge.value * Math.PI * boreM * boreM) / 4;
  const curve = nozzleCurve(FUEL_GAS.heatCapacityRatio);
  const { molarMassKgPerMol } = FUEL_GAS;
  let upstreamAbsPa = ATM_PA + orderPressureGaugePa;
  let atS = 0;
  while (upstreamAbsPa > ATM_PA + PSI_PA) {
    const kgPerS = nozzleMassFlowKgPerS(
      curve,
      { cdAM2, upstreamAbsPa, downstreamAbsPa: ATM_PA },
      { molarMassKgPerMol, temperatureK },
    );
    const paPerS = ((kgPerS / molarMassKgPerMol) * GAS_CONSTANT * temperatureK) / volumeM3;
    const stepPa = upstreamAbsPa * STEP_SHARE;
    atS += stepPa / paPerS;
    upstreamAbsPa -= stepPa;
  }
  return Math.round(atS * 10) / 10;
}
