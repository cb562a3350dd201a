import type { MainSize, TeeSize } from '../../src/core/rig/index.ts';
import { PSI_PA } from '../../src/core/units/index.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import { blowDownS } from './blowDown.ts';
import { shipped } from './shipped.ts';

/** Outside diameters: half couplings of class 3000, mm (ASME B16.11), and mains, in (ASME B36.10M, 6 to 12 from memory). */
const couplingMm = { '3/4': 35, '1': 44, '1-1/4': 57 } as const;
const mainIn = {
  '1-1/4': 1.66, '1-1/2': 1.9, '2': 2.375, '3': 3.5, '4': 4.5, '6': 6.625, '8': 8.625, '10': 10.75, '12': 12.75,
} as const; // prettier-ignore

export const tees: readonly TeeSize[] = ['3/4', '1', '1-1/4'];
export const mains: readonly MainSize[] = ['1-1/4', '1-1/2', '2', '3', '4', '6', '8', '10', '12'];

/** A coupling wider than this share of the main's outside cannot be welded on (the handbook's rule, assumed). */
const WIDEST_SHARE = 0.95;

/** Whether a main has room for the coupling of a tee, by the published outside diameters. */
export const hasRoom = (main: MainSize, tee: TeeSize): boolean =>
  couplingMm[tee] / 25.4 <= WIDEST_SHARE * mainIn[main];

export const pairings: readonly (readonly [MainSize, TeeSize])[] = mains.flatMap((main) =>
  tees.filter((tee) => hasRoom(main, tee)).map((tee) => [main, tee] as const),
);

/** A shipped exercise of each tee size: kit, card and limits are taken from it. */
const ofSize: Readonly<Record<TeeSize, string>> = {
  '3/4': 'abandon-34in-tee-on-12in-main',
  '1': 'abandon-1in-tee-on-10in-main',
  '1-1/4': 'abandon-114in-tee-on-6in-main',
};

/** A job of this tee on this main at this pressure, psig, with 60 ft of service and a sound boss. */
export function paired(main: MainSize, tee: TeeSize, psig: number): Scenario {
  const scenario = shipped(ofSize[tee]);
  const { job, limits } = scenario;
  job.workpiece.mainNps = main;
  job.workpiece.boss = 'sound';
  job.system.mainPressureGaugePa = psig * PSI_PA;
  job.system.orderPressureGaugePa = psig * PSI_PA;
  job.system.service.lengthM = 18.288;
  limits.expectedHissS = blowDownS(tee, psig, 18.288);
  return scenario;
}
