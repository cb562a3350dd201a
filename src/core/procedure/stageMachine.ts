import { createMachine, transition } from 'xstate';
import { workOf, type Fact, type HoldPointId, type Job } from '../rig/index.ts';
import { kindOf } from './recall.ts';
import { stages, type StageId } from './types.ts';

/**
 * Where the work has come to. One flat machine that only goes forward: a crew that goes back to prove again is
 * still in the later stage. Each milestone leads to its stage from any earlier one, because nothing is blocked.
 */
const machine = createMachine({
  id: 'stages',
  initial: 's1',
  states: Object.fromEntries(
    stages.map((stage, i) => [
      stage,
      { on: Object.fromEntries(stages.slice(i + 1).map((later) => [later, later])) },
    ]),
  ),
});

/** The stage after a milestone; a milestone of an earlier stage changes nothing. */
export function nextStage(from: StageId, milestone: StageId): StageId {
  const key = `${from} ${milestone}`;
  const before = led.get(key);
  if (before !== undefined) return before;
  const after = stageAfter(from, milestone);
  led.set(key, after);
  return after;
}

/** Where the machine has led so far: a run is replayed far oftener than its machine changes. */
const led = new Map<string, StageId>();

function stageAfter(from: StageId, milestone: StageId): StageId {
  const [snapshot] = transition(machine, machine.resolveState({ value: from }), { type: milestone });
  return stages.find((stage) => stage === snapshot.value) ?? from;
}

const signatures: Readonly<Partial<Record<HoldPointId, StageId>>> = {
  H1: 's2',
  H2: 's4',
  H3: 's6',
  H5: 's7',
  H6: 's8',
  H8: 's9',
  H9: 's10',
  H11: 's12',
  R2: 'r3',
  R3: 'r4',
  R4: 'r5',
  R5: 'r6',
  R6: 's12',
};

/** The milestone this fact is, if it is one: the stage it opens. */
export function milestoneOf(
  fact: Fact,
  job: Job,
  context: { readonly teeOut: () => boolean },
): StageId | null {
  switch (fact.fact) {
    case 'signed':
      return signatures[fact.holdPoint] ?? null;
    case 'piece.placed':
      return placedMilestone(kindOf(job, fact.piece));
    case 'renewal.turned':
      return 'r2';
    case 'testSet.joined':
      return fact.to === 'line' ? 'r3' : null;
    case 'newPlug.turned':
      return 'r5';
    case 'riser.turned':
      return 'r6';
    case 'plug.turned':
      return 's2';
    case 'plug.free':
      return 's4';
    case 'piece.removed':
      if (kindOf(job, fact.piece) !== 'rodBarrel' || !context.teeOut()) return null;
      return workOf(job) === 'abandon' ? 's11' : 'r2';
    case 'stopper.squeezed':
      return fact.inBore ? 's6' : null;
    case 'keeper.turned':
      return 's7';
    case 'branch.cut':
      return 's8';
    case 'tee.free':
      return 's10';
    case 'ended':
      return 'done';
    default:
      return null;
  }
}

function placedMilestone(kind: string | null): StageId | null {
  if (kind === 'testHead') return 's3';
  if (kind === 'sightCap') return 's5';
  if (kind === 'cupGasket') return 's9';
  if (kind === 'tieIn') return 'r4';
  return null;
}
