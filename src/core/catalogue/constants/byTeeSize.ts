import type { TeeSize } from '../sizes.ts';
import { assumed, computed, type Constant } from './constant.ts';
import { sealConstants } from './seals.ts';
import { stopperConstants } from './stopper.ts';
import { volumeConstants } from './volumes.ts';

type ByTeeSize = Readonly<Record<TeeSize, Constant>>;

/** Numbers of the model that go with the tee's size. NPS 1 is the size the other constants are told for. */
export const constantsByTeeSize = {
  seatRingEndLoadM: {
    '3/4': assumed([32.5e-3, 'm', 31e-3, 34e-3], 'middle of the rubber, 28.5 to 36.3 mm'),
    '1': sealConstants.seatRingEndLoadM,
    '1-1/4': assumed([49e-3, 'm', 47e-3, 51e-3], 'middle of the rubber, 44.5 to 53.8 mm'),
  },
  seatRingStiffnessNPerM: {
    '3/4': computed([1.27e6, 'N/m', 0.9e6, 1.8e6], '397 mm² of rubber to the 531 of NPS 1', 'its rubber'),
    '1': sealConstants.seatRingStiffnessNPerM,
    '1-1/4': computed([2.3e6, 'N/m', 1.6e6, 3.2e6], '718 mm² of rubber to the 531 of NPS 1', 'its rubber'),
  },
  saddleNetSecondM3: {
    '3/4': computed([0.37e-3, 'm³', 0.26e-3, 0.48e-3], 'a tee of 61 mL where NPS 1 has 100', 'second saddle'),
    '1': volumeConstants.saddleNetSecondM3,
    '1-1/4': computed(
      [0.21e-3, 'm³', 0.15e-3, 0.27e-3],
      'a tee of 183 mL where NPS 1 has 100',
      'second saddle',
    ),
  },
  nptMakeUpTorquePerTurnNm: {
    '3/4': assumed([35, 'N·m', 17, 53], 'torque a turn past hand-tight, NPS 3/4'),
    '1': sealConstants.nptMakeUpTorquePerTurnNm,
    '1-1/4': assumed([60, 'N·m', 30, 90], 'torque a turn past hand-tight, NPS 1-1/4'),
  },
  stopperTearNm: {
    '3/4': assumed([3, 'N·m', 2.4, 3.6], 'torque that tears the rubber, NPS 3/4'),
    '1': stopperConstants.stopperTearNm,
    '1-1/4': assumed([9, 'N·m', 7, 11], 'torque that tears the rubber, NPS 1-1/4'),
  },
} as const satisfies Readonly<Record<string, ByTeeSize>>;
