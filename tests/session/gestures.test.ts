import { describe, expect, it } from 'vitest';
import type { Action } from '../../src/core/rig/index.ts';
import { begin } from '../../src/core/run/index.ts';
import { readPulls, type Pull } from '../../src/session/index.ts';
import { yardScenario } from './yard.ts';

const { rig } = begin(yardScenario());

function pulled(pulls: readonly Pull[], everyMs = 40): Action[] {
  const acts: Action[] = [];
  const read = readPulls((action) => acts.push(action));
  pulls.forEach((pull, i) => read(pull, rig, true, i * everyMs));
  return acts;
}

const turn = (target: string, amount: number, ended = false): Pull => ({
  kind: 'turn',
  target,
  amount,
  ended,
});

describe('a pull on the picture', () => {
  it('comes to whole steps a hand can tell, and loses nothing before it lets go', () => {
    const pulls = Array.from({ length: 50 }, () => turn('topPlug/square', -0.01));
    const acts = pulled([...pulls, turn('topPlug/square', 0, true)]);
    const turned = acts.map((act) => (act.kind === 'plug.turn' ? act.turns : NaN));
    for (const turns of turned) expect(Math.abs(turns * 24 - Math.round(turns * 24))).toBeLessThan(1e-9);
    expect(turned.reduce((sum, turns) => sum + turns, 0)).toBeCloseTo(-0.5, 9);
  });

  it('makes at most ten acts a second', () => {
    const pulls = Array.from({ length: 100 }, () => turn('rod/outer', 0.2));
    expect(pulled(pulls, 20).length).toBeLessThanOrEqual(20);
  });

  it('opens the isolation valve counter-clockwise, a quarter turn from shut to open', () => {
    expect(pulled([turn('isolationValve/handle', -0.25, true)])).toEqual([
      { kind: 'valve.turn', angleRad: expect.closeTo(Math.PI / 2, 9) as number },
    ]);
  });

  it('does nothing to a thing that cannot be taken hold of', () => {
    expect(
      pulled([
        turn('main/body', 3, true),
        { kind: 'slide', target: 'topPlug/square', amount: 1, ended: true },
      ]),
    ).toEqual([]);
  });
});
