import { describe, expect, it } from 'vitest';
import type { FaultPlanted } from '../../src/core/faults/index.ts';
import {
  advance,
  attempt,
  begin,
  digestOf,
  type RecordEntry,
  type RunState,
} from '../../src/core/run/index.ts';
import { parseScenario, type Scenario } from '../../src/core/scenario/index.ts';
import { exercise, play, steadyRun, stepsOf } from '../judge/play.ts';

const withFaults = (...faults: FaultPlanted[]): Scenario =>
  exercise((scenario) => (scenario.faults = faults));

/** Plays entries, cutting the time between them at every so many seconds. */
function cut(scenario: Scenario, entries: readonly RecordEntry[], everyS: number): RunState {
  let run = begin(scenario);
  for (const { atS, action } of entries) {
    for (let s = run.clockS + everyS; s < atS; s += everyS) run = advance(run, s);
    const attempted = attempt(advance(run, atS), action);
    if ('hindrance' in attempted) throw new Error(attempted.hindrance);
    run = attempted.run;
  }
  return run;
}

describe('a planted fault', () => {
  it('strikes at its time, whichever way the time is cut, and the run stays the same to the last bit', () => {
    const scenario = withFaults(
      { fault: 'mainFalling', when: { trigger: 'time', atS: 1234.5 } },
      { fault: 'oRingNicked', on: 'isolationValve', when: { trigger: 'condition', condition: 'headAtMain' } },
      { fault: 'waterInHole', when: { trigger: 'action', action: 'chain.tap', nth: 2 } },
    );
    const { entries } = play(scenario, stepsOf(steadyRun().entries).slice(0, 130));
    const whole = cut(scenario, entries, 1e9);
    expect(whole.struck.map(({ index }) => index)).toEqual([0, 2, 1]);
    expect(whole.struck[0].atS).toBeCloseTo(1234.5, 6);
    for (const everyS of [0.7, 13]) expect(digestOf(cut(scenario, entries, everyS))).toBe(digestOf(whole));
  });

  it('is in the digest: two runs that differ only in what struck are two runs', () => {
    const first = withFaults({ fault: 'stillAir', when: { trigger: 'start' } });
    const second = withFaults({ fault: 'stillAir', when: { trigger: 'time', atS: 5 } });
    const [a, b] = [first, second].map((scenario) => advance(begin(scenario), 2));
    expect(a.struck).toEqual([{ index: 0, atS: 0 }]);
    expect(b.struck).toEqual([]);
    expect(advance(b, 6).struck).toEqual([{ index: 0, atS: 5 }]);
  });

  it('strikes with the second tap where the second is asked for, not with the first', () => {
    const scenario = withFaults({
      fault: 'waterInHole',
      when: { trigger: 'action', action: 'look', nth: 2 },
    });
    const look = { kind: 'look', at: 'wall' } as const;
    let run = begin(scenario);
    const struck: number[] = [];
    for (let i = 0; i < 3; i += 1) {
      const attempted = attempt(advance(run, run.busyUntilS), look);
      if ('hindrance' in attempted) throw new Error(attempted.hindrance);
      run = attempted.run;
      struck.push(run.struck.length);
    }
    expect(struck).toEqual([0, 1, 1]);
  });

  it('changes the rig and never a pressure in the moment it strikes', () => {
    const scenario = withFaults({
      fault: 'plugPassing',
      severity: 1e-6,
      when: { trigger: 'time', atS: 100 },
    });
    const before = advance(begin(scenario), 99.999);
    const after = advance(before, 100.001);
    expect(after.struck).toHaveLength(1);
    expect(after.gas.gasMol.map((mol, i) => Math.abs(mol - before.gas.gasMol[i]) < 1e-4)).not.toContain(
      false,
    );
  });
});

describe('an exercise that plants what cannot be', () => {
  const problem = (fault: unknown): string => {
    const parsed = parseScenario(exercise((scenario) => (scenario.faults = [fault as FaultPlanted])));
    return 'problems' in parsed ? `${parsed.problems[0].where}: ${parsed.problems[0].says}` : '';
  };

  it.each([
    [
      { fault: 'gritOnRing', severity: 1, when: { trigger: 'start' } },
      /^faults\[0\]\.severity: The severity of gritOnRing lies between/,
    ],
    [{ fault: 'bossPitted', severity: 1, when: { trigger: 'start' } }, /has no degrees/],
    [{ fault: 'gritOnRing', on: 'saddle', when: { trigger: 'start' } }, /^faults\[0\]\.on: .*seatRing/],
    [{ fault: 'waterInHole', on: 'saddle', when: { trigger: 'start' } }, /sits on no piece/],
    [{ fault: 'workerDown', when: { trigger: 'start' } }, /^faults\[0\]\.when\.trigger: /],
    [{ fault: 'mislabelledSeatRing', when: { trigger: 'start' } }, /^job\.kit: The job needs 1 seatRing/],
    [{ fault: 'bewitched', when: { trigger: 'start' } }, /^faults\[0\]\.fault: /],
  ])('%o is refused with the place', (fault, says) => {
    expect(problem(fault)).toMatch(says);
  });
});
