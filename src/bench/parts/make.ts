import type { HoldPointSetting, Limits } from '../../core/procedure/index.ts';
import type { Job, MainSize, TeeSize } from '../../core/rig/index.ts';
import { SCENARIO_VERSION, type Scenario } from '../../core/scenario/index.ts';
import { expectedHissS } from './hiss.ts';
import { usualKit } from './kit.ts';
import type { Site } from './sites.ts';
import { breakNmOfTee, limitsOfTee } from './teeSizes.ts';

/** What a new exercise is begun from. */
export interface Beginning {
  readonly id: string;
  readonly mainNps: MainSize;
  readonly teeSize: TeeSize;
  readonly site: Site;
  readonly seed: number;
  /** Title, brief and order in the words of whoever makes it. */
  readonly words: Pick<Scenario, 'title' | 'brief' | 'workOrder'>;
}

/** A sound abandonment at a ready site, complete, so that whatever is changed afterwards changes something that works. */
export function makeExercise({ id, mainNps, teeSize, site, seed, words }: Beginning): Scenario {
  const job = jobAt(mainNps, teeSize, site);
  return {
    format: 'stillmain-scenario',
    version: SCENARIO_VERSION,
    id,
    ...words,
    kind: 'job',
    family: 'sound',
    work: 'abandon',
    seed,
    job,
    faults: [],
    prelude: [],
    holdPoints: usualHoldPoints.map((one) => ({ ...one })),
    limits: { ...usualLimits, ...limitsOfTee[teeSize], expectedHissS: expectedHissS(job) },
    weights: { holdPoints: 40, gasControl: 20, technique: 15, kit: 15, abnormal: 10 },
    cutScore: 80,
    intendedEnding: 'complete',
    timeLimitS: null,
  };
}

function jobAt(mainNps: MainSize, teeSize: TeeSize, place: Site): Job {
  const breakNm = breakNmOfTee[teeSize];
  return {
    workpiece: {
      mainNps,
      teeSize,
      boss: 'sound',
      scaleUnderChainsM: 0.0006,
      boreScale: false,
      plugBreakNm: breakNm.plug,
      teeBreakNm: breakNm.tee,
      plugLeakCdAM2: 0,
      wrap: 'coalTar',
      wallSound: true,
    },
    system: {
      mainPressureGaugePa: place.mainGaugePa,
      ratingGaugePa: 413685.4,
      orderPressureGaugePa: place.mainGaugePa,
      temperatureK: place.temperatureK,
      service: {
        nps: teeSize,
        lengthM: place.serviceM,
        curbShut: true,
        curbPassingCdAM2: 0,
        beyondCurbGaugePa: 0,
      },
    },
    site: place.site,
    kit: [...usualKit(teeSize)],
  };
}

/** Hold points of an abandonment with the weights of the shipped ones. */
const usualHoldPoints: readonly HoldPointSetting[] = [
  { id: 'H1', critical: true, weight: 4 },
  { id: 'H2', critical: true, weight: 5 },
  { id: 'H3', critical: false, weight: 2 },
  { id: 'H4', critical: true, weight: 5 },
  { id: 'H5', critical: false, weight: 3 },
  { id: 'H6', critical: true, weight: 4 },
  { id: 'H7', critical: true, weight: 4 },
  { id: 'H8', critical: false, weight: 2 },
  { id: 'H9', critical: true, weight: 5 },
  { id: 'H10', critical: false, weight: 3 },
  { id: 'H11', critical: true, weight: 5 },
  { id: 'H12', critical: true, weight: 4 },
];

/** Limits of the shipped exercises that go with no size (operator's settings, assumed). */
const usualLimits: Omit<Limits, keyof (typeof limitsOfTee)['1'] | 'expectedHissS'> = {
  orderShare: 0.1,
  secondGaugePa: 6894.8,
  lowStageGaugePa: [13789.5, 34473.8],
  overMainPa: 34473.8,
  settleS: 60,
  holdS: 300,
  dropPa: 3447.4,
  seatTestPa: 6894.8,
  riseS: 120,
  risePa: 3447.4,
  proofAgeS: 3600,
  puffPa: 3447.4,
  quietS: 60,
  shutS: 120,
  hissShare: 0.5,
  stopAgeS: 1800,
  lookQuietS: 60,
  stopperTiltRad: 0.0524,
  stopperBelowPortM: [0.001, 0.008],
  keeperGapM: [0.001, 0.005],
  teeMovedTurns: 0.0056,
  biteTurns: 0.125,
  noFlowS: 60,
  closingHandTurns: 4,
  leakWatchS: 60,
  fluidWatchS: 10,
  crackShutS: 20,
  smallServiceM3: 0.002,
  workLelShare: 0.1,
  oxygenShare: [0.195, 0.235],
  tensionerEvenTurns: 0.25,
};
