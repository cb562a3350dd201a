import { constants } from '../catalogue/index.ts';
import { topIs } from './network.ts';
import type { RigState } from './state.ts';

const c = constants;

/** The rod in its gland, as the physics takes it. */
export const rodGland = {
  areaM2: c.rodAreaM2.value,
  massKg: c.rodMassKg.value,
  glandFrictionN: c.glandFrictionN.value,
};

/** The rod barrel closes the top of the stack. */
export function barrelOn(rig: RigState): boolean {
  return topIs(rig, 'rodBarrel');
}

/** Nobody holds the rod and nothing else does: gas and weight may take it. */
export function rodLoose(rig: RigState): boolean {
  const { rod } = rig;
  if (!barrelOn(rig) || rod.held || rod.engaged !== null) return false;
  return !(rod.load === 'stopper' && rig.stopper.torqueNm > 0);
}
