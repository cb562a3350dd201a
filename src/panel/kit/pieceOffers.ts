import type { Action, KitKind, KitPiece, RigState } from '../../core/rig/index.ts';
import { tell } from '../words/index.ts';

/** What can be done with one piece of the kit. */
export interface PieceOffer {
  readonly name: string;
  readonly action: Action;
}

const placed: ReadonlySet<KitKind> = new Set([
  'seatRing',
  'saddle',
  'cradleBlock',
  'chain',
  'isolationValve',
  'lowerSpool',
  'upperSpool',
  'sightCap',
  'testHead',
  'rodBarrel',
  'cupGasket',
  'splitCollar',
  'valveCap',
  'serviceCap',
  'tieIn',
  'purgeRiser',
]);
const tips: ReadonlySet<KitKind> = new Set(['socket', 'stopperHolder', 'magnet']);
const loads: ReadonlySet<KitKind> = new Set([
  'boreStopper',
  'keeperPlug',
  'closingPlug',
  'renewalTee',
  'newTopPlug',
]);

/** Looked over, set aside, and put where it belongs or taken from there again. */
export function pieceOffers(piece: KitPiece, rig: RigState, holdBack: boolean): PieceOffer[] {
  const offers: PieceOffer[] = [
    { name: tell('kit.inspect'), action: { kind: 'piece.inspect', piece: piece.id } },
    { name: tell('kit.clean'), action: { kind: 'piece.clean', piece: piece.id } },
    { name: tell('kit.reject'), action: { kind: 'piece.reject', piece: piece.id } },
  ];
  if (placed.has(piece.kind)) {
    const kind = piece.where === 'rig' ? 'piece.remove' : 'piece.place';
    const name = tell(kind === 'piece.place' ? 'kit.place' : 'kit.remove');
    offers.push({ name, action: { kind, piece: piece.id, holdBack } });
  } else if (tips.has(piece.kind)) {
    offers.push(
      rig.rod.tip === piece.id
        ? { name: tell('kit.unfit'), action: { kind: 'rod.fit', tip: null } }
        : { name: tell('kit.fit'), action: { kind: 'rod.fit', tip: piece.id } },
    );
  } else if (loads.has(piece.kind)) {
    offers.push(
      piece.where === 'rod'
        ? { name: tell('kit.unload'), action: { kind: 'rod.load', piece: null } }
        : { name: tell('kit.load'), action: { kind: 'rod.load', piece: piece.id } },
    );
  }
  return offers;
}

/** What dropping a piece on the rig comes to: put on, fitted to the rod, or into its tip; null where it is there already. */
export function puttingOn(piece: KitPiece, rig: RigState, holdBack: boolean): Action | null {
  if (piece.where !== 'board') return null;
  const offers = pieceOffers(piece, rig, holdBack).map((offer) => offer.action);
  return offers.find(({ kind }) => ['piece.place', 'rod.fit', 'rod.load'].includes(kind)) ?? null;
}
