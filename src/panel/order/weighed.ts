import type { HoldPointId } from '../../core/rig/index.ts';

/** One requirement of a hold point and whether what was read, seen and done shows it. */
export interface Weighed {
  readonly says: string;
  readonly met: boolean;
}

/** Weighs a hold point's evidence as it stands. */
export type Weigh = (id: HoldPointId) => readonly Weighed[];
