import type { Action, KitKind, RigState } from '../../core/rig/index.ts';

/** Work that shows where a thing is, by the thing's id; the picture looks where that work is done. */
const shownBy: Readonly<Record<string, Action>> = {
  look: { kind: 'look', at: 'coupling' },
  clean: { kind: 'clean', at: 'coupling' },
  measure: { kind: 'measure', what: 'seatToBoss' },
  chains: { kind: 'chain.hook', chain: 0, hooked: true },
  valve: { kind: 'valve.turn', angleRad: 0 },
  head: { kind: 'vent.turn', open: 0 },
  rod: { kind: 'rod.hold', held: true },
  bleed: { kind: 'bleed.turn', angleRad: 0 },
  plug: { kind: 'plug.turn', turns: 0, holdBack: true },
  stopper: { kind: 'innerRod.turn', turns: 0 },
  keeper: { kind: 'keeper.pull', torqueNm: 1, holdBack: true },
  branch: { kind: 'service.purge' },
  tee: { kind: 'tee.turn', turns: 0, holdBack: true },
  collar: { kind: 'collarBolt.turn', bolt: 0, turns: 0 },
  closing: { kind: 'tee.turn', turns: 0, holdBack: true },
};

/** Things whose place is a piece's own. */
const shownByPiece: Readonly<Record<string, KitKind>> = { seat: 'saddle' };

/** Where to look when hands go to a thing: as if this were being done there; null where it has no place on the rig. */
export function lookAtOf(thing: string, rig: RigState): Action | null {
  if (thing in shownBy) return shownBy[thing];
  if (!(thing in shownByPiece)) return null;
  const piece = Object.values(rig.kit).find(({ kind }) => kind === shownByPiece[thing]);
  return piece === undefined ? null : { kind: 'piece.place', piece: piece.id, holdBack: true };
}
