import { pieces } from '../../core/catalogue/index.ts';
import { lathe, ring } from '../shape/lathe.ts';
import { acrossFlats } from '../shape/polygon.ts';
import { prism } from '../shape/prism.ts';
import { join, moved, type Vec3 } from '../shape/solid.ts';
import { sweep } from '../shape/sweep.ts';
import { HAIR, type PieceShape } from './part.ts';

/** The tensioner's eye below the arm's underside when the screws are half way. */
export const EYE_BELOW_ARM_M = 0.078;

/**
 * The parts a chain is drawn from, each placed many times: a link along z, and the two parts of a tensioner with its
 * origin at the arm's underside, hanging down.
 */
export const chain: PieceShape = () => {
  const d = pieces.chain.dims();
  const arm = pieces.saddle.dims().armThickM;
  const screw = d.screwOdM / 2;
  const bodyTop = -0.013;
  const bodyLow = bodyTop - d.tensionerBodyLengthM;
  const nut = prism(acrossFlats(6, d.tensionerAcrossFlatsM), arm + 0.0031, arm + 0.0131);
  const ends = join(
    nut,
    ring(screw + HAIR, 0.014, arm + 0.0002, arm + 0.003, 20),
    lathe(
      [
        [0, bodyTop + HAIR],
        [screw, bodyTop + HAIR],
        [screw, arm + 0.003],
        [0, arm + 0.003],
      ],
      { facets: 14 },
    ),
    lathe(
      [
        [0, bodyLow - HAIR],
        [screw, bodyLow - HAIR],
        [screw, bodyLow - 0.011],
        [0, bodyLow - 0.011],
      ],
      { facets: 14 },
    ),
    moved(eye(), [0, 0, bodyLow - 0.011 - 0.0102]),
  );
  return [
    { name: 'link', stuff: 'steel', cut: true, body: link(d.linkPitchM, d.linkWidthM, d.linkWireM / 2) },
    { name: 'ends', stuff: 'bright', cut: true, body: ends },
    {
      name: 'tensioner',
      stuff: 'paint',
      cut: true,
      body: prism(acrossFlats(6, d.tensionerAcrossFlatsM), bodyLow, bodyTop),
    },
  ];
};

const eye = () =>
  sweep(
    Array.from({ length: 14 }, (_, i): Vec3 => {
      const a = (2 * Math.PI * i) / 14;
      return [0, 0.0072 * Math.cos(a), 0.0072 * Math.sin(a)];
    }),
    0.0028,
    { facets: 6, loop: true },
  );

/** Stadium of wire in the x–z plane, its pitch along z. */
function link(pitch: number, width: number, wire: number) {
  const r = width / 2 - wire;
  const straight = (pitch + 2 * wire) / 2 - r;
  const path: Vec3[] = [];
  for (let i = 0; i <= 5; i++) {
    const a = (Math.PI * i) / 5;
    path.push([r * Math.cos(a), 0, straight + r * Math.sin(a)]);
  }
  for (let i = 0; i <= 5; i++) {
    const a = Math.PI + (Math.PI * i) / 5;
    path.push([r * Math.cos(a), 0, -straight + r * Math.sin(a)]);
  }
  return sweep(path, wire, { facets: 6, loop: true });
}
