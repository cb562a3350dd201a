import type { BodyDims } from '../../core/catalogue/index.ts';
import { lathe } from '../shape/lathe.ts';
import { oRing, skirtBelow, spigotAbove, type Part } from './part.ts';

/** A plain length of the rig's bore, origin on its seat. */
export const spoolParts = (d: BodyDims): Part[] => [
  { name: 'body', stuff: 'steel', cut: true, body: lathe([...skirtBelow(), ...spigotAbove(d.heightM)]) },
  oRing(),
];
