import { strike, strikesWith, type FaultPlanted } from '../faults/index.ts';
import type { Scenario } from '../scenario/index.ts';
import type { RunState, Struck } from './types.ts';

/** Faults that are there from the start, as struck when the run begins. */
export function struckAtStart({ faults }: Scenario): readonly Struck[] {
  return faults.flatMap((one, index) => (one.when.trigger === 'start' ? [{ index, atS: 0 }] : []));
}

/** Faults that strike with the facts a run has had since it held so many, or by their time. */
export function strikesNow(
  run: RunState,
  factsBefore: number,
  atS: number,
  snapS: number,
): readonly Struck[] {
  const { faults } = run.scenario;
  if (faults.length === run.struck.length || run.rig.ending !== null) return [];
  const fresh = run.facts.slice(factsBefore);
  return faults.flatMap((one, index) => {
    if (run.struck.some((done) => done.index === index)) return [];
    const due = byTime(one, atS + snapS) || strikesWith(one, fresh, run.rig, run.facts);
    return due ? [{ index, atS }] : [];
  });
}

function byTime({ when }: FaultPlanted, atS: number): boolean {
  return when.trigger === 'time' && when.atS <= atS;
}

/** The rig with these faults in it. */
export function struckRig(run: RunState, strikes: readonly Struck[]): RunState['rig'] {
  return strikes.reduce((rig, { index, atS }) => strike(rig, run.scenario.faults[index], atS), run.rig);
}

/** Times at which a fault is still to strike, s. */
export function strikeTimes({ scenario, struck }: RunState): readonly number[] {
  const { faults } = scenario;
  if (faults.length === struck.length) return none;
  return faults.flatMap(({ when }, index) =>
    when.trigger === 'time' && !struck.some((done) => done.index === index) ? [when.atS] : [],
  );
}

const none: readonly number[] = [];
