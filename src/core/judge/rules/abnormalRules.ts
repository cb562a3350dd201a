import type { Action } from '../../rig/index.ts';
import { defaultWeights, type Case, type Draft, type Rule } from '../case.ts';
import { conditionsIn, type Condition } from '../conditions.ts';
import { endingOf, endedAsIntended, stopIsSupported } from '../ending.ts';

/**
 * Abnormal conditions: noticed before the work they endanger, and answered rightly. Never how fast. With none in the
 * job the heading is full, unless the crew stopped a sound job for nothing it could have seen.
 */
export const abnormalRules: Rule = (judged) => [
  ...conditions(judged),
  ...wentOn(judged),
  ...workedInAlarm(judged),
  ...needlessStop(judged),
];

/**
 * Unnoticed where the work it endangers began before it showed; answered wrongly where it had shown and work went on, to
 * the end or until somebody was hurt.
 * A crew that stopped before is not blamed for what it then left undone.
 */
function conditions(judged: Case): readonly Draft[] {
  // what had shown itself before the takeover was for the crew before to answer
  const present = conditionsIn(judged).filter(
    ({ noticedAt }) => noticedAt === null || noticedAt >= judged.given.facts,
  );
  const share = defaultWeights.abnormal / present.length;
  const finished = ['complete', 'hurt'].includes(endingOf(judged));
  return present.flatMap((condition): Draft[] => {
    const { id, endangeredAt, noticedAt } = condition;
    const atS = judged.facts[endangeredAt ?? judged.facts.length - 1]?.atS ?? judged.run.clockS;
    const base = { atS, items: [id], causes: [`condition.${id}`, ...condition.causes] };
    if (endangeredAt !== null && (noticedAt === null || noticedAt > endangeredAt)) {
      return [{ id: 'abnormalNotNoticed', points: share, ...base }];
    }
    const wentOn = endangeredAt !== null || finished;
    if (noticedAt === null || condition.answered || !wentOn) return [];
    return [{ id: 'abnormalWrongReaction', points: share * 0.7, ...base }];
  });
}

/** Going on where the only right answer is to stop. */
function wentOn(judged: Case): readonly Draft[] {
  return conditionsIn(judged).flatMap((condition): Draft[] => {
    const id = criticalId(condition);
    if (id === null || condition.endangeredAt === null || condition.excused) return [];
    return [
      {
        id,
        atS: judged.facts[condition.endangeredAt].atS,
        points: 10,
        critical: true,
        numbers: condition.numbers,
        items: [condition.id],
        causes: [`condition.${condition.id}`],
      },
    ];
  });
}

function criticalId(condition: Condition): 'wentOnAboveRating' | 'wentOnBossBeyondUse' | null {
  if (condition.id === 'pressureAboveRating') return 'wentOnAboveRating';
  return condition.id === 'bossBeyondUse' ? 'wentOnBossBeyondUse' : null;
}

/** Seconds in which a crew may finish the movement of its hands after the high alarm. */
const FINISH_HAND_S = 15;
/** What may still be done under the high alarm: shut, look, tell, leave. */
const allowed: ReadonlySet<string> = new Set([
  'leaveHole', 'refer', 'main.isolate', 'valve.turn', 'bleed.turn', 'vent.turn', 'detector.read', 'listen', 'look', 'rod.hold',
  'withdraw',
]); // prettier-ignore

/** What is done away from the hole, to tell others and to keep fire off it. */
const awayFromHole: ReadonlySet<string> = new Set([
  'callGasControl', 'findShutoff', 'ignitionCleared', 'extinguisher', 'barricade', 'ventilate',
]); // prettier-ignore

function mayBeDone(action: Action): boolean {
  return allowed.has(action.kind) || (action.kind === 'site.do' && awayFromHole.has(action.task));
}

/**
 * The high alarm means out and upwind, people first; hands that work on are in the air that burns. Having left does
 * not clear the air: until the alarm falls back, work is work in it.
 */
function workedInAlarm(judged: Case): readonly Draft[] {
  let ringingS: number | null = null;
  let times = 0;
  let atS = 0;
  let lelShare = 0;
  for (const f of judged.facts) {
    if (f.fact === 'gas.alarm') {
      ringingS = f.step === 2 ? (ringingS ?? f.atS) : null;
      lelShare = f.step === 2 ? f.lelShare : lelShare;
    }
    if (f.fact !== 'done') continue;
    if (ringingS === null || f.atS - ringingS < FINISH_HAND_S || mayBeDone(f.action)) continue;
    if (times === 0) atS = f.atS;
    times += 1;
  }
  if (times === 0) return [];
  const points = Math.min(6, 2 + times);
  return [{ id: 'workedInAlarm', atS, points, numbers: { times, lelShare }, causes: ['workedInAlarm'] }];
}

function needlessStop(judged: Case): readonly Draft[] {
  const ending = endingOf(judged);
  if (ending !== 'referred' && ending !== 'isolated') return [];
  if (endedAsIntended(judged) || stopIsSupported(judged)) return [];
  return [{ id: 'needlessStop', atS: judged.run.clockS, points: defaultWeights.abnormal, causes: ['stop'] }];
}
