import { forceConstants } from './constants/forces.ts';
import { gasConstants } from './constants/gases.ts';
import { openingConstants } from './constants/openings.ts';
import { sealConstants } from './constants/seals.ts';
import { senseConstants } from './constants/senses.ts';
import { stopperConstants } from './constants/stopper.ts';
import { volumeConstants } from './constants/volumes.ts';

export type { Constant, ConstantSource } from './constants/constant.ts';

/** Every number of the model in one place, SI, each with its range and its source or the word assumed. */
export const constants = {
  ...gasConstants,
  ...volumeConstants,
  ...openingConstants,
  ...sealConstants,
  ...stopperConstants,
  ...forceConstants,
  ...senseConstants,
} as const;

export type ConstantName = keyof typeof constants;
