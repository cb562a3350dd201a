import { mm } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';
import { rigJoint } from './rigJoint.ts';

/** Ring of the smallest rig bore less 3 mm: what passes it at its swept circle can come up through the rig. */
export const gaugeRing = {
  kind: 'gaugeRing',
  sizedBy: 'one',
  sizes: ['one'],
  dims: () => ({ idM: rigJoint.boreM - mm(3), odM: mm(92), heightM: mm(8) }),
  sources: { idM: 'computed: rig bore less 3 mm', odM: ASSUMED, heightM: ASSUMED },
} satisfies PieceEntry<'one', { idM: number; odM: number; heightM: number }>;
