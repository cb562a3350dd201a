import type { ActionKind } from '../rig/index.ts';
import type { Felt, Reaction, Story } from './fault.ts';

/*
 * Pieces of work and answers that several faults, or one with much to say, ask about.
 */

/** The saddle, which the job needs twice, goes on. */
export const saddleOn: Felt = (f, { job }) =>
  f.fact === 'piece.placed' && job.kit.some((k) => k.id === f.piece && k.kind === 'saddle');

/** The cup gasket goes over the cut tee: from then on the coupling is out of sight. */
export const gasketOn: Felt = (f, { job }) =>
  f.fact === 'piece.placed' && job.kit.some((k) => k.id === f.piece && k.kind === 'cupGasket');

const inHole: ReadonlySet<ActionKind> = new Set<ActionKind>([
  'clean', 'chain.hook', 'tensioner.turn', 'piece.place', 'piece.remove', 'plug.turn', 'tee.turn', 'rod.move', 'rod.turn',
  'innerRod.turn', 'valve.turn', 'pump.stroke', 'branch.cut', 'tee.trim', 'keeper.pull',
]); // prettier-ignore

/** Hands work on in the hole. */
export const handsInHole: Felt = (f) => f.fact === 'done' && inHole.has(f.action.kind);

/** The valve is turned shut on what fell out of the socket. */
export const valveShutOn: Felt = (f, { facts }, at) =>
  f.fact === 'valve.turned' &&
  f.openRad < 1 &&
  facts.slice(0, at).some((before) => before.fact === 'load.dropped');

/** What fell out of the socket was taken hold of again. */
export const liftedAgain: Reaction = ({ facts }, noticedAt) =>
  facts.some((f, i) => i > noticedAt && f.fact === 'rod.engaged');

/** The stopper that fell was fetched up again. */
export const fetched: Reaction = ({ facts }, noticedAt) =>
  facts.some((f, i) => i > noticedAt && f.fact === 'rod.engaged' && f.with === 'stopper');

/** The bore had been stopped, and the bleed had gone quiet over it. */
export function stoppedBefore({ facts }: Story, at: number): boolean {
  const squeezed = facts.findIndex((f) => f.fact === 'stopper.squeezed' && f.inBore);
  const left = facts.findIndex((f) => f.fact === 'stopper.left');
  if (squeezed < 0 || squeezed > at || (left >= 0 && left < at)) return false;
  return facts.slice(squeezed, at).some((f) => f.fact === 'bleed.quiet');
}

/** The closing plug goes hard before it has the turns it needs. */
export const hardEarly: Felt = (fact, { facts, limits }, at) => {
  if (fact.fact !== 'closing.turned' || fact.crossed || fact.torqueNm < limits.closingNm[0]) return false;
  const handTight = facts
    .slice(0, at)
    .find((f) => f.fact === 'closing.turned' && f.torqueNm > HAND_TIGHT_NM && f.engagedTurns > 0);
  if (handTight?.fact !== 'closing.turned') return false;
  return fact.engagedTurns - handTight.engagedTurns < limits.closingPastHandTurns[0] - TURN_SLACK;
};

/** From here a thread feels hand-tight, N·m, and what a hand may be off by, turns. */
const HAND_TIGHT_NM = 3;
const TURN_SLACK = 0.4;
