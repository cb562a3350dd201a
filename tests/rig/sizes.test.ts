import { describe, expect, it } from 'vitest';
import { constants, constantsByTeeSize, pieces } from '../../src/core/catalogue/index.ts';
import { circleM2, fillTorqueNm, holdTorqueNm, torqueForWallStressNm } from '../../src/core/physics/index.ts';
import {
  act,
  endLoadN,
  setUp,
  stillAir,
  stopperRubber,
  stopperThrustN,
  type Action,
  type FactBody,
  type RigState,
  type TeeSize,
} from '../../src/core/rig/index.ts';
import { psi } from '../../src/core/units/index.ts';
import { paired, tees } from '../scenarios/pairings.ts';

const ids = { '3/4': '34', '1': '1', '1-1/4': '114' } as const;
const rigOf = (tee: TeeSize, change: Partial<RigState> = {}): RigState => ({
  ...setUp(paired('12', tee, 35).job),
  ...change,
});
const does = (rig: RigState, action: Action): { rig: RigState; facts: readonly FactBody[] } => {
  const outcome = act(rig, action, stillAir);
  if (typeof outcome === 'string') throw new Error(`${action.kind}: ${outcome}`);
  return outcome;
};

describe('numbers that go with the size of the tee', () => {
  it.each(Object.entries(constantsByTeeSize))(
    '%s lies in its range and grows or falls with the size',
    (_, rows) => {
      for (const row of Object.values(rows)) {
        expect(row.value).toBeGreaterThan(row.low);
        expect(row.value).toBeLessThan(row.high);
      }
      const [small, middle, large] = tees.map((tee) => rows[tee].value);
      expect((middle - small) * (large - middle)).toBeGreaterThan(0);
    },
  );

  it('stiffness of the seat ring goes with its rubber, within 1 % (assumed)', () => {
    const perM2 = (tee: TeeSize): number => {
      const { rubberIdM, rubberOdM } = pieces.seatRing.dims(tee);
      return (
        constantsByTeeSize.seatRingStiffnessNPerM[tee].value / (circleM2(rubberOdM) - circleM2(rubberIdM))
      );
    };
    for (const tee of tees) expect(Math.abs(perM2(tee) / perM2('1') - 1), tee).toBeLessThan(0.01);
  });

  it.each(tees)('gas lifts the saddle over an NPS %s ring from between its rubber’s circles', (tee) => {
    const { rubberIdM, rubberOdM } = pieces.seatRing.dims(tee);
    const rig = rigOf(tee, { saddle: { on: 'tee', piece: 'saddle', cradles: [] } });
    const loadN = endLoadN(rig, psi(60));
    expect(loadN).toBeGreaterThan(psi(60) * circleM2(rubberIdM));
    expect(loadN).toBeLessThan(psi(60) * circleM2(rubberOdM));
    // the handbook's clamp at 60 psig counts 520 N of gas on NPS 1 (assumed diameter)
    if (tee === '1') expect(loadN).toBeCloseTo(520, 0);
  });
});

