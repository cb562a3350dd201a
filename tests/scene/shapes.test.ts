import { describe, expect, it } from 'vitest';
import {
  mainSizes,
  pieceKinds,
  pieces,
  teeSizes,
  type MainNps,
  type TeeSize,
} from '../../src/core/catalogue/index.ts';
import { shapes, toGeometry, type ShapeSpec } from '../../src/scene/index.ts';
import { closedness } from './closed.ts';

const specs = (kind: (typeof pieceKinds)[number]): ShapeSpec[] => {
  const base: ShapeSpec = { teeSize: '1', mainNps: '4' };
  if (kind === 'serviceTee') {
    return teeSizes.flatMap((teeSize) =>
      ['whole', 'sawn', 'dressed'].map((variant) => ({ ...base, teeSize, variant })),
    );
  }
  if (kind === 'serviceLine') return ['whole', 'stub', 'cut'].map((variant) => ({ ...base, variant }));
  if (kind === 'boreStopper' || kind === 'seatRing' || kind === 'cupGasket') {
    return teeSizes.flatMap((teeSize) => [0, 0.5, 1].map((squeeze) => ({ ...base, teeSize, squeeze })));
  }
  if (kind === 'coupling' || kind === 'splitCollar' || kind === 'main') {
    return mainSizes.flatMap((mainNps) =>
      teeSizes
        .filter((t) => pieces.coupling.dims(t).odM <= 0.95 * pieces.main.dims(mainNps).odM)
        .map((teeSize) => ({ mainNps, teeSize })),
    );
  }
  if (kind === 'cradleBlock') return pieces.cradleBlock.sizes.map((mainNps) => ({ ...base, mainNps }));
  return teeSizes.map((teeSize) => ({ ...base, teeSize }));
};

describe('every piece is a closed body, its skin outward, so that its section can be filled', () => {
  it.each(pieceKinds)('%s', (kind) => {
    for (const spec of specs(kind)) {
      for (const part of shapes[kind](spec)) {
        const found = closedness(toGeometry(part.body));
        const named = `${kind} ${part.name} ${JSON.stringify(spec)}`;
        expect(found.open, named).toBe(0);
        expect(found.volumeM3, named).toBeGreaterThan(0);
      }
    }
  });
});

const whole = (kind: (typeof pieceKinds)[number], spec: Partial<ShapeSpec> = {}, only?: string): number =>
  shapes[kind]({ teeSize: '1', mainNps: '4', ...spec })
    .filter((p) => !only || p.name === only)
    .reduce((sum, p) => sum + closedness(toGeometry(p.body)).volumeM3, 0);

const tube = (od: number, id: number, length: number) => (Math.PI / 4) * (od * od - id * id) * length;
const near = (got: number, want: number) => expect(Math.abs(got / want - 1)).toBeLessThan(0.02);

describe('metal in a shape is the metal of its dimensions, within 2 %', () => {
  it.each(mainSizes)('main NPS %s', (mainNps: MainNps) => {
    const d = pieces.main.dims(mainNps);
    near(whole('main', { mainNps, teeSize: '3/4' }), tube(d.odM, d.idM, d.lengthM));
  });

  it.each(teeSizes)('service line NPS %s, the piece in the ground', (teeSize: TeeSize) => {
    const d = pieces.serviceLine.dims(teeSize);
    const start = pieces.serviceTee.dims(teeSize).axisToBossM + 0.04 + 0.004;
    near(whole('serviceLine', { teeSize, variant: 'cut' }), tube(d.odM, d.idM, d.shownLengthM - start));
  });

  it('seat ring, gauge ring, magnet, stopper washers', () => {
    const r = pieces.seatRing.dims('1');
    near(whole('seatRing', {}, 'rubber'), tube(r.rubberOdM, r.rubberIdM, r.rubberThickM));
    near(whole('seatRing', {}, 'plate'), tube(r.plateOdM, r.rubberIdM, r.plateThickM));
    const g = pieces.gaugeRing.dims();
    near(whole('gaugeRing'), tube(g.odM, g.idM, g.heightM));
    const s = pieces.boreStopper.dims('1');
    near(whole('boreStopper', {}, 'washers'), 2 * tube(s.washerOdM, s.coreOdM, s.washerThickM));
  });

  it('ball: a sphere less its bore and caps', () => {
    const v = pieces.isolationValve.dims();
    // A sphere with a hole right through leaves a volume that depends on the hole's length alone: π L³ / 6.
    near(whole('isolationValve', {}, 'ball'), (Math.PI * v.ballBoreLengthM ** 3) / 6);
  });

  it('squares of plugs', () => {
    for (const teeSize of teeSizes) {
      const d = pieces.topPlug.dims(teeSize);
      near(whole('topPlug', { teeSize }, 'square'), d.acrossFlatsM ** 2 * d.squareHeightM);
    }
  });
});

describe('rubber', () => {
  it('bulges to the wall as it is squeezed, and keeps its volume within 8 %', () => {
    const width = (squeeze: number) => {
      const [rubber] = shapes.boreStopper({ teeSize: '1', mainNps: '4', squeeze });
      let r = 0;
      for (let i = 0; i < rubber.body.points.length; i += 3) {
        r = Math.max(r, Math.hypot(rubber.body.points[i], rubber.body.points[i + 1]));
      }
      return 2 * r;
    };
    const d = pieces.boreStopper.dims('1');
    expect(width(0)).toBeCloseTo(d.freeOdM, 6);
    expect(width(0.5)).toBeGreaterThan(width(0));
    expect(width(1)).toBeGreaterThan(d.boreM - 0.0002);
    expect(width(1)).toBeLessThanOrEqual(d.boreM);
    const kept =
      whole('boreStopper', { squeeze: 1 }, 'rubber') / whole('boreStopper', { squeeze: 0 }, 'rubber');
    expect(Math.abs(kept - 1)).toBeLessThan(0.08);
  });
});
