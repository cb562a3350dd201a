import { assumed, computed, published } from './constant.ts';

/** What the rig, the service and the hole hold. */
export const volumeConstants = {
  rigBoreM: assumed([0.0762, 'm', 0.051, 0.08], 'bore of saddle, spools and ball'),
  rigMassKg: assumed([27, 'kg', 25, 30], 'mass of the whole rig: a lift for two or a hoist'),
  saddleNetFirstM3: assumed([0.4e-3, 'm³', 0.28e-3, 0.52e-3], 'saddle over the whole tee, net'),
  saddleNetSecondM3: assumed(
    [0.32e-3, 'm³', 0.22e-3, 0.42e-3],
    'saddle over the collar with the tee inside, net',
  ),
  valveBelowBallM3: assumed([0.26e-3, 'm³', 0.21e-3, 0.31e-3], 'isolation valve below its ball'),
  valveBallM3: assumed([0.35e-3, 'm³', 0.28e-3, 0.42e-3], 'bore of the ball'),
  valveAboveBallM3: assumed([0.26e-3, 'm³', 0.21e-3, 0.31e-3], 'isolation valve above its ball'),
  spoolLowerM3: computed([0.456e-3, 'm³', 0.43e-3, 0.48e-3], '100 mm of 76.2 mm bore', 'lower spool'),
  spoolUpperM3: computed([0.684e-3, 'm³', 0.65e-3, 0.72e-3], '150 mm of 76.2 mm bore', 'upper spool'),
  rodBarrelNetM3: assumed([1.02e-3, 'm³', 0.71e-3, 1.33e-3], 'rod barrel with the rod in it, net'),
  sightCapM3: assumed([0.1e-3, 'm³', 0.07e-3, 0.13e-3], 'sight cap'),
  testHeadM3: assumed([0.05e-3, 'm³', 0.035e-3, 0.065e-3], 'test head'),
  proofFirstM3: computed([1.32e-3, 'm³', 1.0e-3, 1.7e-3], 'sum of its parts', 'first chamber as proved'),
  proofSecondM3: computed([2.38e-3, 'm³', 1.8e-3, 3.0e-3], 'sum of its parts', 'second chamber as proved'),
  aboveBallBarrelM3: computed([1.28e-3, 'm³', 0.9e-3, 1.7e-3], 'sum', 'above the ball, rod barrel on'),
  aboveBallSpoolBarrelM3: computed(
    [1.96e-3, 'm³', 1.5e-3, 2.5e-3],
    'sum',
    'above the ball, spool and barrel on',
  ),
  wholeFirstM3: computed([2.29e-3, 'm³', 1.7e-3, 3.0e-3], 'sum', 'whole first chamber with the barrel on'),
  wholeSecondM3: computed(
    [3.35e-3, 'm³', 2.5e-3, 4.3e-3],
    'sum',
    'whole second chamber with spool and barrel on',
  ),
  serviceLengthM: assumed([18.288, 'm', 3, 61], 'length of the service line, 60 ft'),
  serviceBoreM: published(
    [0.02664, 'm', 0.02096, 0.03508],
    'ASME B36.10M, NPS 1 schedule 40',
    'service bore',
  ),
  pipeRoughnessM: published(
    [4.572e-5, 'm', 1.5e-5, 1.5e-4],
    'commercial steel, 0.0018 in, as the sizing tables take it',
    'roughness of steel pipe',
  ),
  holeVolumeM3: assumed([2.0, 'm³', 1.2, 4], 'excavation, 1.5 × 1.0 × 1.3 m'),
  holeAirStillM3PerS: assumed([0.002, 'm³/s', 0.001, 0.004], 'effective fresh air, still day'),
  holeAirLightM3PerS: assumed([0.02, 'm³/s', 0.01, 0.04], 'effective fresh air, light air'),
  holeAirBreezyM3PerS: assumed([0.05, 'm³/s', 0.03, 0.08], 'effective fresh air, breeze'),
  holeAirBlowerM3PerS: assumed([0.12, 'm³/s', 0.08, 0.2], 'effective fresh air, blower running'),
  holeMixingFactor: assumed(
    [1, '-', 0.2, 1],
    'share of the fresh air that mixes; 1 where the flow is already effective',
  ),
  hoseReentrainedFraction: assumed([0.05, '-', 0, 0.2], 'share of the bled gas drawn back into the hole'),
} as const;
