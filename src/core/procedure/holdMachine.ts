import { createMachine, transition } from 'xstate';
import { holdPointIds, type HoldPointId } from '../rig/index.ts';
import type { HoldState } from './types.ts';

/** What can befall a hold point: a signature, its withdrawal, or the guarded work begun. */
export type HoldEvent = 'sign' | 'withdraw' | 'begin';

/** One small machine a hold point; a signature may be withdrawn until the guarded work begins, then it is history. */
function buildHoldMachine(id: HoldPointId) {
  return createMachine({
    id,
    initial: 'open',
    states: {
      open: { on: { sign: 'signed', begin: 'missed' } },
      signed: { on: { withdraw: 'open', begin: 'passed' } },
      passed: {},
      missed: {},
    },
  });
}

const machines = new Map(holdPointIds.map((id) => [id, buildHoldMachine(id)]));

/** Where a hold point stands after an event. */
export function nextHold(id: HoldPointId, from: HoldState, event: HoldEvent): HoldState {
  const machine = machines.get(id);
  if (!machine) return from;
  const [snapshot] = transition(machine, machine.resolveState({ value: from }), { type: event });
  return isHoldState(snapshot.value) ? snapshot.value : from;
}

function isHoldState(value: unknown): value is HoldState {
  return value === 'open' || value === 'signed' || value === 'passed' || value === 'missed';
}
