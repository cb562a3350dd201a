import { squarePlugs } from '../fittings.ts';
import { teeSizes } from '../sizes.ts';
import { B1614 } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

export interface SquareHeadDims {
  readonly threadLengthM: number;
  readonly squareHeightM: number;
  readonly acrossFlatsM: number;
}

/** Square-headed plug in the tee's top. */
export const topPlug = {
  kind: 'topPlug',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: (size): SquareHeadDims => ({
    threadLengthM: squarePlugs[size].threadLengthM,
    squareHeightM: squarePlugs[size].squareHeightM,
    acrossFlatsM: squarePlugs[size].acrossFlatsM,
  }),
  sources: { threadLengthM: B1614, squareHeightM: B1614, acrossFlatsM: B1614 },
} satisfies PieceEntry<'tee', SquareHeadDims>;
