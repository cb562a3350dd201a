import { mm } from '../sizes.ts';
import type { PieceEntry } from '../piece.ts';
import { bodyDims, bodySources, boreVolumeM3, type BodyDims } from './spool.ts';

/** Cap for the valve: on whenever nothing else is. */
export const valveCap = {
  kind: 'valveCap',
  sizedBy: 'one',
  sizes: ['one'],
  dims: () => bodyDims(mm(16)),
  sources: bodySources,
  netVolumeM3: boreVolumeM3(mm(2)),
} satisfies PieceEntry<'one', BodyDims>;
