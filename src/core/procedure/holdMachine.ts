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

const states: readonly HoldState[] = ['open', 'signed', 'passed', 'missed'];
const events: readonly HoldEvent[] = ['sign', 'withdraw', 'begin'];

/** Where each machine leads, asked once: a run is replayed far oftener than its machines change. */
const leads = new Map(
  holdPointIds.map((id) => {
    const machine = buildHoldMachine(id);
    const after = (from: HoldState, event: HoldEvent): HoldState => {
      const [snapshot] = transition(machine, machine.resolveState({ value: from }), { type: event });
      return isHoldState(snapshot.value) ? snapshot.value : from;
    };
    return [
      id,
      new Map(states.flatMap((from) => events.map((event) => [`${from} ${event}`, after(from, event)]))),
    ];
  }),
);

/** Where a hold point stands after an event. */
export function nextHold(id: HoldPointId, from: HoldState, event: HoldEvent): HoldState {
  return leads.get(id)?.get(`${from} ${event}`) ?? from;
}

function isHoldState(value: unknown): value is HoldState {
  return value === 'open' || value === 'signed' || value === 'passed' || value === 'missed';
}
