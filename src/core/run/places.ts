import { sameShape, type Network } from '../physics/index.ts';
import { OUTDOORS } from '../rig/index.ts';

/**
 * Which links of a network the run asks after at every step, by where they lead. Worked out once a network: the links
 * themselves are objects of many shapes, and looking at each of them costs more than what is asked of it.
 */
export interface Leading {
  /** Into the hole, into the street, into the far end of the service, in the order of the links. Pumps lead nowhere. */
  readonly toHole: readonly number[];
  readonly toStreet: readonly number[];
  readonly toFar: readonly number[];
  /** Into the hole or the street. */
  readonly out: readonly number[];
  /** Into the hole, and no bleed. */
  readonly blows: readonly number[];
  readonly bleeds: readonly number[];
  readonly fromMain: readonly number[];
  readonly relief: boolean;
}

/** The last network asked for. */
let kept: { readonly network: Network; readonly leading: Leading } | null = null;

export function leadingOf(network: Network): Leading {
  if (kept === null || kept.network !== network) {
    const leading = kept !== null && sameShape(kept.network, network) ? kept.leading : sort(network);
    kept = { network, leading };
  }
  return kept.leading;
}

function sort({ links }: Network): Leading {
  const toHole: number[] = [];
  const toStreet: number[] = [];
  const toFar: number[] = [];
  const out: number[] = [];
  const blows: number[] = [];
  const bleeds: number[] = [];
  const fromMain: number[] = [];
  let relief = false;
  for (let i = 0; i < links.length; i += 1) {
    const { id, from, to, law } = links[i];
    if (law === 'source') continue;
    if (to === 'hole') toHole.push(i);
    else if (to === 'street' || to === OUTDOORS) toStreet.push(i);
    else if (to === 'far') toFar.push(i);
    if (to === 'hole' || to === 'street') out.push(i);
    if (id === 'bleed') bleeds.push(i);
    else if (to === 'hole') blows.push(i);
    if (from === 'main') fromMain.push(i);
    relief ||= id === 'relief';
  }
  return { toHole, toStreet, toFar, out, blows, bleeds, fromMain, relief };
}
