import { assumed, computed } from './constant.ts';

/** The bore stopper, NPS 1, and the torques of the other sizes. */
export const stopperConstants = {
  stopperBoreM: computed([26.6e-3, 'm', 24e-3, 27e-3], 'schedule-40 inside diameter', 'lower bore, NPS 1'),
  stopperFreeM: assumed([24.6e-3, 'm', 24.4e-3, 24.8e-3], 'stopper before squeezing'),
  stopperCoreM: assumed([8e-3, 'm', 6e-3, 9e-3], 'hole through the rubber for the inner rod'),
  stopperLengthM: assumed([20e-3, 'm', 18e-3, 22e-3], 'length of rubber before squeezing'),
  stopperShearModulusPa: assumed([1.2e6, 'Pa', 0.9e6, 1.6e6], 'shear modulus of the rubber'),
  stopperScrewM: assumed([8e-3, 'm', 8e-3, 8e-3], 'thread of the inner rod'),
  stopperNutFactor: assumed([0.25, '-', 0.18, 0.33], 'K of the inner rod thread and washer'),
  stopperFrictionDry: assumed([0.5, '-', 0.4, 0.8], 'rubber on dry bore'),
  stopperFrictionOily: assumed([0.2, '-', 0.15, 0.3], 'rubber on oily bore'),
  stopperSealMarginPa: assumed(
    [0.2e6, 'Pa', 0.1e6, 0.3e6],
    'wall stress over gas pressure that seals a clean bore',
  ),
  stopperSealMarginScaledPa: assumed([0.6e6, 'Pa', 0.4e6, 0.8e6], 'the same on a scaled bore'),
  stopperGapM: assumed([30e-6, 'm', 10e-6, 60e-6], 'gap under rubber that only just touches'),
  stopperFirmLowNm: assumed([2.0, 'N·m', 1.6, 2.3], 'firm, NPS 1, from'),
  stopperFirmHighNm: assumed([2.5, 'N·m', 2.2, 3.0], 'firm, NPS 1, to'),
  stopperTearNm: assumed([5, 'N·m', 4, 6], 'torque that tears the rubber, NPS 1'),
  stopperTorqueFeltNm: assumed([0.4, 'N·m', 0.2, 0.6], 'gland and rod drag added to what is felt turning'),
  relaxationPerDecade: assumed([0.1, '-', 0.05, 0.15], 'stress lost a tenfold of time'),
  relaxationFromS: assumed([10, 's', 5, 20], 'time from which relaxation counts'),
} as const;
