import { ASSUMED, type Source } from '../source.ts';
import { rigJoint } from './rigJoint.ts';

/** A length of the rig's bore between two joints. */
export interface BodyDims {
  readonly boreM: number;
  readonly heightM: number;
  readonly bodyOdM: number;
}

export const bodyDims = (heightM: number): BodyDims => ({
  boreM: rigJoint.boreM,
  heightM,
  bodyOdM: rigJoint.bodyOdM,
});

export const bodySources: Readonly<Record<keyof BodyDims, Source>> = {
  boreM: ASSUMED,
  heightM: ASSUMED,
  bodyOdM: ASSUMED,
};

/** Gas in a length of the rig's bore, m³. */
export const boreVolumeM3 = (lengthM: number): number =>
  ((Math.PI * rigJoint.boreM * rigJoint.boreM) / 4) * lengthM;
