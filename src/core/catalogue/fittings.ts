import { ASSUMED, B1611, B1614, B163, type Source } from './source.ts';
import { inchM, mm, type TeeSize } from './sizes.ts';

/** Forged class 3000 coupling. The one welded to a main is the half coupling: one thread, length W/2. */
export interface CouplingSize {
  readonly fullLengthM: number;
  readonly halfLengthM: number;
  readonly odM: number;
  readonly minThreadM: number;
  readonly source: Source;
}

const coupling = (w: number, d: number, b: number): CouplingSize => ({
  fullLengthM: mm(w),
  halfLengthM: mm(w / 2),
  odM: mm(d),
  minThreadM: mm(b),
  source: B1611,
});

/** ASME B16.11-2016 Table 5 (two secondary copies agree); the halving is one seller's table. */
export const couplingSizes: Readonly<Record<TeeSize, CouplingSize>> = {
  '3/4': coupling(51, 35, 12.7),
  '1': coupling(60, 44, 14.7),
  '1-1/4': coupling(67, 57, 17.0),
};

/** Malleable street tee: male below, female above and at the side. */
export interface StreetTeeSize {
  readonly centreToFaceM: number;
  readonly centreToMaleEndM: number;
  readonly bandOdM: number;
  readonly bandWidthM: number;
  /** Outside of run and branch behind the bands: what is left when the branch is sawn flush. */
  readonly bodyOdM: number;
  /** Inside of the branch where it meets the run. */
  readonly portIdM: number;
  readonly source: Readonly<
    Record<'centreToFaceM' | 'centreToMaleEndM' | 'bandOdM' | 'bandWidthM' | 'bodyOdM' | 'portIdM', Source>
  >;
}

const tee = (
  a: number,
  j: number,
  band: number,
  width: number,
  body: number,
  port: number,
): StreetTeeSize => ({
  centreToFaceM: inchM(a),
  centreToMaleEndM: inchM(j),
  bandOdM: inchM(band),
  bandWidthM: inchM(width),
  bodyOdM: mm(body),
  portIdM: mm(port),
  source: {
    centreToFaceM: B163,
    centreToMaleEndM: B163,
    bandOdM: B163,
    bandWidthM: B163,
    bodyOdM: ASSUMED,
    portIdM: ASSUMED,
  },
});

export const streetTees: Readonly<Record<TeeSize, StreetTeeSize>> = {
  '3/4': tee(1.31, 1.89, 1.458, 0.273, 34, 27.5),
  '1': tee(1.5, 2.14, 1.771, 0.302, 41, 34),
  '1-1/4': tee(1.75, 2.45, 2.153, 0.341, 51, 43),
};

/** Square-head pipe plug: threaded part, square height and width across its flats, metres. */
export interface SquarePlugSize {
  readonly threadLengthM: number;
  readonly squareHeightM: number;
  readonly acrossFlatsM: number;
  readonly source: Source;
}

const plug = (length: number, height: number, flats: number): SquarePlugSize => ({
  threadLengthM: inchM(length),
  squareHeightM: inchM(height),
  acrossFlatsM: inchM(flats),
  source: B1614,
});

export const squarePlugs: Readonly<Record<TeeSize, SquarePlugSize>> = {
  '3/4': plug(0.63, 0.44, 0.63),
  '1': plug(0.75, 0.5, 0.81),
  '1-1/4': plug(0.8, 0.56, 0.94),
};
