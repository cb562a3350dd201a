import { describe, expect, it } from 'vitest';
import { faultIds, faults, targetOf, type FaultId, type Story } from '../../src/core/faults/index.ts';
import { conditionsIn, type Condition } from '../../src/core/judge/conditions.ts';
import { layOutCase } from '../../src/core/judge/case.ts';
import type { Action } from '../../src/core/rig/index.ts';
import type { RunState } from '../../src/core/run/index.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import { exercise, play, steadyRun, stepsOf, type Step } from '../judge/play.ts';
import { rowOf } from './table.ts';

const steps = stepsOf(steadyRun().entries);
const soundScore = play(exercise(), steps).assessment.score;
const step = (action: Action): Step => ({ action, gapS: 0 });

function planted(id: FaultId): Scenario {
  return exercise((scenario) => {
    scenario.faults = [{ fault: id, when: rowOf(id).when }];
  });
}

/** The model work up to the point of that fault's row, then its checks, then more. */
function workedUpTo(id: FaultId, more: readonly Action[] = []): readonly Step[] {
  const { upTo, checks } = rowOf(id);
  const end = steps.findIndex((one, i) => upTo(one.action, i));
  expect(end).toBeGreaterThan(0);
  return [...steps.slice(0, end), ...[...checks, ...more].map(step)];
}

function metIn(run: RunState, id: FaultId): Condition | undefined {
  return conditionsIn(layOutCase(run)).find((condition) => condition.id === id);
}

/** Whether any fact of a sound run would pass for the fault. */
function takenFor(id: FaultId, run: RunState): readonly string[] {
  const { job, limits } = run.scenario;
  const story: Story = {
    facts: run.facts,
    job,
    on: targetOf(faults[id], job, undefined),
    severity: faults[id].severity?.usual ?? 1,
    struckAtS: 0,
    limits,
    held: () => true,
  };
  return run.facts.filter((fact, i) => faults[id].feltBy(fact, story, i)).map((fact) => fact.fact);
}

describe.each(faultIds)('%s', (id) => {
  const answer = (): readonly Action[] => {
    const on = targetOf(faults[id], exercise().job, undefined);
    return rowOf(id).answer ?? [{ kind: 'piece.reject', piece: on ?? '' }];
  };

  it('is noticed by a crew that does its checks, and by none where it is not', () => {
    expect(metIn(play(planted(id), workedUpTo(id)).run, id)?.noticedAt ?? null).not.toBeNull();
    expect(takenFor(id, play(exercise(), workedUpTo(id)).run)).toEqual([]);
  });

  it('answered rightly leaves the heading whole', () => {
    const { assessment, dropped, run } = play(planted(id), workedUpTo(id, answer()));
    expect(dropped.filter((action) => answer().includes(action))).toEqual([]);
    expect(metIn(run, id)?.answered).toBe(true);
    expect(assessment.findings.filter((f) => f.heading === 'abnormal')).toEqual([]);
    expect(assessment.headings.abnormal.got).toBe(assessment.headings.abnormal.of);
  });

  it('ignored costs what it is called by', () => {
    const { assessment } = play(planted(id), rowOf(id).ignore(steps));
    const named = assessment.findings.filter((f) => f.heading === 'abnormal' && f.items.includes(id));
    expect(named).not.toEqual([]);
    expect(assessment.score).toBeLessThan(soundScore);
  });
});
