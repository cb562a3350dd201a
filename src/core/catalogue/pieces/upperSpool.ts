import { mm } from '../sizes.ts';
import type { PieceEntry } from '../piece.ts';
import { bodyDims, bodySources, boreVolumeM3, type BodyDims } from './spool.ts';

/** 150 mm extension above the isolation valve. */
export const upperSpool = {
  kind: 'upperSpool',
  sizedBy: 'one',
  sizes: ['one'],
  dims: () => bodyDims(mm(150)),
  sources: bodySources,
  netVolumeM3: boreVolumeM3(mm(150)),
} satisfies PieceEntry<'one', BodyDims>;
