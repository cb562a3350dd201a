import type { Limits, StageId } from '../procedure/index.ts';
import {
  recordFieldsOf,
  serviceTestGaugePa,
  workOf,
  type KitKind,
  type MainSize,
  type RecordField,
  type TeeSize,
  type Work,
} from '../rig/index.ts';
import type { Scenario } from '../scenario/index.ts';

/** A piece of kit as a crew finds it: by kind and stamp. What is wrong with it must be looked for. */
export interface KitSeen {
  readonly id: string;
  readonly kind: KitKind;
  readonly stamped: string | null;
}

/** What a crew knows before it begins: the order, the sizes, the operator's settings and the kit board. */
export interface Order {
  readonly work: Work;
  /** Fields the record asks for. */
  readonly record: readonly RecordField[];
  /** What the service is to be tested at by the pressure on the order, Pa gauge. */
  readonly serviceTestGaugePa: number;
  readonly mainNps: MainSize;
  readonly teeSize: TeeSize;
  readonly serviceNps: TeeSize;
  readonly holeDepthM: number;
  readonly ratingGaugePa: number;
  readonly orderPressureGaugePa: number;
  readonly limits: Limits;
  readonly kit: readonly KitSeen[];
  /** The part of the job that is asked for; null for the whole of it. */
  readonly drill: { readonly from: StageId; readonly to: StageId } | null;
}

/** Reads the order out of an exercise, and nothing of its truth. */
export function orderOf({ job, limits, drill }: Scenario): Order {
  return {
    work: workOf(job),
    record: recordFieldsOf(job),
    serviceTestGaugePa: serviceTestGaugePa(job),
    mainNps: job.workpiece.mainNps,
    teeSize: job.workpiece.teeSize,
    serviceNps: job.system.service.nps,
    holeDepthM: job.site.holeDepthM,
    ratingGaugePa: job.system.ratingGaugePa,
    orderPressureGaugePa: job.system.orderPressureGaugePa,
    limits,
    kit: job.kit.map((k) => ({ id: k.id, kind: k.kind, stamped: k.stamped ?? null })),
    drill: drill ?? null,
  };
}
