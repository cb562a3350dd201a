import type { ActionKind } from '../../../core/rig/index.ts';
import type { BenchKey } from '../../words/en/index.ts';
import { word } from '../../words/word.svelte.ts';

/** Acts that are worth setting a fault off by: a hand knows when it has done them. */
const offered = [
  'plug.turn',
  'tee.turn',
  'tensioner.turn',
  'chain.hook',
  'piece.inspect',
  'piece.place',
  'piece.remove',
  'valve.turn',
  'vent.turn',
  'pump.stroke',
  'bleed.turn',
  'rod.move',
  'rod.turn',
  'innerRod.turn',
  'keeper.turn',
  'keeper.pull',
  'branch.cut',
  'tee.trim',
  'clean',
  'gauge.read',
  'detector.read',
  'leakFluid.apply',
  'look',
  'sign',
] as const satisfies readonly ActionKind[];

/** What is offered, and the one a document already names. */
export function actsFor(named: ActionKind): readonly ActionKind[] {
  return isOffered(named) ? offered : [...offered, named];
}

function isOffered(kind: ActionKind): kind is (typeof offered)[number] {
  return (offered as readonly ActionKind[]).includes(kind);
}

/** What an act is called; one that is not offered by its name in the document. */
export function actName(kind: ActionKind): string {
  if (!isOffered(kind)) return kind;
  const key: BenchKey = `act.${kind}`;
  return word(key);
}
