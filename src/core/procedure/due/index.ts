import type { Action, HoldPointId } from '../../rig/index.ts';
import { firstChamber } from '../proof.ts';
import { stages, type StageId } from '../types.ts';
import { closingCoupling, drawingTee, handingBack } from './closing.ts';
import { partingService, sealingOnCoupling } from './parting.ts';
import { proving } from './proving.ts';
import type { DueReason } from './reasons.ts';
import { sealingOnTee } from './seating.ts';
import { referral, settingUp } from './setUp.ts';
import { drawingPlug, lockingStop, lookingDown, stoppingBore } from './stopping.ts';
import { offer, viewOf, waitFor, type DueReadings, type DueRun, type DueView, type Offer } from './view.ts';

export { dueReasons, type DueReason } from './reasons.ts';
export type { DueReadings, DueRun } from './view.ts';

/** What is due next: an action the hand could do now, or a time to wait. */
export interface Due {
  readonly stage: StageId;
  readonly holdPoint: HoldPointId | null;
  readonly why: DueReason;
  readonly action: Action | null;
  /** Seconds to wait, where waiting is due. */
  readonly waitS: number | null;
}

const advice: Readonly<Record<StageId, (view: DueView) => Generator<Offer>>> = {
  s1: settingUp,
  s2: sealingOnTee,
  s3: (view) => proving(view, 'H2', firstChamber),
  s4: drawingPlug,
  s5: lookingDown,
  s6: stoppingBore,
  s7: lockingStop,
  s8: partingService,
  s9: sealingOnCoupling,
  s10: drawingTee,
  s11: closingCoupling,
  s12: handingBack,
  done: standingBy,
};

/** Share of the lower explosive limit at which everybody goes, whatever is due. */
const LEAVE_LEL_SHARE = 0.2;
/** How long to stand off before the detector is asked again, s. */
const OUT_S = 30;

/**
 * The next thing due in a run, for a coach. `could` says what a hand could do at this moment, so that nothing is
 * advised that the rig would refuse; `readings` are what the instruments show now. It decides nothing.
 */
export function due(
  run: DueRun,
  could: (action: Action) => boolean = () => true,
  readings: DueReadings | null = null,
): Due | null {
  if (run.rig.ending !== null) return null;
  const view = viewOf(run, could, readings);
  if (drillIsDone(run)) return dueOf(run.procedure.stage, offer('finish', { kind: 'finish' }));
  const from = stages.indexOf(run.procedure.stage);
  for (const each of [gasAlarm, referral]) {
    const urgent = firstGood(each(view), could);
    if (urgent) return dueOf(run.procedure.stage, urgent);
  }
  for (const stage of stagesFrom(view, from)) {
    const good = firstGood(advice[stage](view), could);
    if (good) return dueOf(stage, good);
  }
  return dueOf(run.procedure.stage, offer('standBy', { kind: 'listen' }));
}

/** A drill asks for its own hold points and for nothing after the last of them. */
function drillIsDone({ scenario, procedure: { holds } }: DueRun): boolean {
  const open = scenario.holdPoints.some(({ id }) => holds[id] === 'open');
  return scenario.kind === 'drill' && !open;
}

/** From the stage the work has come to; set-up and tee seal again while their hold points are open. */
function stagesFrom(view: DueView, from: number): readonly StageId[] {
  const { holds } = view.procedure;
  const start =
    holds.H1 === 'open' ? 0 : holds.H2 === 'open' && view.rig.plug.at === 'tee' ? 1 : earliest(view, from);
  return stages.slice(start);
}

/** Goes back over what the stage's own milestone may have overtaken. */
function earliest(view: DueView, from: number): number {
  const { rig } = view;
  if (rig.tee.at !== 'coupling') return Math.max(9, Math.min(from, rig.tee.at === 'rod' ? 9 : 10));
  if (rig.plug.at !== 'out' && rig.keeper.at === 'board') return 3;
  if (rig.stopper.at !== 'set') return Math.min(from, view.procedure.holds.H3 === 'open' ? 4 : 5);
  if (rig.keeper.at !== 'tee') return Math.min(from, view.procedure.holds.H5 === 'open' ? 5 : 6);
  if (rig.branch.cut !== 'through') return Math.min(from, view.procedure.holds.H6 === 'open' ? 6 : 7);
  return view.procedure.holds.H9 === 'open' ? Math.min(from, 7) : Math.max(8, Math.min(from, 9));
}

function firstGood(offers: Generator<Offer>, could: (action: Action) => boolean): Offer | null {
  for (const each of offers) if (each.action === null || could(each.action)) return each;
  return null;
}

function dueOf(stage: StageId, { why, holdPoint, action, waitS }: Offer): Due {
  return { stage, holdPoint, why, action, waitS };
}

/** Out at the alarm, and no work until it falls silent. */
function* gasAlarm(view: DueView): Generator<Offer> {
  let ringing = false;
  let left = false;
  for (const f of view.facts) {
    if (f.fact === 'gas.alarm') {
      ringing = f.step === 2 || f.lelShare >= LEAVE_LEL_SHARE;
      if (!ringing) left = false;
    }
    if (f.fact === 'done' && f.action.kind === 'leaveHole') left = true;
  }
  if (ringing && !left) yield offer('leaveHole', { kind: 'leaveHole' });
  if (ringing) yield waitFor('standBy', OUT_S);
}

function* standingBy(): Generator<Offer> {
  yield offer('standBy', { kind: 'listen' });
}
