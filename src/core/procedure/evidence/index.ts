import type { Fact, HoldPointId, Job } from '../../rig/index.ts';
import type { Limits } from '../settings.ts';
import { tell, type EvidenceItem, type Told } from '../told.ts';
import { ready } from './h01Ready.ts';
import { firstChamberProved } from './h02FirstChamber.ts';
import { boreSeen } from './h03BoreSeen.ts';
import { serviceStopped } from './h04ServiceStopped.ts';
import { stopperPlaced } from './h05StopperPlaced.ts';
import { stopLocked } from './h06StopLocked.ts';
import { deadAtCut } from './h07DeadAtCut.ts';
import { teeFits } from './h08TeeFits.ts';
import { secondChamberProved } from './h09SecondChamber.ts';
import { readyToOpen } from './h10ReadyToOpen.ts';
import { couplingClosed } from './h11CouplingClosed.ts';
import { handedBack } from './h12HandedBack.ts';
import { benchProved } from './r01BenchProved.ts';
import { newTeeIn } from './r02NewTeeIn.ts';
import { lineTested } from './r03LineTested.ts';
import { newTeeProved } from './r04NewTeeProved.ts';
import { newPlugIn } from './r05NewPlugIn.ts';
import { purged } from './r06Purged.ts';

/** What one hold point rests on at one moment. */
export interface Evidence {
  readonly met: boolean;
  readonly items: readonly EvidenceItem[];
}

const predicates: Readonly<Record<HoldPointId, (told: Told) => readonly EvidenceItem[]>> = {
  H1: ready,
  H2: firstChamberProved,
  H3: boreSeen,
  H4: serviceStopped,
  H5: stopperPlaced,
  H6: stopLocked,
  H7: deadAtCut,
  H8: teeFits,
  H9: secondChamberProved,
  H10: readyToOpen,
  H11: couplingClosed,
  H12: handedBack,
  R1: benchProved,
  R2: newTeeIn,
  R3: lineTested,
  R4: newTeeProved,
  R5: newPlugIn,
  R6: purged,
};

/** Requirements whose want makes a false or missed signature fail the run, where not all of a hold point's do. */
export const criticalItems: Readonly<Partial<Record<HoldPointId, readonly string[]>>> = {
  H1: ['mainPressure', 'secondGauge', 'supply', 'boss'],
  H12: [
    'fluid.closingPlug', 'fluid.newPlug', 'fluid.teeThread', 'fluid.tieIn', 'fluid.weld', 'fluid.cutEnd', 'disconnected',
    'purged', 'sealed', 'relit',
  ],
}; // prettier-ignore

/** Every requirement of every hold point, in the order it is judged: what words must exist for. */
export const evidenceItemIds: Readonly<Record<HoldPointId, readonly string[]>> = {
  H1: [
    'order', 'mainPressure', 'secondGauge', 'supply', 'boss', 'coupling', 'wall', 'wrap', 'bump', 'air', 'ignition',
    'extinguisher', 'exit', 'protection', 'hose', 'shutoff', 'contact', 'kit',
  ],
  H2: [
    'lowStage', 'atPressure', 'settled', 'held', 'noDrop', 'fresh', 'fluid.seat', 'fluid.valveJoint',
    'fluid.topJoint', 'seatTest', 'rise',
  ],
  H3: ['looked', 'clear'],
  H4: ['hissed', 'quiet', 'snuggedAgain', 'shutIn', 'noPuff', 'manometer', 'rodHeld', 'stayed'],
  H5: ['bled', 'looked', 'square', 'depth', 'dry', 'quiet'],
  H6: ['size', 'gap', 'torque', 'holdBack', 'marked', 'bled', 'fluid'],
  H7: ['traced', 'bonded', 'stopFresh', 'noFlow', 'air'],
  H8: ['gaugeRing', 'capped', 'gasket', 'atHand'],
  H9: [
    'riseBefore', 'lowStage', 'atPressure', 'settled', 'held', 'noDrop', 'fresh', 'fluid.seat', 'fluid.spoolJoint',
    'fluid.valveJoint', 'fluid.topJoint', 'seatTest', 'neverOver', 'keeperMark', 'ventedAway',
  ],
  H10: ['plug', 'spares', 'twoPeople', 'mainPressure', 'air'],
  H11: ['threads', 'turns', 'torque', 'notCrossed', 'quiet', 'shutIn', 'noPuff', 'square'],
  H12: [
    'fluid.closingPlug', 'fluid.weld', 'fluid.cutEnd', 'air.hole', 'air.beside', 'disconnected', 'purged', 'sealed',
    'coated', 'bondOff', 'record', 'fluid.newPlug', 'fluid.teeThread', 'fluid.tieIn', 'relit',
  ],
  R1: ['atPressure', 'held', 'noDrop', 'fluid'],
  R2: ['threads', 'turns', 'torque', 'notCrossed', 'heading', 'onward', 'quiet', 'shutIn', 'noPuff'],
  R3: ['alone', 'gasFree', 'atPressure', 'held', 'temperature', 'noDrop', 'fluid'],
  R4: [
    'lowStage', 'atPressure', 'settled', 'held', 'noDrop', 'fresh', 'fluid.seat', 'fluid.valveJoint',
    'fluid.spoolJoint', 'fluid.topJoint', 'seatTest', 'rise', 'cracked', 'teeMark',
  ],
  R5: ['turns', 'torque', 'notCrossed', 'quiet', 'shutIn', 'noPuff', 'square'],
  R6: ['fluid.tieIn', 'fluid.newPlug', 'fluid.teeThread', 'continuous', 'share', 'list'],
}; // prettier-ignore

/**
 * The evidence of a hold point at the moment of the last fact given: judged on what was read, seen and done, with
 * the scenario's limits, with age and with what voids it. Pure.
 */
export function evidence(holdPoint: HoldPointId, facts: readonly Fact[], limits: Limits, job: Job): Evidence {
  return evidenceOf(holdPoint, tell(facts, limits, job));
}

/** The same for facts already told. */
export function evidenceOf(holdPoint: HoldPointId, told: Told): Evidence {
  const items = predicates[holdPoint](told);
  return { met: items.every((one) => one.met), items };
}
