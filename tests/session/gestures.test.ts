import { describe, expect, it } from 'vitest';
import type { Action } from '../../src/core/rig/index.ts';
import { begin } from '../../src/core/run/index.ts';
import { readPulls, type Pull } from '../../src/session/index.ts';
import { yardScenario } from './yard.ts';

const { rig } = begin(yardScenario());

function pulled(pulls: readonly Pull[], everyMs = 40): Action[] {
  const acts: Action[] = [];
  const hand = readPulls((action) => acts.push(action));
  pulls.forEach((pull, i) => hand.pull(pull, rig, true, i * everyMs));
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

  it('tells the two tensioners of a chain apart, and the two bolts of the collar', () => {
    const hung = {
      ...rig,
      chains: [
        { ...rig.chains[0], piece: 'chain-b' },
        { ...rig.chains[1], piece: 'chain-a' },
      ],
    } as const;
    const acts: Action[] = [];
    const hand = readPulls((action) => acts.push(action));
    for (const target of [
      'chain-a/left',
      'chain-a/right',
      'splitCollar-1/leftBolt',
      'splitCollar-1/rightBolt',
    ])
      hand.pull(turn(target, 0.25, true), hung, true, 0);
    expect(acts).toEqual([
      { kind: 'tensioner.turn', chain: 1, side: 'left', turns: 0.25 },
      { kind: 'tensioner.turn', chain: 1, side: 'right', turns: 0.25 },
      { kind: 'collarBolt.turn', bolt: 0, turns: 0.25 },
      { kind: 'collarBolt.turn', bolt: 1, turns: 0.25 },
    ]);
  });

  it('pulls the keeper once, at the torque the wrench has come to when it is let go', () => {
    const pulls = Array.from({ length: 10 }, () => turn('keeperPlug-1/square', 0.025));
    expect(pulled(pulls)).toEqual([]);
    expect(pulled([...pulls, turn('keeperPlug-1/square', 0, true)])).toEqual([
      { kind: 'keeper.pull', torqueNm: 150, holdBack: true },
    ]);
    expect(pulled([turn('keeperPlug-1/square', -0.25, true)])).toEqual([]);
  });

  it('pumps both ways', () => {
    const slide = (amount: number, ended = false): Pull => ({
      kind: 'slide',
      target: 'testHead/plunger',
      amount,
      ended,
    });
    expect(pulled([slide(0.06), slide(-0.06, true)])).toEqual([{ kind: 'pump.stroke', strokes: 1 }]);
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
