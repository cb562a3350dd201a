import { describe, expect, it } from 'vitest';
import { constants, pieces } from '../../src/core/catalogue/index.ts';
import {
  backedOffSlot,
  type ChainSet,
  circleM2,
  cupGasketHoldsPa,
  fillTorqueNm,
  forceForTorqueN,
  gapAtM,
  holdTorqueNm,
  makeUpTorqueNm,
  turnsForTorque,
  madeUpLeakCdAM2,
  relaxationShare,
  seatRingSlot,
  type SeatSpring,
  seatSaddle,
  selfEnergisedLeakCdAM2,
  squeezeStopper,
  squeezeUnderGas,
  stopperFrictionN,
  stopperLeak,
  type StopperRubber,
  stopperVerdict,
  tensionerTorqueNm,
  thrustN,
  torqueForWallStressNm,
  turnsForClamp,
  uncoveredAreaM2,
} from '../../src/core/physics/index.ts';
import { psi, toPsi } from '../../src/core/units/index.ts';

/* Rows of the project's own sheet of starting numbers; rounded there to two or three figures, 3 % allowed. */
const c = constants;
const chains: ChainSet = {
  legs: 4,
  legStiffnessNPerM: c.chainLegStiffnessNPerM.value,
  advancePerTurnM: c.tensionerAdvanceM.value,
  spanM: c.chainSpanM.value,
};
const seat: SeatSpring = {
  stiffnessNPerM: c.seatRingStiffnessNPerM.value,
  thicknessM: c.seatRingRubberM.value,
  stopSqueeze: c.seatRingStopSqueeze.value,
  outerDiameterM: c.seatRingOuterM.value,
};
const ring = {
  innerDiameterM: c.seatRingInnerM.value,
  outerDiameterM: c.seatRingOuterM.value,
  thicknessM: c.seatRingRubberM.value,
};
const sound = {
  gapM: c.gapSoundM.value,
  sealSqueeze: c.sealSqueezeSound.value,
  exponent: c.gapExponent.value,
  floorM: 0,
};
const endLoad = (gaugePsi: number): number => thrustN(psi(gaugePsi), circleM2(c.seatRingEndLoadM.value));

function expectWithin(ours: number, sheet: number, share: number): void {
  expect(Math.abs(ours / sheet - 1), `${ours} against ${sheet}`).toBeLessThanOrEqual(share);
}

