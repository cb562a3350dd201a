import type { Defects, HoldPointId, Job, KitKind, ReferReason } from '../rig/index.ts';
import type { Cost, Endangers, Fault, FaultCause, Felt, Found, Reaction, Severity } from './fault.ts';
import { anyFelt, inspected } from './felt.ts';
import type { FaultFamily, FaultId } from './ids.ts';
import type { TriggerKind } from './planted.ts';
import { withFlaw } from './planting.ts';
import { anyOf, notUsed, referred } from './reactions.ts';

type Numbered = {
  [K in keyof Defects]-?: NonNullable<Defects[K]> extends number ? K : never;
}[keyof Defects];
type Flagged = Exclude<keyof Defects, Numbered>;

interface Plain {
  readonly id: FaultId;
  readonly family: FaultFamily;
  readonly cause: FaultCause;
  readonly on: readonly KitKind[];
  /** Other ways to notice it than looking the piece over. */
  readonly worksLike?: Felt;
  /** Work it endangers once it sits in the rig, beside putting it there. */
  readonly holdPoints?: readonly HoldPointId[];
  readonly work?: Felt;
  readonly answers?: Reaction;
  readonly refer?: readonly ReferReason[];
  readonly shares?: readonly string[];
  readonly costs?: Cost;
  readonly triggers?: readonly TriggerKind[];
}

/** A flaw that is there or not. */
export function flagFault(plain: Plain & { readonly flaw: Flagged }): Fault {
  const { flaw } = plain;
  return fault(plain, flaw, null, (job, _severity, on) => withFlaw(job, on, { [flaw]: true }));
}

/** A flaw of a size; `sizeOf` turns severity into what the piece carries, where the two differ. */
export function sizedFault(
  plain: Plain & {
    readonly flaw: Numbered;
    readonly severity: Severity;
    readonly sizeOf?: (severity: number) => number;
    readonly is?: (size: number) => boolean;
  },
): Fault {
  const { flaw, severity, sizeOf = (size) => size, is = () => true } = plain;
  const planted = fault(plain, flaw, severity, (job, size, on) =>
    withFlaw(job, on, { [flaw]: sizeOf(size) }),
  );
  return { ...planted, foundIn: (job) => planted.foundIn(job).filter((one) => is(one.severity)) };
}

function fault(plain: Plain, flaw: keyof Defects, severity: Severity | null, plant: Fault['plant']): Fault {
  const { id, family, cause, on, worksLike, answers, refer = ['kitUnfit'], shares = [] } = plain;
  const reasons: readonly ReferReason[] = refer.includes('kitUnfit') ? refer : [...refer, 'kitUnfit'];
  return {
    id,
    family,
    cause,
    severity,
    targets: on,
    triggers: plain.triggers ?? ['start', 'time', 'action', 'condition'],
    plant,
    foundIn: (job) => piecesWith(job, on, flaw),
    feltBy: worksLike ? anyFelt(inspected(flaw), worksLike) : inspected(flaw),
    endangers: endangers(plain),
    rightReaction: answers
      ? anyOf(notUsed, answers, referred(...reasons))
      : anyOf(notUsed, referred(...reasons)),
    refer: reasons,
    shares,
    costs: plain.costs ?? 'asPlanted',
  };
}

function endangers({ holdPoints = [], work }: Plain): Endangers {
  return {
    holdPoints,
    // a flaw that came after the piece was looked over is not seen again as it goes on
    work: (f, story, at) =>
      (f.fact === 'piece.placed' && f.piece === story.on && story.struckAtS === 0) ||
      (work?.(f, story, at) ?? false),
  };
}

function piecesWith(job: Job, kinds: readonly KitKind[], flaw: keyof Defects): readonly Found[] {
  return job.kit.flatMap(({ id, kind, defects }) => {
    const size = defects?.[flaw];
    if (!kinds.includes(kind) || size === undefined || size === false) return [];
    return [{ on: id, severity: typeof size === 'number' ? size : 1 }];
  });
}
