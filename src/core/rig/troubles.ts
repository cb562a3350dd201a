import * as v from 'valibot';
import type { SiteTask } from './actions.ts';
import type { RigState } from './state.ts';

/**
 * What is amiss with the ground, the air, the service or the main beyond the pieces themselves. Each has a size in its
 * own unit and a time since when; what the crew does later puts some of them right.
 */
export const troubleKinds = [
  /** Share of the hole's air that water takes up. */
  'water',
  /** Share of the fresh air that no longer reaches the bottom. */
  'stillAir',
  /** Somebody or something with a flame or spark came near: 1. */
  'ignition',
  'public',
  'workerDown',
  /** Share by which cold rubber is stiffer. */
  'cold',
  /** Share of the hose's bore that a kink shuts. */
  'hoseKinked',
  /** Share of what leaves the hose that is drawn back into the hole. */
  'hoseDrifted',
  /** Volts between main and service. */
  'strayVolts',
  /** How far the service springs when it is parted, m. */
  'springs',
  /** A second customer draws by this effective opening, m². */
  'secondHouse',
  'wrongService',
  /** Share by which the detector shows too little; 1 shows nothing. */
  'detectorUnfit',
  /** Range of the gauge on the main, Pa: far too coarse for what it reads. */
  'gaugeUnfit',
  /** Change of temperature of the chamber's air still to come, K. */
  'drift',
  /** Gas that comes into the hole from elsewhere, mol/s. */
  'otherLeak',
  'noOdour',
  'liquid',
  /** A plastic or copper pipe inside the old steel one. */
  'insert',
  /** Gas space of a branch nobody knew of, m³. */
  'unknownBranch',
  /** A device in the branch that shuts when gas is drawn; its bleed-by, m². */
  'excessFlow',
  /** Coupling's weld leaks, or leaks once the tee's bite is broken, m². */
  'weldLeak',
  'weldWeep',
  /** Opening a weld bead under the gasket leaves, m². */
  'weldBead',
  /** Torque at which a wrench slips on the plug's square, N·m. */
  'plugSlips',
  /** How far the main is out of round, m. */
  'outOfRound',
  /** Only found, never planted as such: scale under the chains, and a curb valve that lets gas by. */
  'scale',
  'curbPassing',
  /** Opening that the coupling's worn thread leaves past a closing plug, m². */
  'threadWorn',
] as const;
export type TroubleKind = (typeof troubleKinds)[number];

export const troubleSchema = v.strictObject({
  what: v.picklist(troubleKinds),
  sinceS: v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(864000)),
  size: v.pipe(v.number(), v.finite(), v.minValue(-1e7), v.maxValue(1e7)),
});

/** The task that puts it right, where one does. */
const putRightBy: Readonly<Partial<Record<TroubleKind, SiteTask>>> = {
  water: 'pumpOutWater',
  stillAir: 'ventilate',
  ignition: 'ignitionCleared',
  public: 'clearPublic',
  workerDown: 'retrieveByLine',
  springs: 'supportPipe',
  detectorUnfit: 'changeDetector',
  gaugeUnfit: 'changeGauge',
};

/** How great a trouble is now, in its own unit; 0 where there is none or it has been put right since. */
export function troubleSize(rig: RigState, what: TroubleKind): number {
  const { troubles } = rig.job;
  if (troubles === undefined) return 0;
  for (let i = troubles.length - 1; i >= 0; i -= 1) {
    const one = troubles[i];
    if (one.what !== what) continue;
    return (putRightAtS(rig, what) ?? -1) >= one.sinceS ? 0 : one.size;
  }
  return 0;
}

function putRightAtS(rig: RigState, what: TroubleKind): number | undefined {
  if (what === 'hoseKinked' || what === 'hoseDrifted') return rig.site.hoseLedAtS;
  const task = putRightBy[what];
  if (task !== undefined) return rig.site.done[task];
  return what === 'weldBead' && rig.site.cleaned.weldBead ? Infinity : undefined;
}

function present(rig: RigState, among: readonly TroubleKind[]): readonly TroubleKind[] {
  return rig.job.troubles === undefined ? [] : among.filter((what) => troubleSize(rig, what) !== 0);
}

const around: readonly TroubleKind[] = [
  'water', 'stillAir', 'ignition', 'public', 'workerDown', 'cold', 'drift', 'hoseDrifted',
]; // prettier-ignore

/** What a look round the hole and its edge shows. */
export function seenAround(rig: RigState): readonly TroubleKind[] {
  return present(rig, around);
}

/** What a look along the hose to its end shows. */
export function seenOnHose(rig: RigState): readonly TroubleKind[] {
  return present(rig, ['hoseKinked', 'hoseDrifted']);
}

const turnsUp: Readonly<Partial<Record<SiteTask, readonly TroubleKind[]>>> = {
  traceAtMain: ['wrongService'],
  traceAtMeter: ['wrongService', 'secondHouse'],
  ignitionCleared: ['ignition', 'public'],
  supportPipe: ['springs'],
  measureVolts: ['strayVolts'],
};

/** What a task brings to light as it is done. */
export function turnedUpBy(rig: RigState, task: SiteTask): readonly TroubleKind[] {
  if (task === 'checkFarFeed' && rig.job.system.service.curbPassingCdAM2 > 0) return ['curbPassing'];
  return present(rig, turnsUp[task] ?? []);
}

/** Scale under the chains from which an eye sees that it will be crushed, m (assumed). */
export const THICK_SCALE_M = 0.001;

/** What the main's wall shows under the chains. */
export function seenOnWall(rig: RigState): readonly TroubleKind[] {
  const thick = !rig.site.cleaned.pipe && rig.job.workpiece.scaleUnderChainsM > THICK_SCALE_M;
  return thick ? ['scale', ...present(rig, ['outOfRound'])] : present(rig, ['outOfRound']);
}

/** A flame, spark or engine near enough to set gas alight. */
export function ignitionNear(rig: RigState): boolean {
  const found = rig.job.site.ignitionSource && rig.site.done.ignitionCleared === undefined;
  return found || troubleSize(rig, 'ignition') > 0 || troubleSize(rig, 'public') > 0;
}

/** Gas space of the hole, m³: less where water stands in it. */
export function holeVolumeM3(rig: RigState): number {
  return rig.job.site.holeVolumeM3 * (1 - troubleSize(rig, 'water'));
}

/** Share of what leaves the hose outside the hole that is drawn back into it. */
export function hoseDrawnBack(rig: RigState): number {
  return Math.max(rig.job.site.hoseDrawnBack, troubleSize(rig, 'hoseDrifted'));
}

/** Fresh air at the bottom of the hole without a blower, m³/s. */
export function freshAirM3PerS(rig: RigState): number {
  return rig.job.site.freshAirM3PerS * (1 - troubleSize(rig, 'stillAir'));
}
