import * as v from 'valibot';
import { actionSchema } from '../core/rig/index.ts';

const time = v.pipe(v.number(), v.finite(), v.minValue(0));

/**
 * What a sitting writes down, in order: the hand did something, time was let pass on purpose, the trainee went back to
 * an earlier moment, asked the coach, took up or left off holding back with a second wrench, or handed the run in as it
 * stood. Times in simulated seconds. Together they give the whole sitting again.
 */
export const sittingEventSchema = v.variant('kind', [
  v.strictObject({ kind: v.literal('acted'), atS: time, action: actionSchema }),
  v.strictObject({ kind: v.literal('waited'), untilS: time }),
  v.strictObject({ kind: v.literal('rewound'), toS: time }),
  v.strictObject({ kind: v.literal('asked'), atS: time }),
  v.strictObject({ kind: v.literal('heldBack'), atS: time, on: v.boolean() }),
  v.strictObject({ kind: v.literal('handedIn'), atS: time }),
]);
export type SittingEvent = v.InferOutput<typeof sittingEventSchema>;

/** Keeps a sitting's events; a promise that resolves means the event is on the disk. */
export interface Journal {
  append(event: SittingEvent): Promise<void>;
}

/** Raised when what was kept of a sitting cannot be performed again. */
export class UnreadableSitting extends Error {
  /** Place of the first event that does not fit, counted from 0. */
  readonly index: number;

  constructor(index: number, why: string) {
    super(why);
    this.name = 'UnreadableSitting';
    this.index = index;
  }
}

/** Reads kept lines as events. @throws UnreadableSitting at the first line that is not one. */
export function parseEvents(lines: readonly unknown[]): SittingEvent[] {
  return lines.map((line, index) => {
    const read = v.safeParse(sittingEventSchema, line);
    if (!read.success) throw new UnreadableSitting(index, read.issues[0].message);
    return read.output;
  });
}
