import { describe, expect, it } from 'vitest';
import { pieces, taperThreads } from '../../src/core/catalogue/index.ts';
import { rigJoint } from '../../src/core/catalogue/pieces/rigJoint.ts';
import { shapes, toGeometry } from '../../src/scene/index.ts';
import { closedness } from './closed.ts';

/** Stacked plain turnings out of the catalogue's dimensions, diameters and lengths in m: a second way to the metal. */
const rod = (od: number, length: number): number => (Math.PI / 4) * od * od * length;
const tube = (od: number, id: number, length: number): number => rod(od, length) - rod(id, length);
const cone = (od: number, otherOd: number, id: number, length: number): number =>
  (Math.PI / 12) * length * (od * od + od * otherOd + otherOd * otherOd) - rod(id, length);

const { boreM, spigotOdM, spigotLengthM, skirtOdM, bodyOdM } = rigJoint;
/** The skirt that screws over the spigot below, up to where the body has its own diameter (45° from 10 mm above the seat), less its O-ring's groove. */
const skirt = (od: number): number =>
  tube(skirtOdM, spigotOdM, spigotLengthM) +
  tube(skirtOdM, boreM, 0.01) +
  cone(skirtOdM, od, boreM, (skirtOdM - od) / 2) -
  tube(boreM + 0.0112, boreM + 0.0048, 0.0022);
const bodyFromM = (od: number): number => 0.01 + (skirtOdM - od) / 2;

const bodyOf = (kind: 'saddle' | 'rodBarrel' | 'testHead' | 'isolationValve'): number => {
  const body = shapes[kind]({ teeSize: '1', mainNps: '4' }).find(({ name }) => name === 'body');
  return body === undefined ? NaN : closedness(toGeometry(body.body)).volumeM3;
};
const within2Percent = (got: number, want: number): void =>
  expect(Math.abs(got / want - 1)).toBeLessThan(0.02);

describe('the metal of the turned bodies is that of their dimensions, within 2 %', () => {
  it('saddle', () => {
    const d = pieces.saddle.dims();
    const topM = d.heightM - d.recessDepthM;
    const metal =
      tube(d.bodyOdM, d.recessOdM, d.recessDepthM) +
      tube(d.bodyOdM, d.boreM, 0.03) +
      cone(d.bodyOdM, bodyOdM, d.boreM, 0.006) +
      tube(bodyOdM, d.boreM, topM - spigotLengthM - 0.036) +
      tube(spigotOdM, d.boreM, spigotLengthM);
    within2Percent(bodyOf('saddle'), metal);
  });

  it('rod barrel', () => {
    const d = pieces.rodBarrel.dims();
    const rodOdM = pieces.rod.dims().odM;
    const metal =
      skirt(d.bodyOdM) +
      tube(d.bodyOdM, d.boreM, d.cavityM - bodyFromM(d.bodyOdM)) +
      tube(d.bodyOdM, rodOdM, d.heightM - 0.008 - d.cavityM) +
      cone(d.bodyOdM, 0.082, rodOdM, 0.008) +
      // The packing's box: 6 mm round the rod, from 4 mm inside the top.
      tube(d.glandOdM, rodOdM + 0.012, d.glandHeightM * 0.6) -
      tube(rodOdM + 0.012, rodOdM, 0.004);
    within2Percent(bodyOf('rodBarrel'), metal);
  });

  it('test head', () => {
    const d = pieces.testHead.dims();
    const od = 0.1;
    const metal =
      skirt(od) +
      rod(boreM, bodyFromM(od) - d.cavityM) +
      rod(od, d.heightM - 0.003 - bodyFromM(od)) +
      cone(od, 0.094, 0, 0.003);
    within2Percent(bodyOf('testHead'), metal);
  });

  it('isolation valve', () => {
    const d = pieces.isolationValve.dims();
    const [od, c, cavityOd] = [0.1, d.ballCentreM, 2 * d.ballRadiusM + 0.0024];
    // Half a valve above the ball's centre, then the same below it: the seats' pockets of Ø 94, the ball's of its own.
    const seatM = Math.sqrt(d.ballRadiusM ** 2 - 0.041 ** 2) + 0.006;
    const hollow = cone(cavityOd, 0.094, 0, seatM - 0.026) + rod(cavityOd, 0.026) + rod(d.boreM, c - seatM);
    const upper =
      rod(d.bodyOdM, 0.036) +
      cone(d.bodyOdM, od, 0, 0.018) +
      rod(od, c - spigotLengthM - 0.054) +
      rod(spigotOdM, spigotLengthM);
    const lower = rod(d.bodyOdM, 0.036) + cone(d.bodyOdM, od, 0, 0.018) + rod(od, c - bodyFromM(od) - 0.054);
    const neck = tube(0.04, 0.022, 0.092 - d.bodyOdM / 2) - rod(0.022, (d.bodyOdM - cavityOd) / 2);
    const belowBore = rod(d.boreM, bodyFromM(od));
    within2Percent(bodyOf('isolationValve'), upper + lower - 2 * hollow + belowBore + skirt(od) + neck);
  });
});

