import type { Action, HoldPointId } from '../../rig/index.ts';
import { firstChamber } from '../proof.ts';
import { stagesOf, type StageId } from '../types.ts';
import { answering, lookingRound } from './amiss.ts';
import { closingCoupling, drawingTee, handingBack } from './closing.ts';
import { provingNewTee, purging, runningIn, settingNewPlug } from './renewing.ts';
import { provingOnBench, testingLine } from './testing.ts';
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
  r1: provingOnBench,
  r2: runningIn,
  r3: testingLine,
  r4: provingNewTee,
  r5: settingNewPlug,
  r6: purging,
  s12: handingBack,
  done: standingBy,
};

/** A blow that nobody has stopped for so long is stopped at the valves of the main, s (assumed). */
const STOP_AT_MAIN_S = 60;
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
  for (const each of [blowGoesOn, gasAlarm, referral, answering, lookingRound]) {
    const urgent = firstGood(each(view), could);
    if (urgent) return dueOf(run.procedure.stage, urgent);
  }
  for (const stage of stagesFrom(view)) {
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
function stagesFrom(view: DueView): readonly StageId[] {
  const own = stagesOf(view.job);
  const { holds, stage } = view.procedure;
  const sealing = holds.H2 === 'open' && view.rig.plug.at === 'tee';
  const start = holds.H1 === 'open' ? 's1' : sealing ? 's2' : earliest(view, own, stage);
  return own.slice(own.indexOf(start));
}

/** Goes back over what the stage's own milestone may have overtaken. */
function earliest(view: DueView, own: readonly StageId[], now: StageId): StageId {
  const { rig, procedure } = view;
  const { holds } = procedure;
  const notAfter = (stage: StageId): StageId => (own.indexOf(now) < own.indexOf(stage) ? now : stage);
  const notBefore = (stage: StageId, least: StageId): StageId =>
    own.indexOf(stage) < own.indexOf(least) ? least : stage;
  if (rig.renewal.at === 'coupling') return ofRenewal(view);
  if (rig.tee.at !== 'coupling') {
    const after = own[own.indexOf('s10') + 1];
    return notBefore(notAfter(rig.tee.at === 'rod' ? 's10' : after), 's10');
  }
  if (rig.plug.at !== 'out' && rig.keeper.at === 'board') return 's4';
  if (rig.stopper.at !== 'set') return notAfter(holds.H3 === 'open' ? 's5' : 's6');
  if (rig.keeper.at !== 'tee') return notAfter(holds.H5 === 'open' ? 's6' : 's7');
  if (rig.branch.cut !== 'through') return notAfter(holds.H6 === 'open' ? 's7' : 's8');
  return holds.H9 === 'open' ? notAfter('s8') : notBefore(notAfter('s10'), 's9');
}

/** What comes next once the new tee stands in the coupling. */
function ofRenewal({ rig, procedure: { holds } }: DueView): StageId {
  if (rig.saddle.on === 'coupling' || rig.collar.collar !== null || rig.collar.gasket !== null) return 'r2';
  if (rig.line.tieIn === null) return 'r3';
  if (holds.R4 === 'open') return 'r4';
  if (rig.renewal.plug.at !== 'tee' || rig.saddle.on !== 'board') return 'r5';
  return rig.site.done.relight === undefined ? 'r6' : 's12';
}

function firstGood(offers: Generator<Offer>, could: (action: Action) => boolean): Offer | null {
  for (const each of offers) if (each.action === null || could(each.action)) return each;
  return null;
}

function dueOf(stage: StageId, { why, holdPoint, action, waitS }: Offer): Due {
  return { stage, holdPoint, why, action, waitS };
}

/** Gas blows on and on: out of the hole, and the main shut where its valves are. */
function* blowGoesOn(view: DueView): Generator<Offer> {
  const blow = view.facts.findLast((f) => f.fact === 'blow.began' || f.fact === 'blow.ended');
  if (blow?.fact !== 'blow.began' || view.clockS - blow.atS < STOP_AT_MAIN_S) return;
  const { ringing, left } = alarmOf(view);
  if (ringing && !left) yield offer('leaveHole', { kind: 'leaveHole' });
  if (view.rig.site.done.findShutoff === undefined)
    yield offer('isolateMain', { kind: 'site.do', task: 'findShutoff' });
  yield offer('isolateMain', { kind: 'main.isolate' });
}

/** Out at the alarm, and no work until it falls silent. */
function* gasAlarm(view: DueView): Generator<Offer> {
  const { ringing, left } = alarmOf(view);
  if (ringing && !left) yield offer('leaveHole', { kind: 'leaveHole' });
  if (ringing) yield waitFor('standBy', OUT_S);
}

function alarmOf(view: DueView): { readonly ringing: boolean; readonly left: boolean } {
  let ringing = false;
  let left = false;
  for (const f of view.facts) {
    if (f.fact === 'gas.alarm') {
      ringing = f.step === 2 || f.lelShare >= LEAVE_LEL_SHARE;
      if (!ringing) left = false;
    }
    if (f.fact === 'done' && f.action.kind === 'leaveHole') left = true;
  }
  return { ringing, left };
}

function* standingBy(): Generator<Offer> {
  yield offer('standBy', { kind: 'listen' });
}
