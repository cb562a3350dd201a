import type { Limits } from '../../core/procedure/index.ts';
import type { TeeSize } from '../../core/rig/index.ts';

/** Limits a crew works to that go with the tee's size, by the kit's card (as the shipped exercises have them). */
export type LimitsOfTee = Pick<Limits, 'stopperFirmNm' | 'keeperNm' | 'closingPastHandTurns' | 'closingNm'>;

export const limitsOfTee: Readonly<Record<TeeSize, LimitsOfTee>> = {
  '3/4': { stopperFirmNm: [1.2, 1.6], keeperNm: 100, closingPastHandTurns: [1.3, 2.2], closingNm: [45, 80] },
  '1': { stopperFirmNm: [2, 2.5], keeperNm: 135, closingPastHandTurns: [1.3, 2.2], closingNm: [60, 100] },
  '1-1/4': { stopperFirmNm: [4, 5], keeperNm: 180, closingPastHandTurns: [1.3, 1.65], closingNm: [78, 100] },
};

/** Torques that break an old plug's and an old tee's bite, N·m (assumed, a usual one of each size). */
export const breakNmOfTee: Readonly<Record<TeeSize, { readonly plug: number; readonly tee: number }>> = {
  '3/4': { plug: 170, tee: 180 },
  '1': { plug: 180, tee: 220 },
  '1-1/4': { plug: 210, tee: 260 },
};

/** How a size is written in the name of a piece: `1-1/4` as `114`. */
export const sizeInId = (nps: string): string => nps.replace(/[-/]/g, '');