/** Solid points of a fine grid, counted: for a body in which two turnings cross. */
const countedM3 = (
  inside: (x: number, y: number, z: number) => boolean,
  low: number,
  high: number,
): number => {
  const stepM = 0.0005;
  let count = 0;
  for (let x = -0.04 + stepM / 2; x < 0.04; x += stepM)
    for (let y = -0.04 + stepM / 2; y < 0.06; y += stepM)
      for (let z = low + stepM / 2; z < high; z += stepM) if (inside(x, y, z)) count += 1;
  return count * stepM ** 3;
};

describe('the metal of the street tee is that of its two crossed turnings, within 2 %', () => {
  it.each(['3/4', '1', '1-1/4'] as const)('NPS %s', (teeSize) => {
    const d = pieces.serviceTee.dims(teeSize);
    const thread = taperThreads[teeSize];
    const [foot, top, body, band] = [-d.axisToMaleEndM, d.axisToBossM, d.bodyOdM / 2, d.bandOdM / 2];
    const face = foot + thread.madeUpM;
    // Thread rings are cut 0.6 mm deep about the pitch cone, so that on the mean it stands 0.3 mm in or out.
    const pitchR = (fromFaceM: number): number => thread.e1M / 2 + fromFaceM / 32;
    const shoulder = Math.max(band, pieces.coupling.dims(teeSize).odM / 2 - 0.001);
    const outerR = (z: number): number => {
      if (z < face + 0.003) return pitchR(z - face) - 0.0003;
      if (z < face + 0.008) return shoulder;
      if (z < face + 0.0115) return shoulder + ((body - shoulder) * (z - face - 0.008)) / 0.0035;
      return z < top - d.bandWidthM ? body : band;
    };
    const innerR = (z: number): number => {
      if (z < -d.portIdM / 2) return d.lowerBoreM / 2;
      return z < top - 0.019 ? d.portIdM / 2 + 0.0005 : pitchR(z - top) + 0.0003;
    };
    const inside = (x: number, y: number, z: number): boolean => {
      const fromRun = Math.hypot(x, y);
      const fromBranch = Math.hypot(x, z);
      const inRun = z > foot && z < top && fromRun < outerR(z);
      const branchR = y < top - d.bandWidthM ? body * 0.985 : band;
      const inBranch = y > 0 && y < top && fromBranch < branchR;
      if (!inRun && !inBranch) return false;
      if (z > foot && z < top && fromRun < innerR(z)) return false;
      const boreR = y < top - 0.016 ? d.portIdM / 2 : pitchR(y - top) + 0.0003;
      return !(y > 0 && fromBranch < boreR);
    };
    const [part] = shapes.serviceTee({ teeSize, mainNps: '4' });
    within2Percent(closedness(toGeometry(part.body)).volumeM3, countedM3(inside, foot, top));
  });
});