describe('chains on a seat ring', () => {
  it('seal without gas an eighth of a turn past snug and at 60 psig at 0.17', () => {
    const squeezeAt = (turns: number, psig: number): number =>
      squeezeUnderGas(seatSaddle(chains, seat, turns, turns), chains, seat, endLoad(psig));
    expectWithin(squeezeAt(0.125, 0), c.sealSqueezeSound.value, 0.03);
    expectWithin(squeezeAt(0.17, 60), c.sealSqueezeSound.value, 0.05);
  });

  it('meet the metal stop at 0.47 of a turn and spoil a leg at about 1.6', () => {
    expect(seatSaddle(chains, seat, 0.46, 0.46).onMetal).toBe(false);
    expect(seatSaddle(chains, seat, 0.48, 0.48).onMetal).toBe(true);
    expectWithin(turnsForClamp(chains, seat, 4 * c.chainLegOverloadN.value), 1.6, 0.03);
  });

  it('clamp the target of a third of a turn between 1.4 and 2.0 kN, for the torques a leg the sheet says', () => {
    const clamp = seatSaddle(chains, seat, 1 / 3, 1 / 3).clampN;
    expect(clamp).toBeGreaterThan(1400);
    expect(clamp).toBeLessThan(2000);
    const torque = (turns: number): number =>
      tensionerTorqueNm(
        seatSaddle(chains, seat, turns, turns).leftLegN,
        c.tensionerDiameterM.value,
        c.nutFactor.value,
      );
    expectWithin(torque(0.125), 0.7, 0.03);
    expectWithin(torque(1 / 3), 1.8, 0.03);
    expectWithin(torque(0.47), 2.6, 0.03);
    expectWithin(torque(1.6), 20, 0.03);
  });

  it('need 1.25 kN at 60 psig and 1.04 kN at 35: seating stress on the rubber plus the end load', () => {
    const area = circleM2(ring.outerDiameterM) - circleM2(ring.innerDiameterM);
    expectWithin(area, 531e-6, 0.005);
    expectWithin(c.seatingStressPa.value * area + endLoad(60), 1250, 0.01);
    expectWithin(c.seatingStressPa.value * area + endLoad(35), 1040, 0.01);
  });

  it('lose sealing on one edge at 0.67 turn of difference from 20 % and at 0.26 from 12.7 %', () => {
    const lost = seatSaddle(chains, seat, 1, 0).edgeSqueezeLost;
    expectWithin(lost, 0.18, 0.01);
    expectWithin(0.2 - 0.67 * lost, c.sealSqueezeSound.value, 0.02);
    expectWithin(0.127 - 0.26 * lost, c.sealSqueezeSound.value, 0.02);
  });

  it('go slack together when scale crushes, and never push', () => {
    const drawn = seatSaddle(chains, seat, 1 / 3, 1 / 3);
    const tapped = seatSaddle(chains, seat, 1 / 3, 1 / 3, c.tapScaledM.value);
    expect(tapped.clampN).toBeLessThan(drawn.clampN / 2);
    expect(seatSaddle(chains, seat, 0.1, 0.1, 1e-3)).toMatchObject({
      clampN: 0,
      leftLegN: 0,
      rightLegN: 0,
      squeeze: 0,
    });
  });

  it('pull harder on the side drawn up, the more the more uneven', () => {
    const slight = seatSaddle(chains, seat, 0.35, 0.3);
    const strong = seatSaddle(chains, seat, 0.6, 0.05);
    expect(slight.leftLegN).toBeGreaterThan(slight.rightLegN);
    expect(strong.leftLegN / strong.rightLegN).toBeGreaterThan(slight.leftLegN / slight.rightLegN);
    expect(2 * (strong.leftLegN + strong.rightLegN)).toBeCloseTo(strong.clampN, 9);
  });
});

describe('a seat ring', () => {
  it('closes its gap with squeeze, smoothly to nothing, and lifts open below none', () => {
    let before = Infinity;
    for (let squeeze = -0.05; squeeze <= 0.1; squeeze += 0.005) {
      const gap = gapAtM(sound, squeeze, ring.thicknessM);
      expect(gap).toBeLessThanOrEqual(before);
      before = gap;
    }
    expect(gapAtM(sound, 0, ring.thicknessM)).toBe(sound.gapM);
    expect(gapAtM(sound, 0.081, ring.thicknessM)).toBe(0);
    expect(gapAtM({ ...sound, floorM: 2.7e-6 }, 0.2, ring.thicknessM)).toBe(2.7e-6);
  });

  it('leaks round one edge when the saddle leans', () => {
    expect(seatRingSlot(ring, sound, 0.12, 0).gapM).toBe(0);
    const leaning = seatRingSlot(ring, sound, 0.12, 0.08);
    expect(leaning.gapM).toBeGreaterThan(0);
    expect(seatRingSlot(ring, sound, 0.12, 0.12).gapM).toBeGreaterThan(leaning.gapM);
    expectWithin(leaning.perimeterM, 0.125, 0.01);
  });

  it('of another size leaves a hole', () => {
    expect(uncoveredAreaM2(0.0355, 0.04)).toBe(0);
    expectWithin(uncoveredAreaM2(0.042, 0.0419), 6.6e-6, 0.02);
  });
});

