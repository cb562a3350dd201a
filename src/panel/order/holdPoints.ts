import type { HoldPointId } from '../../core/rig/index.ts';
import type { StageId } from '../../core/procedure/index.ts';

/** The stage whose work earns each hold point's evidence: there it stands in the list. */
export const stageOfHoldPoint: Readonly<Record<HoldPointId, StageId>> = {
  H1: 's1',
  H2: 's3',
  H3: 's5',
  H4: 's6',
  H5: 's6',
  H6: 's7',
  H7: 's8',
  H8: 's8',
  H9: 's9',
  H10: 's10',
  H11: 's11',
  R1: 'r1',
  R2: 'r2',
  R3: 'r3',
  R4: 'r4',
  R5: 'r5',
  R6: 'r6',
  H12: 's12',
};
