import { lathe, latheArc, ring } from './lathe.ts';
import { box } from './prism.ts';
import { alongX, join, moved, turned, type Solid, type Vec3 } from './solid.ts';
import { sweep } from './sweep.ts';

/** Small things that are no pieces of the catalogue: paint, coating, scale, tools in use. All sizes in m. */
export type DetailShape =
  /** Part of a ring about the upright axis: a stroke of paint on a round or on a rim. */
  | {
      readonly shape: 'arc';
      readonly innerM: number;
      readonly outerM: number;
      readonly lowM: number;
      readonly highM: number;
      readonly midRad: number;
      readonly spanRad: number;
    }
  /** A round cord laid in a level ring: fluid brushed on a joint. */
  | { readonly shape: 'cord'; readonly radiusM: number; readonly wireM: number }
  /** A sleeve round a pipe that runs along x. */
  | {
      readonly shape: 'sleeve';
      readonly innerM: number;
      readonly outerM: number;
      readonly fromM: number;
      readonly toM: number;
    }
  /** A dome of coating over a stub of this radius and height. */
  | { readonly shape: 'mound'; readonly radiusM: number; readonly heightM: number; readonly thickM: number }
  | { readonly shape: 'lumps'; readonly radiusM: number }
  | { readonly shape: 'peg'; readonly radiusM: number; readonly lengthM: number }
  | { readonly shape: 'wrench'; readonly acrossM: number; readonly lengthM: number }
  | { readonly shape: 'saw' }
  | { readonly shape: 'hammer' };

export function detail(d: DetailShape): Solid {
  switch (d.shape) {
    case 'arc':
      return latheArc(
        [
          [d.innerM, d.lowM],
          [d.outerM, d.lowM],
          [d.outerM, d.highM],
          [d.innerM, d.highM],
        ],
        d.midRad - d.spanRad / 2,
        d.midRad + d.spanRad / 2,
        { facets: 72 },
      );
    case 'cord':
      return sweep(circle(d.radiusM, 40), d.wireM, { facets: 6, loop: true });
    case 'sleeve':
      return alongX(ring(d.innerM, d.outerM, d.fromM, d.toM, 48));
    case 'mound':
      return mound(d.radiusM, d.heightM, d.thickM);
    case 'lumps':
      return join(...[0, 1, 2, 3, 4, 5, 6].map((n) => lump(d.radiusM, n)));
    case 'peg':
      return lathe(
        [
          [0, -d.lengthM / 2],
          [d.radiusM * 0.7, -d.lengthM / 2],
          [d.radiusM * 1.6, d.lengthM / 2],
          [0, d.lengthM / 2],
        ],
        { facets: 14 },
      );
    case 'wrench':
      return wrench(d.acrossM, d.lengthM);
    case 'saw':
      return saw();
    case 'hammer':
      return join(
        alongX(ring(0, 0.014, -0.045, 0.045, 16)),
        moved(ring(0, 0.009, -0.24, -0.0142, 12), [0, 0, 0]),
      );
  }
}

const circle = (radiusM: number, count: number): Vec3[] =>
  Array.from({ length: count }, (_, i): Vec3 => {
    const a = (2 * Math.PI * i) / count;
    return [radiusM * Math.cos(a), radiusM * Math.sin(a), 0];
  });

function mound(radius: number, height: number, thick: number): Solid {
  const outer = radius + thick;
  return lathe([
    [radius + 0.0002, -0.004],
    [outer + thick * 3, -0.004],
    [outer + thick * 2, 0.004],
    [outer, 0.016],
    [outer, height],
    [outer * 0.8, height + thick],
    [0, height + thick * 1.3],
    [0, height + 0.0002],
    [radius + 0.0002, height + 0.0002],
  ]);
}

/** A flake of scale at the wall of a bore; where and how large is scattered but always the same. */
function lump(boreRadius: number, n: number): Solid {
  const chance = (k: number) => Math.abs((Math.sin(n * 12.9898 + k * 78.233) * 43758.5453) % 1);
  const size = 0.0012 + 0.0016 * chance(1);
  const flake = lathe(
    [
      [0, 0],
      [size, size * 0.4],
      [size * 0.7, size * 0.9],
      [0, size],
    ],
    { facets: 5 },
  );
  return turned(moved(flake, [boreRadius - size * 1.05, 0, 0.004 * n * chance(2)]), 2 * Math.PI * chance(3));
}

/** Open jaw round the origin, handle along −y. */
function wrench(across: number, length: number): Solid {
  const [a, jaw, thick] = [across / 2 + 0.0006, 0.013, 0.009];
  return join(
    box(-a - jaw, -a, -a, a + 0.004, -thick, thick),
    box(a, a + jaw, -a, a + 0.004, -thick, thick),
    box(-a - jaw, a + jaw, -a - 0.018, -a - 0.0002, -thick, thick),
    box(-0.011, 0.011, -length, -a - 0.0182, -0.006, 0.006),
  );
}

/** Hand saw across a pipe along y: blade's edge at the origin, along x, frame above. */
function saw(): Solid {
  const bow: Vec3[] = [
    [-0.19, 0, 0.012],
    [-0.19, 0, 0.085],
    [-0.16, 0, 0.1],
    [0.12, 0, 0.1],
    [0.15, 0, 0.085],
    [0.15, 0, 0.012],
  ];
  return join(
    box(-0.195, 0.155, -0.0006, 0.0006, 0, 0.011),
    sweep(bow, 0.005, { facets: 8 }),
    box(0.157, 0.178, -0.009, 0.009, -0.03, 0.05),
  );
}