describe('seals that energise themselves', () => {
  it('leak most at low pressure, and what was measured at the reference there', () => {
    const at = (gaugePa: number): number => selfEnergisedLeakCdAM2(9e-10, 0.7e6, gaugePa, psi(35));
    expect(at(psi(35))).toBeCloseTo(9e-10, 20);
    expect(at(psi(2))).toBeGreaterThan(at(psi(35)));
    expect(at(psi(60))).toBeLessThan(at(psi(35)));
  });

  // The sheet gives Ø 70 mm, 929 and 1,592 N, 258 and 442 N a leg. Gas cannot lift on less than the saddle's own bore of
  // 76.2 mm; on the middle of the flange it lifts with (83.6/70)² = 1.426 times as much, and so asks of every leg.
  it('the cup gasket stays shut at 368 N a leg at 35 psig and 630 N at 60, and lifts with less', () => {
    const load = (psig: number): number => thrustN(psi(psig), circleM2(c.cupGasketEndLoadM.value));
    expectWithin(load(35), 929 * 1.426, 0.005);
    expectWithin(load(60), 1592 * 1.426, 0.005);
    const holdsPsig = (leg: number, leanN = 0): number =>
      toPsi(cupGasketHoldsPa(4 * leg, leanN, circleM2(c.cupGasketEndLoadM.value), c.cupGasketMargin.value));
    expectWithin(holdsPsig(368), 35, 0.005);
    expectWithin(holdsPsig(630), 60, 0.005);
    expect(holdsPsig(630, 100)).toBeLessThan(60);
    expect(holdsPsig(0, 100)).toBe(0);
  });

  it('the gas lifts on the middle of what seals, as the pieces are drawn: ring and gasket alike', () => {
    const bore = pieces.saddle.dims().boreM;
    const { flangeOdM } = pieces.cupGasket.dims('1');
    expect(c.cupGasketEndLoadM.value).toBeCloseTo((bore + flangeOdM) / 2, 9);
    expect(c.cupGasketEndLoadM.low).toBeCloseTo(bore, 9);
    expect(c.cupGasketEndLoadM.high).toBeCloseTo(flangeOdM, 9);
    expect(flangeOdM).toBeLessThan(pieces.splitCollar.dims('1').odM);
    const ring = pieces.seatRing.dims('1');
    expectWithin(c.seatRingEndLoadM.value, (ring.rubberIdM + ring.rubberOdM) / 2, 0.01);
  });

  it('rubber loses a tenth a decade after ten seconds', () => {
    expect(relaxationShare(5, 0.1, 10)).toBe(1);
    expect(relaxationShare(100, 0.1, 10)).toBeCloseTo(0.9, 12);
    expect(relaxationShare(1000, 0.1, 10)).toBeCloseTo(0.8, 12);
  });
});

