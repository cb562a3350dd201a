import { ATM_PA } from '../units/index.ts';
import type { Boundary, Cell, Link } from '../physics/index.ts';
import type { Job } from './job.ts';
import type { Sense } from './sense.ts';
import type { RigState } from './state.ts';

/*
 * What stands behind the main. Left out (or `fixed`) it stands still; by schedule its pressure runs straight from
 * point to point; behind a regulator it is a length of pipe of its own, fed by the regulator and drawn on by the street.
 */

type System = Job['system'];
type Regulator = Extract<NonNullable<System['main']>, { by: 'regulator' }>;

/** Places of a regulator-fed main that no hand reaches: the pipe before the regulator, and the street that draws gas. */
const supplyId = 'supply';
const streetDrawId = 'customers';
const mainId = 'main';

function regulatorOf({ main }: System): Regulator | null {
  return main?.by === 'regulator' ? main : null;
}

/** A straight piece of a schedule: where it begins, and how fast it runs. */
interface Run {
  readonly sinceS: number;
  readonly fromGaugePa: number;
  readonly paPerS: number;
  /** When the next piece begins, s; null where none does. */
  readonly untilS: number | null;
}

function runAt({ main, mainPressureGaugePa }: System, atS: number): Run {
  let sinceS = 0;
  let fromGaugePa = mainPressureGaugePa;
  for (const point of main?.by === 'schedule' ? main.points : []) {
    if (point.atS > atS) {
      const paPerS = (point.gaugePa - fromGaugePa) / (point.atS - sinceS);
      return { sinceS, fromGaugePa, paPerS, untilS: point.atS };
    }
    sinceS = point.atS;
    fromGaugePa = point.gaugePa;
  }
  return { sinceS, fromGaugePa, paPerS: 0, untilS: null };
}

/** True pressure of the main now, Pa gauge; 0 once it is isolated. */
export function mainGaugePa(rig: RigState, sense: Sense): number {
  if (rig.site.mainIsolated) return 0;
  const { system } = rig.job;
  return regulatorOf(system) === null ? scheduledGaugePa(system, sense.atS) : sense.gaugePa(mainId);
}

/** Pressure of a main that no regulator feeds at a time, Pa gauge. */
function scheduledGaugePa(system: System, atS: number): number {
  const { sinceS, fromGaugePa, paPerS } = runAt(system, atS);
  return paPerS === 0 ? fromGaugePa : fromGaugePa + paPerS * (atS - sinceS);
}

/** When the main next begins to run otherwise, s; null where it never does. */
export function mainTurnsAtS(rig: RigState, atS: number): number | null {
  return runAt(rig.job.system, atS).untilS;
}

/** The main as a place whose pressure the rig does not move, or what feeds it. */
export function mainBoundaries(rig: RigState, atS: number): Boundary[] {
  const { system, site } = { system: rig.job.system, site: rig.site };
  const regulator = regulatorOf(system);
  if (regulator !== null) {
    return [
      { id: supplyId, pressureAbsPa: ATM_PA + regulator.inletGaugePa, gasFraction: 1 },
      { id: streetDrawId, pressureAbsPa: ATM_PA, gasFraction: 1 },
    ];
  }
  if (site.mainIsolated) return [{ id: mainId, pressureAbsPa: ATM_PA, gasFraction: 1 }];
  const { sinceS, fromGaugePa, paPerS } = runAt(system, atS);
  const still: Boundary = { id: mainId, pressureAbsPa: ATM_PA + fromGaugePa, gasFraction: 1 };
  return [paPerS === 0 ? still : { ...still, ramp: { ratePaPerS: paPerS, sinceS } }];
}

/** The pipe behind a regulator, which holds gas of its own. */
export function mainCells(rig: RigState): Cell[] {
  const regulator = regulatorOf(rig.job.system);
  return regulator === null ? [] : [{ id: mainId, volumeM3: regulator.volumeM3 }];
}

/** Regulator, what creeps past it when it is shut, and what the street draws. */
export function mainLinks(rig: RigState): Link[] {
  const regulator = regulatorOf(rig.job.system);
  if (regulator === null || rig.site.mainIsolated) return [];
  const { setGaugePa, droopPa, wideOpenCdAM2, creepCdAM2, drawnCdAM2 } = regulator;
  return [
    {
      id: 'regulator',
      from: supplyId,
      to: mainId,
      law: 'regulator',
      cdAM2: wideOpenCdAM2,
      setAbsPa: ATM_PA + setGaugePa,
      bandPa: droopPa,
    },
    { id: 'creep', from: supplyId, to: mainId, law: 'orifice', cdAM2: creepCdAM2 },
    { id: 'drawn', from: streetDrawId, to: mainId, law: 'orifice', cdAM2: drawnCdAM2 },
  ];
}

/**
 * The job with its main made to move: from what it is at `atS` straight to `toGaugePa` in `overS` seconds, there to
 * stay. Behind a regulator the setting is turned instead, and the pipe follows as fast as it is fed and drawn on. A run
 * takes it on by `relay(run, {...run.rig, job}, atS)`, which lays the network out anew.
 */
export function withMainMoving(job: Job, atS: number, toGaugePa: number, overS: number): Job {
  const { system } = job;
  const regulator = regulatorOf(system);
  if (regulator !== null) {
    return { ...job, system: { ...system, main: { ...regulator, setGaugePa: toGaugePa } } };
  }
  const before = system.main?.by === 'schedule' ? system.main.points.filter((p) => p.atS < atS) : [];
  const now = { atS, gaugePa: scheduledGaugePa(system, atS) };
  const points = [...before, ...(atS > 0 ? [now] : []), { atS: atS + overS, gaugePa: toGaugePa }];
  return { ...job, system: { ...system, main: { by: 'schedule', points } } };
}
