import { describe, expect, it } from 'vitest';
import type { FaultId, Trigger, TriggerCondition } from '../../src/core/faults/index.ts';
import { drive, steady } from '../../src/core/hands/index.ts';
import { judge } from '../../src/core/judge/index.ts';
import { exercise } from '../judge/play.ts';

const start: Trigger = { trigger: 'start' };
const when = (condition: TriggerCondition): Trigger => ({ trigger: 'condition', condition });
const time = (atS: number): Trigger => ({ trigger: 'time', atS });

/** What befalls a crew in the middle of its work, and what a good one makes of it. */
const cases: readonly (readonly [FaultId, Trigger, 'complete' | 'referred' | 'isolated'])[] = [
  ['hoseKinked', when('plugFree'), 'complete'],
  ['hoseKinked', when('teeFree'), 'complete'],
  ['hoseDrifts', when('plugFree'), 'complete'],
  ['hoseDrifts', time(3000), 'complete'],
  ['workerDown', when('plugFree'), 'complete'],
  ['looseJoint', when('headAtMain'), 'referred'],
  ['looseJoint', when('keeperIn'), 'complete'],
  ['gasketBlows', when('teeFree'), 'isolated'],
  ['mainFalling', when('boreStopped'), 'complete'],
  ['mainFalling', time(6000), 'complete'],
  ['plugPassing', start, 'referred'],
  ['weldLeaks', start, 'referred'],
  ['otherLeak', start, 'referred'],
  ['otherLeak', time(4000), 'referred'],
  ['otherLeak', when('serviceCut'), 'referred'],
];

describe('a steady crew that is told of nothing', () => {
  it.each(cases)('loses nothing by %s, %o, and ends %s', (fault, trigger, ending) => {
    const scenario = exercise((s) => {
      s.faults = [{ fault, when: trigger }];
      s.intendedEnding = ending;
    });
    const { entries, run } = drive(scenario, steady);
    expect(run.struck).toHaveLength(1);
    const assessment = judge(scenario, { entries, endS: run.clockS });
    expect(assessment.findings).toEqual([]);
    expect([assessment.verdict, assessment.ending, assessment.score]).toEqual(['pass', ending, 100]);
  });
});
