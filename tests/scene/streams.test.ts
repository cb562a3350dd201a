import { describe as group, expect, it } from 'vitest';
import scenario from '../../scenarios/abandon-1in-tee-on-4in-main/scenario.json';
import { pieces, rigJoint } from '../../src/core/catalogue/index.ts';
import { setUp, type Job } from '../../src/core/rig/index.ts';
import {
  bubblesPerS,
  BUBBLES_FROM_MOL_PER_S,
  describe,
  dotsAt,
  gasColour,
  legend,
  particlesPerS,
  SCALE_TOP_GAUGE_PA,
  type FlowView,
  type FluidView,
  type Shown,
} from '../../src/scene/index.ts';

const stream = (kgPerS: number): FlowView => ({
  link: 'bleed',
  path: [
    [0, 0, 0],
    [0, 0, 0.3],
  ],
  kgPerS,
  gasFraction: 1,
  spreadM: 0.002,
});
const wet = (gasMolPerS: number): FluidView => ({ at: 'seat', centre: [0, 0, 0], radiusM: 0.02, gasMolPerS });

group('streams and bubbles are what flows, and nothing else', () => {
  it('no flow, no particle; no leak, no bubble', () => {
    expect(particlesPerS(0)).toBe(0);
    expect(bubblesPerS(0)).toBe(0);
    for (const atS of [0, 1, 17.3, 3600]) expect(dotsAt([stream(0)], [wet(0)], atS)).toEqual([]);
  });

  it('the trembling of air in an open pipe is no stream, at any moment', () => {
    // What the solver leaves over the open, shut valve in the main job: 5e-11 kg/s (measured).
    for (const atS of [0, 1, 3, 17.3, 3600]) expect(dotsAt([stream(5.13e-11)], [], atS)).toEqual([]);
    expect(dotsAt([stream(1e-6)], [], 3)).not.toEqual([]);
  });

  it('a tighter leak than fluid can show (ASTM E515, 1e-4 std cm³/s) gives no bubble, a wider one does', () => {
    expect(bubblesPerS(BUBBLES_FROM_MOL_PER_S * 0.99)).toBe(0);
    expect(bubblesPerS(BUBBLES_FROM_MOL_PER_S)).toBeGreaterThan(0);
    expect(dotsAt([], [wet(1e-6)], 10).every((d) => d.kind === 'bubble')).toBe(true);
    expect(dotsAt([], [wet(1e-6)], 10).length).toBeGreaterThan(0);
  });

  it('more flow is seen as more, over seven decades', () => {
    let last = 0;
    for (let kgPerS = 1e-8; kgPerS < 1; kgPerS *= 3) {
      expect(particlesPerS(kgPerS)).toBeGreaterThan(last);
      last = particlesPerS(kgPerS);
    }
    expect(last).toBeLessThan(90);
    expect(dotsAt([stream(1e-3)], [], 20).length).toBeGreaterThan(2 * dotsAt([stream(1e-5)], [], 20).length);
  });

  it('looking twice at one moment shows the same', () => {
    expect(dotsAt([stream(1e-3)], [wet(1e-5)], 12.25)).toEqual(dotsAt([stream(1e-3)], [wet(1e-5)], 12.25));
  });
});

const job = scenario.job as unknown as Job;

group('gas in the picture', () => {
  const shown: Shown = {
    readings: null,
    fluid: [],
    doing: null,
    gas: {
      cells: [
        { id: 'main', gaugePa: 241316, gasFraction: 1 },
        { id: 'barrel', gaugePa: 241316, gasFraction: 1 },
        { id: 'service1', gaugePa: 241000, gasFraction: 1 },
      ],
      links: [
        { id: 'bore', kgPerS: -0.001, gasFraction: 1 },
        { id: 'plug', kgPerS: 0, gasFraction: 1 },
      ],
    },
  };

  it('is not described unless it may be shown', () => {
    const view = describe(setUp(job));
    expect(view.gas).toEqual([]);
    expect(view.flows).toEqual([]);
  });

  it('lies inside the walls that hold it', () => {
    const view = describe(setUp(job), shown);
    const tee = pieces.serviceTee.dims('1');
    const widest = {
      main: pieces.main.dims('4').idM,
      barrel: tee.portIdM,
      service1: pieces.serviceLine.dims('1').idM,
    };
    expect(view.gas.length).toBeGreaterThan(4);
    for (const body of view.gas) {
      expect(body.radiusM * 2).toBeLessThan(widest[body.cell as keyof typeof widest]);
      expect(body.radiusM * 2).toBeLessThan(Math.max(rigJoint.boreM, widest.main));
    }
  });

  it('a stream that turns back runs its path the other way, and a still link has none', () => {
    const view = describe(setUp(job), shown);
    expect(view.flows.map((f) => f.link)).toEqual(['bore']);
    const [first, last] = [view.flows[0].path[0], view.flows[0].path[2]];
    expect(first[2]).toBeGreaterThan(last[2]);
    expect(view.flows[0].kgPerS).toBe(0.001);
  });
});

/** Relative luminance of sRGB, W3C definition. */
const luminance = (rgb: readonly number[]) => {
  const [r, g, b] = rgb.map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

group('the pressure scale reads without colour', () => {
  it.each(['light', 'dark'] as const)(
    'in the %s theme lightness alone tells the pressure, for gas and for air',
    (theme) => {
      const stops = legend(theme);
      expect(stops[0].gaugePa).toBe(0);
      expect(stops[stops.length - 1].gaugePa).toBe(SCALE_TOP_GAUGE_PA);
      const sign = theme === 'light' ? -1 : 1;
      for (let i = 1; i < stops.length; i++) {
        expect(sign * (luminance(stops[i].gas) - luminance(stops[i - 1].gas))).toBeGreaterThan(0.01);
        expect(sign * (luminance(stops[i].air) - luminance(stops[i - 1].air))).toBeGreaterThan(0.01);
      }
    },
  );

  it('ends differ by at least the 3 to 1 that graphics need (WCAG 2.2, 1.4.11)', () => {
    for (const theme of ['light', 'dark'] as const) {
      const [low, high] = [gasColour(0, 1, theme), gasColour(SCALE_TOP_GAUGE_PA, 1, theme)].map(luminance);
      expect((Math.max(low, high) + 0.05) / (Math.min(low, high) + 0.05)).toBeGreaterThan(3);
    }
  });

  it('stays at its ends beyond them', () => {
    expect(gasColour(2 * SCALE_TOP_GAUGE_PA, 1, 'light')).toEqual(gasColour(SCALE_TOP_GAUGE_PA, 1, 'light'));
    expect(gasColour(-1000, 1, 'light')).toEqual(gasColour(0, 1, 'light'));
  });
});
