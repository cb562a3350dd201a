import { pipes } from '../pipe.ts';
import { mainSizes } from '../sizes.ts';
import { ASSUMED, B36 } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

/** The live main: schedule-40 steel, drawn for the length of the hole and through both its end walls. */
export const main = {
  kind: 'main',
  sizedBy: 'main',
  sizes: mainSizes,
  dims: (size) => ({ odM: pipes[size].odM, idM: pipes[size].idM, lengthM: 1.9 }),
  sources: { odM: B36, idM: B36, lengthM: ASSUMED },
} satisfies PieceEntry<'main', { odM: number; idM: number; lengthM: number }>;
