/**
 * What a hand on the picture asks for. The picture only says what was pointed at and how far it was drawn; what that
 * means to the rig is decided elsewhere. Targets are `id` or `id/part`, part being the drawn part's name.
 */
export type Intent =
  | { readonly kind: 'choose'; readonly target: string | null }
  /** Turned about the upright axis (or a lever about its own), turns since the last one; clockwise from above positive. */
  | { readonly kind: 'turn'; readonly target: string; readonly turns: number; readonly ended: boolean }
  /** Drawn along the upright axis, m since the last one; downward positive. */
  | { readonly kind: 'slide'; readonly target: string; readonly lengthM: number; readonly ended: boolean };

/** How a drag on a target is read. */
export type Grip = 'turn' | 'slide' | 'slideOrTurn';

/** Parts a hand can take hold of; everything else only turns the picture. Keys are `kind.part`. */
const grips: Readonly<Record<string, Grip>> = {
  'isolationValve.handle': 'turn',
  'isolationValve.stem': 'turn',
  'rod.outer': 'slideOrTurn',
  'rod.inner': 'turn',
  'rodBarrel.lever': 'turn',
  'sightCap.lever': 'turn',
  'testHead.lever': 'turn',
  'testHead.plunger': 'slide',
  'topPlug.square': 'turn',
  'keeperPlug.square': 'turn',
  'chain.tensioner': 'turn',
  'splitCollar.leftBolt': 'turn',
  'splitCollar.rightBolt': 'turn',
  'serviceTee.body': 'turn',
};

export const gripOf = (kind: string, part: string): Grip | null => grips[`${kind}.${part}`] ?? null;

/** Chains answer with a side, which is always the tensioner. */
export const graspedPart = (kind: string, part: string): string =>
  kind === 'chain' && part !== 'link' ? 'tensioner' : part;

/** A drag of this many pixels across is one turn; and so many pixels down are a metre, times the view's own scale. */
const PIXELS_A_TURN = 420;

/** Reads a drag: sideways turns, up and down slides; the first clear direction decides where both are possible. */
export function readDrag(
  grip: Grip,
  decided: 'turn' | 'slide' | null,
  dxPixels: number,
  dyPixels: number,
  metresPerPixel: number,
): { kind: 'turn' | 'slide'; amount: number } | null {
  const kind = grip === 'slideOrTurn' ? decided : grip;
  if (kind === null) return null;
  return kind === 'turn'
    ? { kind, amount: (dxPixels - (grip === 'turn' ? 0.5 * dyPixels : 0)) / PIXELS_A_TURN }
    : { kind, amount: dyPixels * metresPerPixel };
}
