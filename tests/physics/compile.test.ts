import { describe, expect, it } from 'vitest';
import { compile, evenContents, liveRig, stepTo, type Network } from '../../src/core/physics/index.ts';

/** The same rig in other sizes, another gas, other places and other links, each by one change. */
const others: Readonly<Record<string, (was: Network) => Network>> = {
  'a cell grown': (was) => ({
    ...was,
    cells: was.cells.map((cell, i) => (i === 1 ? { ...cell, volumeM3: 2 * cell.volumeM3 } : cell)),
  }),
  'a crack opened': (was) => ({
    ...was,
    links: was.links.map((link) => (link.law === 'slot' ? { ...link, gapM: 3 * link.gapM } : link)),
  }),
  'a pipe narrowed': (was) => ({
    ...was,
    links: was.links.map((link) =>
      link.law === 'pipe' ? { ...link, diameterM: 0.5 * link.diameterM } : link,
    ),
  }),
  'heavier gas': (was) => ({ ...was, gas: { ...was.gas, molarMassKgPerMol: 0.02 } }),
  colder: (was) => ({ ...was, temperatureK: 260 }),
  'a main that moves': (was) => ({
    ...was,
    boundaries: was.boundaries.map((one) => ({ ...one, ramp: { ratePaPerS: 100, sinceS: 0 } })),
  }),
  'a link turned round': (was) => ({
    ...was,
    links: was.links.map((link) => (link.id === 'hose' ? { ...link, from: link.to, to: link.from } : link)),
  }),
  'a link taken away': (was) => ({ ...was, links: was.links.filter((link) => link.id !== 'joint') }),
  'two cells changed about': (was) => ({ ...was, cells: [...was.cells].reverse() }),
};

describe('a network made ready with another one at hand', () => {
  for (const [change, apply] of Object.entries(others)) {
    it(`steps to the same bits as without it: ${change}`, () => {
      const was = liveRig();
      const next = apply(was);
      const contents = evenContents(next, 3e5, 0.6);
      const alone = stepTo(compile(next), 0, contents, 0.01, 20);
      expect(stepTo(compile(next, compile(was)), 0, contents, 0.01, 20)).toEqual(alone);
      const unchanged = stepTo(compile(was), 0, evenContents(was, 3e5, 0.6), 0.01, 20);
      expect(alone.linkGasMol).not.toEqual(unchanged.linkGasMol);
    });
  }

  it('still refuses a size that cannot be', () => {
    const was = liveRig();
    const next = { ...was, cells: was.cells.map((cell) => ({ ...cell, volumeM3: 0 })) };
    expect(() => compile(next, compile(was))).toThrow(RangeError);
  });
});
