import { describe, expect, it } from 'vitest';
import { pieces, taperThreads, teeSizes, type PieceKind } from '../../src/core/catalogue/index.ts';
import { shapes, toGeometry } from '../../src/scene/index.ts';
import { detail, type DetailShape } from '../../src/scene/shape/detail.ts';
import { helix } from '../../src/scene/shape/helix.ts';
import { pit } from '../../src/scene/shape/pit.ts';
import type { Solid } from '../../src/scene/shape/solid.ts';
import { ladder, shoring } from '../../src/scene/shape/timber.ts';
import { closedness } from './closed.ts';

const walls = { halfXM: 0.75, halfYM: 0.5, slopeM: 0.05, floorZM: -0.34, gradeZM: 0.96 };
const pipes = { main: { radiusM: 0.06, zM: -0.057 }, service: { radiusM: 0.02, zM: 0.06 } };

const volume = (body: Solid): number => {
  const found = closedness(toGeometry(body));
  expect(found.open).toBe(0);
  return found.volumeM3;
};
const near = (got: number, want: number) => expect(Math.abs(got / want - 1)).toBeLessThan(0.02);

describe('the hole is one closed body of soil with the pipes right through it', () => {
  it('holds the soil of its block less the pit and the three bores, within 2 %', () => {
    const wallM = 0.2;
    const { halfXM, halfYM, slopeM, floorZM, gradeZM } = walls;
    const depth = gradeZM - floorZM;
    const block = 2 * (halfXM + wallM) * 2 * (halfYM + slopeM + wallM) * (depth + wallM * 0.6);
    const open = 2 * halfXM * (2 * halfYM + slopeM) * depth;
    const bores = Math.PI * (2 * pipes.main.radiusM ** 2 + pipes.service.radiusM ** 2) * wallM;
    near(volume(pit({ ...walls, ...pipes, wallM })), block - open - bores);
  });

  it('ladder and shoring are closed bodies that stand inside it', () => {
    for (const body of [ladder(walls), shoring(walls)]) {
      expect(volume(body)).toBeGreaterThan(0);
      let lowest = Infinity;
      for (let i = 2; i < body.points.length; i += 3) lowest = Math.min(lowest, body.points[i]);
      expect(lowest).toBeGreaterThan(walls.floorZM - 0.02);
    }
  });
});

describe('threads as one ridge', () => {
  const size = { lowM: 0, highM: 0.02, pitchM: 0.002, crestM: () => 0.006, grooveM: 0.0012 };

  it('are closed either way round, and hold the metal of their mean radius within 2 %', () => {
    const right = volume(helix({ ...size, facets: 48 }));
    const left = volume(helix({ ...size, facets: 48, leftHand: true }));
    expect(left).toBeCloseTo(right, 15);
    // A triangular groove of depth g: mean of r² over a pitch is R² − R g + g² / 3. One pitch at each end is run out.
    const [r, g] = [0.006, 0.0012];
    const full = Math.PI * (r * r - r * g + (g * g) / 3);
    const run = Math.PI * (r - g) ** 2;
    expect(right).toBeLessThan(full * 0.02);
    expect(right).toBeGreaterThan(full * 0.018 + run * 0.0019);
  });

  it.each(['topPlug', 'keeperPlug', 'closingPlug'] as const)(
    'of a %s out of its hole weigh what they weigh drawn as rings, within 2 %',
    (kind: PieceKind) => {
      for (const teeSize of teeSizes) {
        const of = (variant?: string) =>
          shapes[kind]({ teeSize, mainNps: '4', variant }).reduce((sum, p) => sum + volume(p.body), 0);
        near(of('free'), of());
      }
    },
  );

  it('climb as many turns as the plug has threads', () => {
    const { threadLengthM } = pieces.topPlug.dims('1');
    expect(threadLengthM / taperThreads['1'].pitchM).toBeGreaterThan(2);
  });
});

describe('the service pipe with its pilot hole', () => {
  it.each(teeSizes)('NPS %s is closed, and lacks little more than the hole', (teeSize) => {
    const of = (variant: string) => volume(shapes.serviceLine({ teeSize, mainNps: '4', variant })[0].body);
    const [whole, pilot] = [of('whole'), of('pilot')];
    near(pilot, whole);
  });
});

describe('paint, coating, scale and tools', () => {
  const forms: readonly DetailShape[] = [
    { shape: 'arc', innerM: 0.01, outerM: 0.012, lowM: 0, highM: 0.001, midRad: 1, spanRad: 0.3 },
    { shape: 'cord', radiusM: 0.02, wireM: 0.001 },
    { shape: 'sleeve', innerM: 0.05, outerM: 0.053, fromM: 0.1, toM: 0.9 },
    { shape: 'mound', radiusM: 0.022, heightM: 0.06, thickM: 0.003 },
    { shape: 'lumps', radiusM: 0.013 },
    { shape: 'peg', radiusM: 0.002, lengthM: 0.016 },
    { shape: 'wrench', acrossM: 0.02, lengthM: 0.3 },
    { shape: 'saw' },
    { shape: 'hammer' },
  ];
  it.each(forms)('$shape is closed, its skin outward', (form) => {
    expect(volume(detail(form))).toBeGreaterThan(0);
  });
});
