import { describe, expect, it } from 'vitest';
import {
  couplingSizes,
  crestDiameterM,
  npsList,
  pipes,
  taperThreads,
  type Nps,
  type ThreadNps,
} from '../../src/core/catalogue/index.ts';

/** ASME B36.10M, schedule 40, inches (NPS 6 and up: from memory). */
const b3610: Record<Nps, readonly [od: number, wall: number, id: number]> = {
  '3/4': [1.05, 0.113, 0.824],
  '1': [1.315, 0.133, 1.049],
  '1-1/4': [1.66, 0.14, 1.38],
  '1-1/2': [1.9, 0.145, 1.61],
  '2': [2.375, 0.154, 2.067],
  '3': [3.5, 0.216, 3.068],
  '4': [4.5, 0.237, 4.026],
  '6': [6.625, 0.28, 6.065],
  '8': [8.625, 0.322, 7.981],
  '10': [10.75, 0.365, 10.02],
  '12': [12.75, 0.406, 11.938],
};

describe('steel pipe is that of ASME B36.10M schedule 40', () => {
  it.each(npsList)('NPS %s: outside, wall and bore to a nanometre', (nps) => {
    const [od, wall, id] = b3610[nps];
    expect(pipes[nps].odM).toBeCloseTo(od * 0.0254, 9);
    expect(pipes[nps].wallM).toBeCloseTo(wall * 0.0254, 9);
    expect(pipes[nps].idM).toBeCloseTo(id * 0.0254, 9);
  });

  it('a bore is the outside less two walls, within a millionth of a metre', () => {
    for (const nps of npsList) {
      const { odM, wallM, idM } = pipes[nps];
      expect(Math.abs(odM - 2 * wallM - idM)).toBeLessThan(1e-6);
    }
  });

  it('says from memory where nobody has opened the document', () => {
    expect(pipes['4'].source).toMatch(/^published: /);
    expect(pipes['6'].source).toMatch(/^from memory: /);
  });
});

/** ASME B1.20.1 Table 2: threads an inch, E0, E1, L1, L2, L3, hand-tight threads, total threads. */
const b1201: Record<ThreadNps, readonly number[]> = {
  '3/4': [14, 0.96768, 0.98887, 0.339, 0.5457, 0.2143, 4.75, 7.75],
  '1': [11.5, 1.21363, 1.23863, 0.4, 0.6828, 0.2609, 4.6, 7.6],
  '1-1/4': [11.5, 1.55713, 1.58338, 0.42, 0.7068, 0.2609, 4.83, 7.83],
  '1-1/2': [11.5, 1.79609, 1.82234, 0.42, 0.7235, 0.2609, 4.83, 7.83],
  '2': [11.5, 2.26902, 2.29627, 0.436, 0.7565, 0.2609, 5.01, 8.01],
};

describe('taper threads are those of ASME B1.20.1 Table 2', () => {
  it.each(Object.keys(b1201) as ThreadNps[])('NPS %s: the row and the formulas behind it', (nps) => {
    const [tpi, e0, e1, l1, l2, l3, hand, total] = b1201[nps];
    const t = taperThreads[nps];
    expect([t.threadsPerInch, t.e0M / 0.0254, t.e1M / 0.0254]).toEqual([
      tpi,
      expect.closeTo(e0, 9),
      expect.closeTo(e1, 9),
    ]);
    expect([t.l1M, t.l2M, t.l3M].map((m) => m / 0.0254)).toEqual(
      [l1, l2, l3].map((x) => expect.closeTo(x, 9)),
    );
    const outside = pipes[nps].odM / 0.0254;
    const pitch = 1 / tpi;
    // Formulas of the same standard; the table prints five and four decimals.
    expect(outside - (0.05 * outside + 1.1) * pitch).toBeCloseTo(e0, 5);
    expect(e0 + l1 / 16).toBeCloseTo(e1, 5);
    expect((0.8 * outside + 6.8) * pitch).toBeCloseTo(l2, 4);
    // Turns are printed to two decimals.
    expect(Math.abs(t.l1M / t.pitchM - hand)).toBeLessThan(0.01);
    expect(Math.abs(t.madeUpM / t.pitchM - total)).toBeLessThan(0.01);
  });

  it('the crest a stopper must pass at the inner end of an NPS 1 top thread is about 28.6 mm', () => {
    // Worked from the table: E1 less taper over the effective length less one thread height. Tolerance 0.1 mm.
    expect(crestDiameterM('1', taperThreads['1'].l2M) * 1000).toBeCloseTo(28.6, 0);
    expect(Math.abs(crestDiameterM('1', taperThreads['1'].l2M) - 0.0286)).toBeLessThan(1e-4);
  });
});

describe('couplings are class 3000 of ASME B16.11-2016 Table 5', () => {
  it.each([
    ['3/4', 51, 35, 12.7],
    ['1', 60, 44, 14.7],
    ['1-1/4', 67, 57, 17],
  ] as const)('NPS %s: %d mm end to end, %d mm outside, %d mm least thread', (nps, w, d, b) => {
    const c = couplingSizes[nps];
    expect([c.fullLengthM, c.halfLengthM, c.odM, c.minThreadM]).toEqual(
      [w, w / 2, d, b].map((x) => expect.closeTo(x / 1000, 12)),
    );
  });
});
