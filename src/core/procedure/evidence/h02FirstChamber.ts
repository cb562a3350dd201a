import { firstChamber, proofItems } from '../proof.ts';
import type { EvidenceItem, Told } from '../told.ts';

/** First chamber proved: whatever is drawn next is drawn into a chamber known to hold. */
export function firstChamberProved(told: Told): readonly EvidenceItem[] {
  return proofItems(told, firstChamber);
}
