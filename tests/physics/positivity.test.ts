import { describe, expect, it } from 'vitest';
import { compile, type CompiledNetwork } from '../../src/core/physics/index.ts';
import { keepPositive } from '../../src/core/physics/positivity.ts';
import { vessel } from './vessels.ts';

/** A vessel with 1 mol of air and 0.001 of gas out of which a step would take so much. */
function owing(airMol: number, gasMol: number): CompiledNetwork {
  const net = compile(
    vessel(1e-3, [
      { id: 'one', between: 'vessel-air', law: 'orifice', cdAM2: 1e-6 },
      { id: 'other', between: 'air-vessel', law: 'orifice', cdAM2: 1e-6 },
    ]),
  );
  net.scratch.state.set([1, 0.001]);
  net.scratch.linkAirMol.fill(0);
  net.scratch.linkGasMol.fill(0);
  // The first stage counts twice; half of everything leaves by each link, the second of which points inward.
  net.scratch.linkAirStages[0].set([airMol / 4, -airMol / 4]);
  net.scratch.linkGasStages[0].set([gasMol / 4, -gasMol / 4]);
  return net;
}

describe('a cell that would be left owing', () => {
  it.each(['gas', 'air'] as const)('gives what it had of %s, shared over its links, and no more', (which) => {
    const net = owing(which === 'air' ? 1.0001 : 0.5, which === 'gas' ? 0.0011 : 0.0005);
    expect(keepPositive(net, false)).toBe(true);
    const { linkAirMol: air, linkGasMol: gas } = net.scratch;
    const [airLeft, gasLeft] = net.scratch.state;
    expect(which === 'air' ? airLeft : gasLeft).toBe(0);
    expect(air[0] - air[1] + airLeft).toBeCloseTo(1, 14);
    expect(gas[0] - gas[1] + gasLeft).toBeCloseTo(0.001, 16);
    expect(which === 'air' ? gasLeft : airLeft).toBe(0.5 * (which === 'air' ? 0.001 : 1));
    expect(air[0]).toBeCloseTo(-air[1], 15);
  });

  it('refuses the step when it would owe more than the error allowed, unless no shorter step is left', () => {
    expect(keepPositive(owing(0.5, 0.003), false)).toBe(false);
    const net = owing(0.5, 0.003);
    expect(keepPositive(net, true)).toBe(true);
    expect(net.scratch.state[1]).toBe(0);
  });

  it('leaves a step alone that owes nothing', () => {
    const net = owing(0.5, 0.0005);
    expect(keepPositive(net, false)).toBe(true);
    expect([...net.scratch.linkGasMol]).toEqual([0.00025, -0.00025]);
  });
});
