import { assumed, computed, published } from './constant.ts';

/** Openings and leaks, as effective areas (discharge coefficient times area). */
export const openingConstants = {
  bleedDiameterM: assumed([3.0e-3, 'm', 2e-3, 5e-3], 'bore of the bleed cock'),
  bleedDischarge: assumed([0.7, '-', 0.6, 0.85], 'discharge coefficient of the bleed'),
  ventDiameterM: assumed([2.0e-3, 'm', 1.5e-3, 3e-3], 'bore of the test-head vent'),
  ventDischarge: assumed([0.7, '-', 0.6, 0.85], 'discharge coefficient of the vent'),
  reliefDiameterM: assumed([6e-3, 'm', 4e-3, 8e-3], 'bore of the test-head relief, full open'),
  reliefLiftGaugePa: assumed([455054, 'Pa', 434370, 475738], 'relief lifts at rating and a tenth: 66 psig'),
  reliefFullGaugePa: assumed([475738, 'Pa', 455054, 496422], 'relief is full open, 69 psig'),
  checkSpringPa: assumed([1000, 'Pa', 300, 3000], 'drop at which a check valve is full open'),
  boreDischarge: published(
    [0.61, '-', 0.6, 0.85],
    'sharp-edged opening, Weisbach; a real tee passes about 0.80',
    'discharge coefficient of an open bore',
  ),
  goodJointCdAM2: published(
    [5e-14, 'm²', 1e-14, 1.2e-13],
    'below the bubble limit of ASTM E515, 1e-4 std cm³/s at 35 psig',
    'a good joint: no bubble',
  ),
  bubbleCdAM2: published(
    [1.2e-13, 'm²', 1e-14, 1.2e-13],
    'ASTM E515, 1e-4 std cm³/s at 35 psig',
    'smallest leak whose bubbles show',
  ),
  weepingJointCdAM2: assumed([2e-11, 'm²', 1e-12, 1e-10], 'a joint that passes the gauge and still bubbles'),
  passLimitCdAM2: computed(
    [2.2e-10, 'm²', 1.7e-10, 2.9e-10],
    '0.1 psi/min in the first chamber',
    'pass limit',
  ),
  nickedORingCdAM2: assumed([9e-10, 'm²', 3e-10, 5e-9], 'nicked O-ring, at 35 psig'),
  grittyRingCdAM2: assumed([2.2e-9, 'm²', 1e-9, 1e-8], 'grit under the seat ring'),
  hairOnGasketCdAM2: assumed([2e-8, 'm²', 1e-8, 1e-7], 'hair or pinch at the cup gasket'),
  oneSidedChainCdAM2: assumed([3e-7, 'm²', 5e-8, 2e-6], 'saddle drawn down on one side'),
  wrongRingCdAM2: assumed([6e-6, 'm²', 1e-6, 2e-5], 'seat ring of another size'),
  valvePassingSlightCdAM2: assumed([1e-8, 'm²', 3e-9, 3e-8], 'isolation valve passing, slight'),
  valvePassingBadCdAM2: assumed([3e-7, 'm²', 1e-7, 1e-6], 'isolation valve passing, bad'),
  glandWeepingCdAM2: assumed([5e-9, 'm²', 1e-9, 2e-8], 'rod gland weeping'),
  stopperWeepCdAM2: assumed([1e-8, 'm²', 3e-9, 3e-8], 'stopper that weeps'),
  stopperWornCdAM2: assumed([5e-8, 'm²', 2e-8, 1e-7], 'worn stopper'),
  stopperSmallCdAM2: assumed([2e-4, 'm²', 1e-4, 3e-4], 'stopper one size small: the open ring round it'),
  plugNoSealantCdAM2: assumed([2e-8, 'm²', 5e-9, 5e-8], 'closing plug made up without sealant'),
  plugCrossedCdAM2: assumed([3e-7, 'm²', 1e-7, 5e-7], 'closing plug crossed in its thread'),
  threadSlackPerTurnM: published(
    [6.9e-5, 'm', 5.67e-5, 6.9e-5],
    'ASME B1.20.1 taper, NPS 1: pitch/32 radially a turn, an upper bound',
    'gap a turn of a taper thread backed off',
  ),
  threadSlotLengthM: assumed([17e-3, 'm', 14e-3, 19e-3], 'length of the slot along a thread backed off'),
  slotDischarge: assumed([0.61, '-', 0.5, 0.8], 'discharge coefficient of a crack opened wide'),
} as const;
