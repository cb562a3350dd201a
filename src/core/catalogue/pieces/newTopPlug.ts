import { teeSizes } from '../sizes.ts';
import type { PieceEntry } from '../piece.ts';
import { topPlug, type SquareHeadDims } from './topPlug.ts';

/** Square-headed plug for the renewal tee's top, run in through the valve once its keeper and stopper are out. */
export const newTopPlug = {
  kind: 'newTopPlug',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: (size): SquareHeadDims => topPlug.dims(size),
  sources: topPlug.sources,
} satisfies PieceEntry<'tee', SquareHeadDims>;
