import { assumed, computed, published } from './constant.ts';

/** Seat ring, chains, cup gasket, threads. */
export const sealConstants = {
  seatRingInnerM: assumed([35.5e-3, 'm', 35e-3, 36e-3], 'seat ring NPS 1, inner diameter'),
  seatRingOuterM: assumed([44e-3, 'm', 43e-3, 45e-3], 'seat ring NPS 1, outer diameter'),
  seatRingEndLoadM: assumed(
    [40e-3, 'm', 38e-3, 42e-3],
    'diameter gas pushes the saddle up on, first chamber',
  ),
  seatRingRubberM: assumed([4e-3, 'm', 3e-3, 5e-3], 'rubber of the seat ring, two layers of 2 mm'),
  seatRingStiffnessNPerM: assumed(
    [1.7e6, 'N/m', 1.2e6, 2.4e6],
    'stiffness of that rubber up to its metal stop',
  ),
  seatRingStopSqueeze: assumed([0.3, '-', 0.25, 0.35], 'squeeze at which metal meets metal'),
  seatingStressPa: published(
    [1.38e6, 'Pa', 1.0e6, 2.0e6],
    'ASME VIII-1 App. 2 Table 2-5.1, elastomer of 75 A and over, y 200 psi',
    'stress that seats the rubber',
  ),
  sealSqueezeSound: assumed([0.08, '-', 0.05, 0.12], 'squeeze that seals on a sound boss'),
  sealSqueezePitted: assumed([0.15, '-', 0.1, 0.2], 'squeeze that seals on a pitted boss'),
  gapSoundM: assumed([50e-6, 'm', 20e-6, 100e-6], 'gap under an unpressed ring, sound boss'),
  gapPittedM: assumed([200e-6, 'm', 100e-6, 400e-6], 'gap under an unpressed ring, pitted boss'),
  gapExponent: assumed([3, '-', 2, 4], 'how fast the gap closes with squeeze'),
  chainLegStiffnessNPerM: assumed([0.8e6, 'N/m', 0.5e6, 1.2e6], 'one chain leg with its tensioner'),
  tensionerAdvanceM: assumed(
    [3.908e-3, 'm', 3.9e-3, 3.92e-3],
    'take-up a turn, left and right 1/2-13 threads',
  ),
  tensionerDiameterM: assumed([12.7e-3, 'm', 12.7e-3, 12.7e-3], 'thread diameter of the tensioner'),
  nutFactor: published(
    [0.2, '-', 0.14, 0.26],
    'bolted-joint texts, dry steel, scatter 30 %',
    'K of T = K F d',
  ),
  chainLegOverloadN: assumed([4000, 'N', 3000, 5000], 'leg force that spoils a chain leg'),
  chainSpanM: assumed([0.12, 'm', 0.1, 0.15], 'distance between left and right chain legs'),
  tapCleanedM: assumed([0.1e-3, 'm', 0.05e-3, 0.2e-3], 'what tapping lets go on clean pipe'),
  tapScaledM: assumed([0.75e-3, 'm', 0.5e-3, 1.0e-3], 'what tapping lets go where scale crushes'),
  cupGasketEndLoadM: assumed(
    [83.6e-3, 'm', 76.2e-3, 91e-3],
    'diameter gas pushes the saddle up on, second chamber: middle of the flange, from the bore to its edge',
  ),
  cupGasketMargin: computed(
    [1.11, '-', 1.05, 1.25],
    '258 N a leg for 929 N of gas',
    'clamp over end load to stay seated',
  ),
  oRingStressPa: assumed([0.7e6, 'Pa', 0.4e6, 1.2e6], 'contact stress of an O-ring before pressure'),
  cupGasketStressPa: assumed([0.5e6, 'Pa', 0.3e6, 0.9e6], 'contact stress of the cup gasket before pressure'),
  nptMakeUpTorquePerTurnNm: assumed([45, 'N·m', 22, 68], 'torque a turn past hand-tight, NPS 1'),
  nptMakeUpTurns: assumed([1.7, '-', 1.3, 2.2], 'turns past hand-tight that seal with sealant'),
  oldThreadBreakNm: assumed([250, 'N·m', 160, 400], 'torque that breaks an old plug or tee loose'),
  oldThreadRunNm: assumed([25, 'N·m', 10, 40], 'torque that turns it once loose'),
  referBackBreakNm: assumed([300, 'N·m', 250, 350], 'torque at which the job is referred back'),
  rodTorqueLimitNm: assumed([100, 'N·m', 75, 100], 'most a crew gets through the rod'),
} as const;
