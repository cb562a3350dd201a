import type { FaultId, MeaningKey } from '../../../core/faults/index.ts';

/** Sentences with `{slots}`: by what a fault costs, or of its own where the figure is what was planted. */
export interface MeaningWords {
  readonly byCost: Readonly<Record<Exclude<MeaningKey, 'asPlanted'>, string>>;
  readonly byFault: Readonly<Partial<Record<FaultId, string>>>;
}
