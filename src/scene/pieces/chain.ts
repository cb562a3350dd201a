import { pieces } from '../../core/catalogue/index.ts';
import { helix } from '../shape/helix.ts';
import { ring } from '../shape/lathe.ts';
import { acrossFlats, circle } from '../shape/polygon.ts';
import { prism } from '../shape/prism.ts';
import { join, moved, type Vec3 } from '../shape/solid.ts';
import { sweep } from '../shape/sweep.ts';
import { HAIR, type PieceShape } from './part.ts';

/** The tensioner's eye below the arm's underside when the screws are half way. */
export const EYE_BELOW_ARM_M = 0.078;

/**
 * The parts a chain is drawn from, each placed many times: a link along z, and the screws and body of a tensioner with
 * its origin at the arm's underside, hanging down. The upper screw is right-handed, the lower left-handed.
 */
export const chain: PieceShape = () => {
  const d = pieces.chain.dims();
  const arm = pieces.saddle.dims().armThickM;
  const screw = d.screwOdM / 2;
  const bodyTop = -0.013;
  const bodyLow = bodyTop - d.tensionerBodyLengthM;
  const nut = prism(acrossFlats(6, d.tensionerAcrossFlatsM), arm + 0.0031, arm + 0.0131);
  const pitchM = d.advancePerTurnM / 2;
  const thread = { pitchM, crestM: () => screw, grooveM: 0.62 * pitchM, facets: 14 };
  // Both screws reach well into the body, so that threads show as it draws them together or lets them go.
  const upper = join(
    nut,
    ring(screw + HAIR, 0.014, arm + 0.0002, arm + 0.003, 20),
    helix({ ...thread, lowM: bodyTop - 0.012, highM: arm + 0.003 }),
  );
  const eyeZ = bodyLow - 0.011 - 0.0102;
  const lower = join(
    helix({ ...thread, lowM: bodyLow - 0.011, highM: bodyLow + 0.014, leftHand: true }),
    moved(eye(), [0, 0, eyeZ]),
  );
  return [
    { name: 'link', stuff: 'steel', cut: true, body: link(d.linkPitchM, d.linkWidthM, d.linkWireM / 2) },
    { name: 'upperScrew', stuff: 'bright', cut: true, body: upper },
    { name: 'lowerScrew', stuff: 'bright', cut: true, body: lower },
    {
      name: 'tensioner',
      stuff: 'paint',
      cut: true,
      body: prism(acrossFlats(6, d.tensionerAcrossFlatsM), bodyLow, bodyTop, [circle(screw + HAIR, 20)]),
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
