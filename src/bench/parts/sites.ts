import { constants } from '../../core/catalogue/index.ts';
import type { Job } from '../../core/rig/index.ts';
import { fahrenheitK, FOOT_M, psi } from '../../core/units/index.ts';

/** A place to work at, ready to build on. All figures assumed: invented bays of the training yard. */
export interface Site {
  readonly id: 'meadow' | 'roadside' | 'deepHole' | 'longService' | 'winter' | 'highMain';
  readonly mainGaugePa: number;
  readonly serviceM: number;
  readonly temperatureK: number;
  readonly site: Job['site'];
}

const open: Job['site'] = {
  holeVolumeM3: 2,
  holeDepthM: 1.3,
  freshAirM3PerS: constants.holeAirLightM3PerS.value,
  hoseDrawnBack: 0.05,
  ignitionSource: false,
  lelFraction: 0.05,
  alarms: [0.1, 0.2],
};
const mild = { serviceM: 60 * FOOT_M, temperatureK: fahrenheitK(60), site: open };

export const sites: readonly Site[] = [
  { id: 'meadow', mainGaugePa: psi(35), ...mild },
  {
    id: 'roadside',
    mainGaugePa: psi(30),
    ...mild,
    site: { ...open, holeVolumeM3: 2.8, holeDepthM: 1.5, hoseDrawnBack: 0.1 },
  },
  {
    id: 'deepHole',
    mainGaugePa: psi(30),
    ...mild,
    site: { ...open, holeVolumeM3: 4, holeDepthM: 1.7, freshAirM3PerS: 0.012 },
  },
  { id: 'longService', mainGaugePa: psi(35), ...mild, serviceM: 200 * FOOT_M },
  { id: 'winter', mainGaugePa: psi(40), ...mild, temperatureK: fahrenheitK(25) },
  { id: 'highMain', mainGaugePa: psi(55), ...mild },
];
