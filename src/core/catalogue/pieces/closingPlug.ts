import { teeSizes } from '../sizes.ts';
import type { PieceEntry } from '../piece.ts';
import { topPlug, type SquareHeadDims } from './topPlug.ts';

/** Solid steel plug for the coupling, with the same square head as the top plug of its size. */
export const closingPlug = {
  kind: 'closingPlug',
  sizedBy: 'tee',
  sizes: teeSizes,
  dims: (size): SquareHeadDims => topPlug.dims(size),
  sources: topPlug.sources,
} satisfies PieceEntry<'tee', SquareHeadDims>;
