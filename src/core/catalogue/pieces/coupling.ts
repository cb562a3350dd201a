import { couplingSizes } from '../fittings.ts';
import { pipes } from '../pipe.ts';
import { teeSizes } from '../sizes.ts';
import { ASSUMED, B1611 } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

export interface CouplingDims {
  readonly odM: number;
  /** From the crown of the main to the coupling's face. */
  readonly heightM: number;
  /** Plain bore under the thread, through the wall of the main. */
  readonly boreM: number;
  readonly weldLegM: number;
}

/** Half coupling, class 3000, welded on the crown of the main. Its weld and the bored wall are our assumption. */
export const coupling = {
  kind: 'coupling',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: (size): CouplingDims => ({
    odM: couplingSizes[size].odM,
    heightM: couplingSizes[size].halfLengthM,
    boreM: pipes[size].idM,
    weldLegM: 0.007,
  }),
  sources: { odM: B1611, heightM: B1611, boreM: ASSUMED, weldLegM: ASSUMED },
} satisfies PieceEntry<'tee', CouplingDims>;
