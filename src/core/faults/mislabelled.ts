import type { Job, KitKind, ReferReason, TeeSize } from '../rig/index.ts';
import type { Fault, Felt } from './fault.ts';
import { anyFelt, inspected } from './felt.ts';
import type { FaultId } from './ids.ts';
import { withPieceOf } from './planting.ts';
import { anyOf, notUsed, referred } from './reactions.ts';

/** What a stamp that lies hides: the size below, or above where there is none below. */
const really: Readonly<Record<string, TeeSize>> = { '3/4': '1', '1': '3/4', '1-1/4': '1' };

const sitsBadly: Felt = (f, { on }) => f.fact === 'piece.placed' && f.piece === on && !f.fits;

/** A piece stamped with one size and made in another. */
export function mislabelled(id: FaultId, kind: KitKind, refer: readonly ReferReason[]): Fault {
  return {
    id,
    family: 'sizes',
    cause: 'mislabelled',
    severity: null,
    targets: [kind],
    triggers: ['start'],
    plant: (job, _severity, on) =>
      withPieceOf(job, on, (entry) => ({ ...entry, trueSize: really[entry.stamped ?? '1'] })),
    foundIn: (job) => lying(job, kind),
    feltBy: anyFelt(inspected('sizeNotAsStamped'), sitsBadly),
    endangers: {
      work: (f, { on }) => f.fact === 'piece.placed' && f.piece === on,
    },
    rightReaction: anyOf(notUsed, referred('kitUnfit', ...refer)),
    refer: ['kitUnfit', ...refer],
    shares: [],
    costs: 'asPlanted',
  };
}

function lying(job: Job, kind: KitKind) {
  return job.kit.flatMap((k) =>
    k.kind === kind && k.trueSize !== undefined && k.trueSize !== k.stamped
      ? [{ on: k.id, severity: 1 }]
      : [],
  );
}
