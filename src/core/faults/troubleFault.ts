import type { ReferReason, TroubleKind } from '../rig/index.ts';
import type { Cost, Endangers, Fault, FaultCause, Felt, Reaction, Severity } from './fault.ts';
import { anyFelt, sign } from './felt.ts';
import type { FaultFamily, FaultId } from './ids.ts';
import type { TriggerKind } from './planted.ts';
import { troubleIn, withTrouble } from './planting.ts';
import { anyOf, referred } from './reactions.ts';

interface Plain {
  readonly id: FaultId;
  readonly family: FaultFamily;
  readonly cause: FaultCause;
  readonly what: TroubleKind;
  readonly severity: Severity | null;
  /** Ways to notice it beside its sign. */
  readonly worksLike?: Felt;
  readonly endangers: Endangers;
  readonly answers?: Reaction;
  readonly refer: readonly ReferReason[];
  readonly costs?: Cost;
  readonly triggers?: readonly TriggerKind[];
  readonly is?: (size: number) => boolean;
  readonly shares?: readonly string[];
}

/** Something amiss beyond the pieces: with the ground, the air, the service or the main. */
export function troubleFault(plain: Plain): Fault {
  const { id, family, cause, what, severity, worksLike, answers, refer, is = () => true } = plain;
  return {
    id,
    family,
    cause,
    severity,
    targets: [],
    triggers: plain.triggers ?? ['start', 'time', 'action', 'condition'],
    plant: (job, size, _on, atS) => withTrouble(job, what, severity === null ? 1 : size, atS),
    foundIn: (job) => troubleIn(job, what, is),
    feltBy: worksLike ? anyFelt(sign(what), worksLike) : sign(what),
    endangers: plain.endangers,
    rightReaction: answers ? anyOf(answers, referred(...refer)) : referred(...refer),
    refer,
    shares: plain.shares ?? [],
    costs: plain.costs ?? 'asPlanted',
  };
}
