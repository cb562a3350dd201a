import { mm } from '../sizes.ts';
import type { PieceEntry } from '../piece.ts';
import { bodyDims, bodySources, boreVolumeM3, type BodyDims } from './spool.ts';

/** 100 mm extension below the isolation valve. */
export const lowerSpool = {
  kind: 'lowerSpool',
  sizedBy: 'one',
  sizes: ['one'],
  dims: () => bodyDims(mm(100)),
  sources: bodySources,
  netVolumeM3: boreVolumeM3(mm(100)),
} satisfies PieceEntry<'one', BodyDims>;
