import type { Action, KitKind, RigState } from '../../core/rig/index.ts';
import { things } from './things.ts';

/** The piece an action handles, by its kit id, or null. */
function pieceOf(action: Action): string | null {
  if ('piece' in action) return action.piece;
  return action.kind === 'rod.fit' ? action.tip : null;
}

/** Id of the thing under whose name an action is found, or null (signatures stand in the work order). */
export function thingOf(action: Action, rig: RigState): string | null {
  const named = things.find((thing) => thing.kinds.includes(action.kind));
  const id = pieceOf(action);
  const kind: KitKind | null = id === null || !(id in rig.kit) ? null : rig.kit[id].kind;
  if (kind !== null && named?.id !== 'kit' && action.kind !== 'sealant.apply')
    return things.find((thing) => thing.kit.includes(kind))?.id ?? named?.id ?? null;
  return named?.id ?? null;
}

/** Where the workpiece's own parts are worked on. */
const ofWorkpiece: Readonly<Record<string, string>> = {
  topPlug: 'plug',
  serviceTee: 'tee',
  serviceStub: 'branch',
  serviceLine: 'branch',
  coupling: 'look',
  main: 'clean',
  rod: 'rod',
};

/** Id of the thing that a piece of a kind belongs to, or null. */
export function thingOfKind(kind: string): string | null {
  return things.find((thing) => thing.kit.some((one) => one === kind))?.id ?? ofWorkpiece[kind] ?? null;
}
