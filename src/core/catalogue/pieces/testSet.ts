import { mm } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

/** Gauge, hand pump with check valve and vent on a hose: for the renewal tee on its bench cap, then for the service. */
export const testSet = {
  kind: 'testSet',
  sizedBy: 'one',
  sizes: ['one'],
  dims: () => ({ dialOdM: mm(100), dialDepthM: mm(40), bodyOdM: mm(30), heightM: mm(90) }),
  sources: { dialOdM: ASSUMED, dialDepthM: ASSUMED, bodyOdM: ASSUMED, heightM: ASSUMED },
  netVolumeM3: 0.3e-3,
} satisfies PieceEntry<'one', { dialOdM: number; dialDepthM: number; bodyOdM: number; heightM: number }>;