describe('a bore stopper of each size', () => {
  // P·A on the bores of 0.5333, 0.8643 and 1.4957 in² (ASME B36.10M schedule 40) at 60 psig; within 1 N.
  it.each([
    ['3/4', 142],
    ['1', 231],
    ['1-1/4', 399],
  ] as const)('of NPS %s is pushed with %i N at 60 psig', (tee, thrustN) => {
    expect(Math.abs(stopperThrustN(rigOf(tee), psi(60), 0) - thrustN)).toBeLessThan(1);
  });

  // The handbook's table (computed from assumed rubber): fill, seal at 35 and 60 psig, hold 60 psig oily; within 10 %.
  it.each([
    ['3/4', 0.38, 0.62, 0.71, 0.78],
    ['1', 0.58, 1.03, 1.21, 1.41],
    ['1-1/4', 1.11, 2.09, 2.48, 3.06],
  ] as const)('of NPS %s fills at %f, seals at %f and %f, holds at %f N·m', (tee, fill, at35, at60, oily) => {
    const rubber = stopperRubber(tee, tee);
    const sealNm = (psig: number): number =>
      torqueForWallStressNm(rubber, psi(psig) + constants.stopperSealMarginPa.value);
    const near = (value: number, told: number) => expect(Math.abs(value / told - 1)).toBeLessThan(0.1);
    near(fillTorqueNm(rubber), fill);
    near(sealNm(35), at35);
    near(sealNm(60), at60);
    near(holdTorqueNm(rubber, psi(60), constants.stopperFrictionOily.value), oily);
  });

  it.each(tees)(
    'of NPS %s comes firm by twelfths of a turn inside its card’s range, and tears well past it',
    (tee) => {
      const [lowNm, highNm] = paired('12', tee, 35).limits.stopperFirmNm;
      const at = rigOf(tee);
      let rig: RigState = {
        ...at,
        stack: [{ id: 'rodBarrel', kind: 'rodBarrel', jointNm: 40 }],
        rod: { ...at.rod, tip: 'stopperHolder', load: 'stopper', held: true },
        stopper: { ...at.stopper, piece: `boreStopper-${ids[tee]}`, at: 'holder', belowPortM: 0.004 },
      };
      const felt: number[] = [];
      let tornNm = 0;
      for (let pulls = 0; pulls < 200 && tornNm === 0; pulls += 1) {
        const done = does(rig, { kind: 'innerRod.turn', turns: 1 / 12 });
        rig = done.rig;
        const squeezed = done.facts.find((f) => f.fact === 'stopper.squeezed');
        const torqueNm = (squeezed?.fact === 'stopper.squeezed' ? squeezed.torqueNm : 0) - 0.4;
        felt.push(torqueNm);
        if (done.facts.some((f) => f.fact === 'stopper.torn')) tornNm = torqueNm;
      }
      expect(felt.filter((nm) => nm >= lowNm && nm <= highNm).length).toBeGreaterThanOrEqual(3);
      expect(tornNm).toBeGreaterThan(constantsByTeeSize.stopperTearNm[tee].value);
      expect(tornNm).toBeLessThan(1.1 * constantsByTeeSize.stopperTearNm[tee].value);
    },
  );
});

describe('the threads of each size', () => {
  // L1 times threads an inch, ASME B1.20.1 Table 2: 0.339 × 14, 0.400 × 11.5, 0.420 × 11.5.
  it.each([
    ['3/4', 4.746],
    ['1', 4.6],
    ['1-1/4', 4.83],
  ] as const)('a closing plug of NPS %s put in by hand in the open stands at %f turns', (tee, turns) => {
    const at = rigOf(tee);
    const out: RigState = { ...at, tee: { ...at.tee, at: 'out' } };
    const { rig } = does(out, { kind: 'piece.place', piece: `closingPlug-${ids[tee]}`, holdBack: true });
    expect(rig.closing.engagedTurns).toBeCloseTo(turns, 6);
  });

  // Make-up of three turns past hand-tight (B1.20.1 L3) takes the handbook's 100, 135 and 180 N·m (assumed), within 6 %.
  it.each([
    ['3/4', 100],
    ['1', 135],
    ['1-1/4', 180],
  ] as const)(
    'a keeper of NPS %s pulled to %i N·m is made up and leaves its stem 1 to 5 mm of gap',
    (tee, torqueNm) => {
      const at = rigOf(tee);
      const started: RigState = {
        ...at,
        plug: { ...at.plug, at: 'out' },
        keeper: { ...at.keeper, piece: `keeperPlug-${ids[tee]}`, at: 'tee', engagedTurns: 4, torqueNm: 3 },
        stopper: { ...at.stopper, piece: `boreStopper-${ids[tee]}`, at: 'set', belowPortM: 0.004 },
      };
      const { facts } = does(started, { kind: 'keeper.pull', torqueNm, holdBack: true });
      const turned = facts.find((f) => f.fact === 'keeper.turned');
      if (turned?.fact !== 'keeper.turned') throw new Error('the keeper did not turn');
      const handTurns = { '3/4': 4.746, '1': 4.6, '1-1/4': 4.83 }[tee];
      expect(Math.abs((turned.engagedTurns - handTurns) / 3 - 1)).toBeLessThan(0.06);
      expect(turned.gapM).toBeGreaterThan(0.001);
      expect(turned.gapM).toBeLessThan(0.005);
    },
  );
});
