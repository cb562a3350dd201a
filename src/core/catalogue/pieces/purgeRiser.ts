import { mm } from '../sizes.ts';
import { ASSUMED } from '../source.ts';
import type { PieceEntry } from '../piece.ts';

/** Standpipe with a cock on the house end of the service: it lets what is purged go outdoors and overhead. */
export const purgeRiser = {
  kind: 'purgeRiser',
  sizedBy: 'one',
  sizes: ['one'],
  dims: () => ({ odM: mm(27), idM: mm(20), heightM: mm(2500), orificeM: mm(4) }),
  sources: { odM: ASSUMED, idM: ASSUMED, heightM: ASSUMED, orificeM: ASSUMED },
} satisfies PieceEntry<'one', { odM: number; idM: number; heightM: number; orificeM: number }>;
