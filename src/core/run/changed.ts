import type { RunState } from './types.ts';

/**
 * The run with some of it changed. Field by field in one order, instead of spreading the run wherever it changes: runs
 * then all have one layout in memory, which a whole job is a tenth faster for.
 */
export function changed(run: RunState, to: Partial<RunState>): RunState {
  return {
    scenario: to.scenario === undefined ? run.scenario : to.scenario,
    rig: to.rig === undefined ? run.rig : to.rig,
    struck: to.struck === undefined ? run.struck : to.struck,
    network: to.network === undefined ? run.network : to.network,
    gas: to.gas === undefined ? run.gas : to.gas,
    sinceS: to.sinceS === undefined ? run.sinceS : to.sinceS,
    agedS: to.agedS === undefined ? run.agedS : to.agedS,
    markS: to.markS === undefined ? run.markS : to.markS,
    ledger: to.ledger === undefined ? run.ledger : to.ledger,
    air: to.air === undefined ? run.air : to.air,
    ear: to.ear === undefined ? run.ear : to.ear,
    procedure: to.procedure === undefined ? run.procedure : to.procedure,
    facts: to.facts === undefined ? run.facts : to.facts,
    clockS: to.clockS === undefined ? run.clockS : to.clockS,
    busyUntilS: to.busyUntilS === undefined ? run.busyUntilS : to.busyUntilS,
    actions: to.actions === undefined ? run.actions : to.actions,
    throughputMol: to.throughputMol === undefined ? run.throughputMol : to.throughputMol,
    closure: to.closure === undefined ? run.closure : to.closure,
  };
}