describe('a bore stopper in an NPS 1 bore', () => {
  const stopper: StopperRubber = {
    boreM: c.stopperBoreM.value,
    freeM: c.stopperFreeM.value,
    coreM: c.stopperCoreM.value,
    lengthM: c.stopperLengthM.value,
    shearModulusPa: c.stopperShearModulusPa.value,
    screwM: c.stopperScrewM.value,
    nutFactor: c.stopperNutFactor.value,
  };

  it('fills at 0.58 N·m, seals 35 psig at 1.03 and 60 psig at 1.21, holds 60 psig oily at 1.41', () => {
    expectWithin(fillTorqueNm(stopper), 0.58, 0.02);
    expectWithin(torqueForWallStressNm(stopper, psi(35) + c.stopperSealMarginPa.value), 1.03, 0.02);
    expectWithin(torqueForWallStressNm(stopper, psi(60) + c.stopperSealMarginPa.value), 1.21, 0.02);
    expectWithin(holdTorqueNm(stopper, psi(60), c.stopperFrictionOily.value), 1.41, 0.02);
  });

  it('holds by its wall what its friction carries: firm it holds 60 psig oily, marginal it slips', () => {
    const thrust = thrustN(psi(60), circleM2(stopper.boreM));
    const at = (torqueNm: number): string =>
      stopperVerdict(
        thrust,
        stopperFrictionN(stopper, squeezeStopper(stopper, torqueNm), c.stopperFrictionOily.value),
      );
    expect(at(c.stopperFirmLowNm.value)).toBe('holds');
    expect(at(1.43)).toBe('creeps');
    expect(at(1.2)).toBe('slips');
  });

  it('grows with torque until it fills, leaves an open ring before and a closing gap after', () => {
    let area = Infinity;
    for (const torqueNm of [0, 0.1, 0.2, 0.4, 0.55]) {
      const leak = stopperLeak(stopper, squeezeStopper(stopper, torqueNm), psi(35), 0.2e6, 30e-6);
      expect(leak.openAreaM2).toBeLessThan(area);
      area = leak.openAreaM2;
    }
    const gap = (torqueNm: number, margin: number): number =>
      stopperLeak(stopper, squeezeStopper(stopper, torqueNm), psi(35), margin, 30e-6).gapM;
    expect(gap(0.7, 0.2e6)).toBeGreaterThan(gap(0.9, 0.2e6));
    expect(gap(1.05, 0.2e6)).toBe(0);
    expect(gap(1.05, c.stopperSealMarginScaledPa.value)).toBeGreaterThan(0);
  });

  it('keeps its volume while it is squeezed free', () => {
    const fit = squeezeStopper(stopper, 0.3);
    const ringArea = circleM2(fit.diameterM) - circleM2(stopper.coreM);
    const freeRing = circleM2(stopper.freeM) - circleM2(stopper.coreM);
    const stretch = freeRing / ringArea;
    const force = forceForTorqueN(0.3, stopper.screwM, stopper.nutFactor);
    expectWithin(stopper.shearModulusPa * freeRing * (1 / (stretch * stretch) - stretch), force, 1e-9);
  });
});

describe('taper threads', () => {
  it('come to 1.7 turns past hand-tight with 76 N·m at 45 a turn, and take none short of hand-tight', () => {
    expect(makeUpTorqueNm(1.7, c.nptMakeUpTorquePerTurnNm.value)).toBeCloseTo(76.5, 9);
    expect(turnsForTorque(76.5, c.nptMakeUpTorquePerTurnNm.value)).toBeCloseTo(c.nptMakeUpTurns.value, 9);
    expect(makeUpTorqueNm(-1, 45)).toBe(0);
  });

  it('open a slot that grows with turns backed off: an eighth of a turn is 8.6 µm on NPS 1', () => {
    const thread = { pitchM: 0.0254 / 11.5, e1M: 1.23863 * 0.0254 };
    expectWithin(backedOffSlot(thread, 0.125, 6.3).gapM, 8.6e-6, 0.01);
    expect(backedOffSlot(thread, 0, 6.3).gapM).toBe(0);
    expect(backedOffSlot(thread, 2, 6.3).lengthM).toBeLessThan(backedOffSlot(thread, 1, 6.3).lengthM);
  });

  it('made up with sealant are tight, without weep, short of their turns leak, crossed leak worst', () => {
    const leaks = { sealedM2: 5e-14, noSealantM2: 2e-8, crossedM2: 3e-7, handTightM2: 1e-7 };
    const made = (turns: number, sealant: boolean, crossed: boolean): number =>
      madeUpLeakCdAM2({ turnsPastHandTight: turns, sealTurns: 1.3, sealant, crossed }, leaks);
    expect(made(1.7, true, false)).toBe(5e-14);
    expect(made(1.7, false, false)).toBe(2e-8);
    expect(made(0.5, true, false)).toBeGreaterThan(5e-14);
    expect(made(0, true, false)).toBeGreaterThan(made(0.5, true, false));
    expect(made(1.7, true, true)).toBe(3e-7);
  });
});
