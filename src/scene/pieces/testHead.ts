import { pieces } from '../../core/catalogue/index.ts';
import { lathe, ring } from '../shape/lathe.ts';
import { acrossFlats } from '../shape/polygon.ts';
import { box, prism } from '../shape/prism.ts';
import { alongX, alongY, join, moved, type Solid } from '../shape/solid.ts';
import { cockParts } from './cock.ts';
import { HAIR, oRing, skirtBelow, type PieceShape } from './part.ts';

/** Sweep of the dial: three quarters of a turn, zero at lower left. */
export const DIAL_SWEEP_RAD = 1.5 * Math.PI;
const DIAL_FRONT_M = 0.018;
/** The gauge's case begins this far above the head, m. */
export const GAUGE_STEM_M = 0.034;

/** Head with gauge, vent, filler with check valve, and relief. Origin on its seat; the dial faces +x. */
export const testHead: PieceShape = () => {
  const d = pieces.testHead.dims();
  const top = d.heightM;
  const body = lathe([
    [0, d.cavityM],
    [d.boreM / 2, d.cavityM],
    ...skirtBelow(0.05),
    [0.05, top - 0.003],
    [0.047, top],
    [0, top],
  ]);
  const dial = d.gaugeDialOdM / 2;
  const centre = top + GAUGE_STEM_M + dial;
  const stem = join(
    moved(prism(acrossFlats(6, 0.022), HAIR, 0.02), [0, 0, top]),
    ring(0, 0.007, top + 0.0201, centre - dial - 0.004, 16),
  );
  const caseBody = moved(
    alongX(
      lathe([
        [0, -0.018],
        [dial - 0.003, -0.018],
        [dial, -0.015],
        [dial, DIAL_FRONT_M],
        [dial - 0.005, DIAL_FRONT_M],
        [dial - 0.006, DIAL_FRONT_M - 0.006],
        [0, DIAL_FRONT_M - 0.006],
      ]),
    ),
    [0, 0, centre],
  );
  const front = DIAL_FRONT_M - 0.006;
  const face = moved(alongX(ring(0, dial - 0.0075, front + HAIR, front + 0.0008)), [0, 0, centre]);
  const needle = moved(box(front + 0.0022, front + 0.0034, -0.0011, 0.0011, -0.008, dial * 0.72), [
    0,
    0,
    centre,
  ]);
  const fitting = (y: number, x: number, tall: number): Solid =>
    join(
      moved(prism(acrossFlats(6, 0.017), HAIR, 0.014), [x, y, top]),
      moved(ring(0, 0.0055, 0.01404, tall, 14), [x, y, top]),
    );
  const filler = fitting(-0.03, -0.012, 0.03);
  const relief = join(
    fitting(0.03, -0.012, 0.02),
    moved(ring(0, 0.0095, 0.02004, 0.05, 16), [-0.012, 0.03, top]),
    moved(ring(0, 0.004, 0.05004, 0.057, 12), [-0.012, 0.03, top]),
  );
  const pump = join(
    moved(alongY(ring(0, 0.004, -0.16, -0.036, 10)), [-0.012, 0, top + 0.026]),
    moved(alongY(ring(0, 0.014, -0.3, -0.1604, 18)), [-0.012, 0, top + 0.026]),
  );
  const plunger = moved(
    join(alongY(ring(0, 0.004, -0.36, -0.3004, 10)), box(-0.035, 0.035, -0.372, -0.3604, -0.006, 0.006)),
    [-0.012, 0, top + 0.026],
  );
  return [
    { name: 'body', stuff: 'brass', cut: true, body },
    oRing(),
    { name: 'gauge', stuff: 'bright', cut: false, body: join(stem, caseBody) },
    { name: 'dial', stuff: 'dial', cut: false, body: join(face, dialTicks(dial, centre, front)) },
    {
      name: 'needle',
      stuff: 'paint',
      cut: false,
      body: needle,
      joint: { by: 'needleRad', axis: [-1, 0, 0], at: [0, 0, centre], perUnit: 1 },
    },
    { name: 'fittings', stuff: 'brass', cut: false, body: join(filler, relief, pump) },
    {
      name: 'plunger',
      stuff: 'steel',
      cut: false,
      body: plunger,
      joint: { by: 'pumpStroke', axis: [0, -1, 0], at: [0, 0, 0], perUnit: 0.05, slides: true },
    },
    ...cockParts(0.05, 0.022, 'ventOpen', Math.PI / 2),
  ];
};

/** Raised division marks, ten to the sweep. */
function dialTicks(dial: number, centre: number, front: number): Solid {
  const marks: Solid[] = [];
  for (let i = 0; i <= 20; i++) {
    const a = DIAL_SWEEP_RAD * (i / 20 - 0.5);
    const long = i % 2 === 0;
    const tick = box(
      front + 0.001,
      front + 0.0016,
      -0.0008,
      0.0008,
      dial * (long ? 0.68 : 0.75),
      dial * 0.83,
    );
    const [c, s] = [Math.cos(a), Math.sin(a)];
    const points: number[] = [];
    for (let k = 0; k < tick.points.length; k += 3) {
      const [x, y, z] = [tick.points[k], tick.points[k + 1], tick.points[k + 2]];
      points.push(x, c * y + s * z, -s * y + c * z + centre);
    }
    marks.push({ points, corners: tick.corners });
  }
  return join(...marks);
}
