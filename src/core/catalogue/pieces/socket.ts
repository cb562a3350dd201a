import { squarePlugs } from '../fittings.ts';
import { mm, teeSizes } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

export interface SocketDims {
  readonly lengthM: number;
  readonly odM: number;
  /** Square inside, with working clearance. */
  readonly squareM: number;
  readonly cavityM: number;
}

/** Retaining socket for a square head, by size. */
export const socket = {
  kind: 'socket',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: (size): SocketDims => ({
    lengthM: mm(50),
    odM: squarePlugs[size].acrossFlatsM * 1.42 + mm(8),
    squareM: squarePlugs[size].acrossFlatsM + mm(0.6),
    cavityM: squarePlugs[size].squareHeightM + mm(1),
  }),
  sources: { lengthM: ASSUMED, odM: ASSUMED, squareM: ASSUMED, cavityM: ASSUMED },
} satisfies PieceEntry<'tee', SocketDims>;
