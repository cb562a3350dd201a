import type { FaultId, Trigger } from '../../core/faults/index.ts';

/** Faults that are often met together, ready to plant. */
export interface FaultSet {
  readonly id: 'stampLies' | 'tiredKit' | 'curbByPass' | 'gasFromNextDoor' | 'winterGround' | 'oldWork';
  readonly faults: readonly { readonly fault: FaultId; readonly when: Trigger }[];
}

const start: Trigger = { trigger: 'start' };

/** How they go together is common practice, no source. */
export const faultSets: readonly FaultSet[] = [
  { id: 'stampLies', faults: [{ fault: 'mislabelledSeatRing', when: start }] },
  {
    id: 'tiredKit',
    faults: [
      { fault: 'oRingNicked', when: start },
      { fault: 'glandWeeping', when: start },
    ],
  },
  { id: 'curbByPass', faults: [{ fault: 'curbPassing', when: start }] },
  { id: 'gasFromNextDoor', faults: [{ fault: 'otherLeak', when: { trigger: 'time', atS: 720 } }] },
  {
    id: 'winterGround',
    faults: [
      { fault: 'coldRubber', when: start },
      { fault: 'waterInHole', when: start },
    ],
  },
  {
    id: 'oldWork',
    faults: [
      { fault: 'bossPitted', when: start },
      { fault: 'scaleUnderChain', when: start },
    ],
  },
];
