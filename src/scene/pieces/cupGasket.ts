import { pieces } from '../../core/catalogue/index.ts';
import { lathe, type RZ } from '../shape/lathe.ts';
import { HAIR, type PieceShape } from './part.ts';

/** Sleeve on the round of the coupling and flange on the collar; origin on the coupling's face. */
export const cupGasket: PieceShape = ({ teeSize, squeeze = 0 }) => {
  const d = pieces.cupGasket.dims(teeSize);
  const collar = pieces.splitCollar.dims(teeSize);
  const inner = pieces.coupling.dims(teeSize).odM / 2 + HAIR;
  const sleeve = collar.sleeveBoreM / 2 - HAIR;
  const flangeLow = -collar.belowFaceM + HAIR;
  const top = flangeLow + d.flangeThickM - 2 * HAIR;
  const bulge = 0.0012 * squeeze;
  const low = flangeLow - d.sleeveM;
  const lip = Math.min(d.flangeOdM / 2 - 0.0006, 0.0448);
  const profile: RZ[] = [
    [inner, low],
    [sleeve - 0.002, low],
    [sleeve, low + 0.002],
    [sleeve, flangeLow],
    [lip, flangeLow],
    [lip + bulge * 0.4, (flangeLow + top) / 2],
    [lip, top],
    [inner + 0.004, top],
    [inner, top - 0.003],
  ];
  return [{ name: 'gasket', stuff: 'rubber', cut: true, body: lathe(profile) }];
};
