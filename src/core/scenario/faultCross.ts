import { faults, jobAtStart, type FaultPlanted } from '../faults/index.ts';
import type { Problem } from './problem.ts';
import type { Scenario } from './schema.ts';

/** Whether every planted fault can be planted so: its severity, the piece it sits on, and what sets it off. */
export function faultProblems({ faults: planted, job }: Scenario): Problem[] {
  return planted.flatMap((one, i) => [
    ...severity(one, `faults[${i}].severity`),
    ...piece(one, job, `faults[${i}].on`),
    ...trigger(one, `faults[${i}].when.trigger`),
  ]);
}

function severity({ fault, severity: asked }: FaultPlanted, where: string): Problem[] {
  const range = faults[fault].severity;
  if (asked === undefined) return [];
  if (range === null) return [{ where, says: `The fault ${fault} has no degrees.` }];
  if (asked >= range.low && asked <= range.high) return [];
  return [
    { where, says: `The severity of ${fault} lies between ${range.low} and ${range.high}; it is ${asked}.` },
  ];
}

function piece({ fault, on }: FaultPlanted, job: Scenario['job'], where: string): Problem[] {
  const { targets } = faults[fault];
  if (targets.length === 0)
    return on === undefined ? [] : [{ where, says: `The fault ${fault} sits on no piece of the kit.` }];
  const fitting = job.kit.filter((entry) => targets.includes(entry.kind));
  if (on === undefined ? fitting.length > 0 : fitting.some((entry) => entry.id === on)) return [];
  const kinds = targets.join(', ');
  return [{ where, says: `The fault ${fault} sits on one of ${kinds}, and the kit has none of that name.` }];
}

function trigger({ fault, when }: FaultPlanted, where: string): Problem[] {
  const { triggers } = faults[fault];
  if (triggers.includes(when.trigger)) return [];
  return [
    { where, says: `The fault ${fault} is set off by ${triggers.join(', ')}; not by ${when.trigger}.` },
  ];
}

/** The exercise as its kit stands with every fault of the start in it: a stamp that lies leaves a piece too few. */
export function withStartingFaults(scenario: Scenario): Scenario {
  return { ...scenario, job: jobAtStart(scenario.job, scenario.faults) };
}
