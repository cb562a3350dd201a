import { endingOf, stopIsSupported } from '../ending.ts';
import { workOf } from '../../rig/index.ts';
import type { Case, Draft, Rule } from '../case.ts';
import type { HoldJudgement } from '../holdPoints.ts';
import { defaultWeights } from '../case.ts';

/** Hold points missed, signed falsely, lapsed, or never come to. */
export const holdPointRules: Rule = (judged) => {
  const excused = stopIsSupported(judged);
  const counted = judged.holds.filter((hold) => !hold.given && !(excused && hold.outcome === 'notReached'));
  const whole = counted.reduce((sum, hold) => sum + hold.weight, 0);
  if (whole <= 0) return [];
  return counted.flatMap((hold) => {
    const points = (defaultWeights.holdPoints * hold.weight) / whole;
    return hold.outcome === 'held' || hold.outcome === 'misled'
      ? []
      : [draftOf(hold, points, judged.run.clockS)];
  });
};

function draftOf(hold: HoldJudgement, points: number, endS: number): Draft {
  return {
    id: idOf(hold),
    atS: hold.atS ?? endS,
    points,
    critical: hold.critical,
    holdPoint: hold.id,
    numbers: numbersOf(hold),
    items: hold.wanting.map((one) => one.id),
    causes: [hold.id, ...hold.wanting.map((one) => `${hold.id}.${one.id}`)],
  };
}

/** The numbers of every wanting requirement, each under its requirement's name: `quiet.quietS`. */
function numbersOf(hold: HoldJudgement): Record<string, number> {
  const numbers: Record<string, number> = { weight: hold.weight };
  for (const one of hold.wanting) {
    for (const [name, value] of Object.entries(one.numbers)) numbers[`${one.id}.${name}`] = value;
  }
  return numbers;
}

function idOf(hold: HoldJudgement): Draft['id'] {
  if (hold.outcome === 'false') return 'holdFalse';
  if (hold.outcome === 'notReached') return 'holdNotReached';
  return hold.voided ? 'holdVoided' : 'holdMissed';
}

/** Ends that no points can mend: a stop left unsafe, or a job called complete that is not. */
export const endingRules: Rule = (judged) => {
  const { clockS } = judged.run;
  const ending = endingOf(judged);
  const open = openToHole(judged);
  if (ending === 'complete' && judged.scenario.kind === 'drill') {
    return open.length === 0
      ? []
      : [{ id: 'stoppedUnsafe', atS: clockS, points: 6, critical: true, items: open, causes: ['ending'] }];
  }
  if (ending === 'complete') {
    const lost = judged.facts.some((f) => f.fact === 'stopper.dropped' && f.into === 'main');
    const items = [...undone(judged), ...(lost ? ['stopperInMain'] : [])];
    if (items.length === 0) return [];
    return [{ id: 'completedUndone', atS: clockS, points: 6, critical: true, items, causes: ['ending'] }];
  }
  if (ending === 'referred' && open.length > 0) {
    return [{ id: 'stoppedUnsafe', atS: clockS, points: 6, critical: true, items: open, causes: ['ending'] }];
  }
  return [];
};

/** What a job called complete still lacks. */
function undone({ job, facts, run: { rig } }: Case): readonly string[] {
  const work = workOf(job);
  const cut = rig.branch.cut === 'through';
  const rigLeftOn = rig.saddle.on === 'board' ? [] : ['rigLeftOn'];
  if (work === 'abandon') {
    return [
      ...(rig.closing.at === 'coupling' && rig.tee.at !== 'coupling' ? [] : ['couplingNotClosed']),
      ...(cut ? [] : ['notDisconnected']),
      ...(rig.branch.capped ? [] : ['serviceNotCapped']),
      ...rigLeftOn,
    ];
  }
  const relit = facts.some((f) => f.fact === 'site.done' && f.task === 'relight');
  return [
    ...(rig.renewal.plug.at === 'tee' ? [] : ['newPlugNotIn']),
    ...(rig.line.tieIn === null ? ['notJoined'] : []),
    ...(work === 'reconnect' || rig.branch.capped ? [] : ['serviceNotCapped']),
    ...(relit ? [] : ['notRelit']),
    ...rigLeftOn,
  ];
}

/** What still joins the live main to the open hole, or would at the next touch, when the crew walks away. */
function openToHole({ run: { rig } }: Parameters<Rule>[0]): readonly string[] {
  const hasTop = rig.stack.some((p) => ['testHead', 'sightCap', 'rodBarrel', 'valveCap'].includes(p.kind));
  const valveOn = rig.stack.some((p) => p.kind === 'isolationValve');
  const contained = rig.saddle.on !== 'board' && valveOn && (hasTop || rig.valve.openRad === 0);
  const mainOpen =
    rig.tee.at === 'coupling'
      ? rig.plug.at !== 'tee' && rig.keeper.at !== 'tee' && rig.renewal.plug.at !== 'tee'
      : rig.closing.at !== 'coupling';
  const stopped = rig.tee.at === 'coupling' && rig.stopper.at === 'set' && rig.keeper.at === 'tee';
  const branchOpen = rig.line.tieIn === null && rig.branch.cut !== 'whole';
  const stubOpen = rig.tee.at === 'coupling' && branchOpen && !stopped && !contained;
  return [...(mainOpen && !contained ? ['mainOpen'] : []), ...(stubOpen ? ['stubOpen'] : [])];
}
