import { describe, expect, it } from 'vitest';
import { constants, constantsByTeeSize, pieces, teeSizes } from '../../src/core/catalogue/index.ts';
import { evidence, evidenceItemIds, firstChamber, secondChamber } from '../../src/core/procedure/index.ts';
import { type Fact, type HoldPointId } from '../../src/core/rig/index.ts';
import { steadyRun } from '../judge/play.ts';
import { exercise } from '../scenario/exercise.ts';

const { run } = steadyRun();
const { job, limits } = run.scenario;

/** The story up to and with the signature of a hold point. */
function upTo(id: HoldPointId): readonly Fact[] {
  const at = run.facts.findIndex((f) => f.fact === 'signed' && f.holdPoint === id);
  return run.facts.slice(0, at + 1);
}

function wanting(id: HoldPointId, facts: readonly Fact[]): readonly string[] {
  return evidence(id, facts, limits, job).items.flatMap((one) => (one.met ? [] : [one.id]));
}

type Edit = (facts: readonly Fact[]) => readonly Fact[];
const drop =
  (matches: (f: Fact, i: number) => boolean): Edit =>
  (facts) =>
    facts.filter((f, i) => !matches(f, i));
const alter =
  (matches: (f: Fact) => boolean, change: (f: Fact) => Fact): Edit =>
  (facts) =>
    facts.map((f) => (matches(f) ? change(f) : f));
/** Puts a fact in before the signature, at its time. */
const late =
  (...added: readonly Fact[]): Edit =>
  (facts) => {
    const end = facts[facts.length - 1];
    return [...facts.slice(0, -1), ...added.map((f) => ({ ...f, atS: end.atS })), end];
  };
/** The last fact that matches, changed. */
const alterLast =
  (matches: (f: Fact) => boolean, change: (f: Fact) => Fact): Edit =>
  (facts) => {
    const last = facts.reduce((at, f, i) => (matches(f) ? i : at), -1);
    return facts.map((f, i) => (i === last ? change(f) : f));
  };
const isHead = (f: Fact): boolean => f.fact === 'gauge.read' && f.gauge === 'head';
const reading =
  (gaugePa: number) =>
  (f: Fact): Fact =>
    f.fact === 'gauge.read' ? { ...f, readingGaugePa: gaugePa } : f;
const headTimes = upTo('H2')
  .filter(isHead)
  .map((f) => f.atS);
const atTime =
  (atS: number) =>
  (f: Fact): boolean =>
    isHead(f) && f.atS === atS;

/** The last fact that matches, so much later; nothing may stand between. */
const delay = (matches: (f: Fact) => boolean, byS: number): Edit =>
  alterLast(matches, (f) => ({ ...f, atS: f.atS + byS }));
const shutsBleed = (f: Fact): boolean => f.fact === 'bleed.turned' && f.openRad === 0;

/** A hand lets the rod go a second after the bleed was last shut. */
const letGoAfterShut: Edit = (facts) => {
  const at = facts.reduce((last, f, i) => (shutsBleed(f) ? i : last), -1);
  const letGo: Fact = { atS: facts[at].atS + 1, fact: 'done', action: { kind: 'rod.hold', held: false } };
  return [...facts.slice(0, at + 1), letGo, ...facts.slice(at + 1)];
};

/** The last long time the bleed stayed shut, cut to a minute. */
const shortShutIn: Edit = (facts) => {
  const turns = facts.flatMap((f, i) => (f.fact === 'bleed.turned' ? [i] : []));
  const long = turns
    .filter((i, n) => shutsBleed(facts[i]) && (facts[turns[n + 1]]?.atS ?? 0) - facts[i].atS > 100)
    .pop();
  return facts.map((f, i) => (i === long ? { ...f, atS: f.atS + 61 } : f));
};

const cases: readonly (readonly [HoldPointId, string, Edit, readonly string[]])[] = [
  ['H1', 'a main gauge never zeroed', alter((f) => f.fact === 'gauge.read' && f.gauge === 'main', (f) => (f.fact === 'gauge.read' ? { ...f, zeroed: false } : f)), ['mainPressure']],
  ['H1', 'a main above the rating', alter((f) => f.fact === 'gauge.read' && f.gauge !== 'head', reading(61 * 6894.757)), ['mainPressure']],
  ['H1', 'a second gauge two divisions off', alter((f) => f.fact === 'gauge.read' && f.gauge === 'second', (f) => (f.fact === 'gauge.read' ? { ...f, readingGaugePa: f.readingGaugePa + 13790 } : f)), ['secondGauge']],
  ['H1', 'a boss seen to be beyond use', late({ atS: 0, fact: 'looked', at: 'boss', saw: { visible: true, face: 'beyondUse' } }), ['boss']],
  ['H1', 'suspect wrap', late({ atS: 0, fact: 'looked', at: 'wrap', saw: { visible: true, wrap: 'suspect' } }), ['wrap']],
  ['H1', 'a detector that failed its bump test', late({ atS: 0, fact: 'detector.bumped', passed: false }), ['bump']],
  ['H1', 'gas in the hole', late({ atS: 0, fact: 'detector.read', where: 'hole', lelShare: 0.12, trueLelShare: 0.12, oxygenShare: 0.205 }), ['air']],
  ['H2', 'no low stage', drop(atTime(headTimes[0])), ['lowStage']],
  ['H2', 'a hold that dropped', alter(atTime(headTimes[2]), (f) => (f.fact === 'gauge.read' ? { ...f, readingGaugePa: f.readingGaugePa - 5000 } : f)), ['noDrop']],
  ['H2', 'a proof under the pressure of the main', alter((f) => isHead(f) && f.fact === 'gauge.read' && f.readingGaugePa > 2e5, reading(2.2e5)), ['atPressure', 'settled', 'held', 'noDrop', 'fresh', 'seatTest']],
  ['H2', 'bubbles at the seat', late({ atS: 0, fact: 'leak.looked', at: 'seat', bubbles: 'steady', gasMolPerS: 1e-5, watchS: 20, pressureGaugePa: 2.4e5 }), ['fluid.seat']],
  ['H2', 'a seat of the valve that lets by', alter(atTime(headTimes[3]), (f) => (f.fact === 'gauge.read' ? { ...f, readingGaugePa: f.readingGaugePa * 0.8 } : f)), ['seatTest']],
  ['H2', 'a rise in the vented chamber', alter(atTime(headTimes[headTimes.length - 1]), reading(6000)), ['rise']],
  ['H2', 'a link tapped after it', late({ atS: 0, fact: 'chain.tapped', chain: 0, settledM: 0 }), evidenceItemIds.H2],
  ['H2', 'a main that has risen over the proof', late({ atS: 0, fact: 'gauge.read', gauge: 'main', readingGaugePa: 3e5, trueGaugePa: 3e5, zeroed: true, under: { valveOpenRad: 0, ventOpen: 0, bleedOpenRad: 0, top: null, saddleOn: 'tee' } }), ['atPressure']],
  ['H2', 'an hour and more gone by', (facts) => facts.map((f, i) => (i === facts.length - 1 ? { ...f, atS: f.atS + 3700 } : f)), ['fresh']],
  ['H3', 'scale in the bore', alterLast((f) => f.fact === 'looked' && f.at === 'downBore', (f) => (f.fact === 'looked' ? { ...f, saw: { ...f.saw, boreClear: false } } : f)), ['clear']],
  ['H4', 'a bleed that hardly hissed', alter((f) => f.fact === 'bleed.quiet' && f.hissedS > 5, (f) => (f.fact === 'bleed.quiet' ? { ...f, hissedS: 1 } : f)), ['hissed']],
  ['H4', 'a puff on reopening', alterLast((f) => f.fact === 'bleed.turned' && f.openRad > 0, (f) => (f.fact === 'bleed.turned' ? { ...f, puff: true, aboveGaugePa: 9000 } : f)), ['noPuff']],
  ['H4', 'a stopper that slipped', late({ atS: 0, fact: 'stopper.slipped', byM: 0.004, thrustN: 134, holdsN: 120 }), ['stayed']],
  ['H4', 'a bleed shut in for a minute only', delay(shutsBleed, 60), ['shutIn']],
  ['H4', 'a bleed that had been quiet for half a minute', delay((f) => f.fact === 'bleed.quiet', 40), ['quiet']],
  ['H4', 'rubber never squeezed again', drop((f, i) => f.fact === 'stopper.squeezed' && i > upTo('H4').findIndex((q) => q.fact === 'bleed.quiet' && q.hissedS > 5)), ['snuggedAgain']],
  ['H4', 'a rod let go while the bleed was shut', letGoAfterShut, ['rodHeld']],
  ['H5', 'a tilted stopper', alterLast((f) => f.fact === 'looked' && f.at === 'downBore', (f) => (f.fact === 'looked' ? { ...f, saw: { ...f.saw, stopperSquare: false } } : f)), ['square']],
  ['H5', 'a stopper level with the port', alterLast((f) => f.fact === 'looked' && f.at === 'downBore', (f) => (f.fact === 'looked' ? { ...f, saw: { ...f.saw, stopperBelowPortM: -0.002 } } : f)), ['depth']],
  ['H5', 'a wet stopper', alterLast((f) => f.fact === 'looked' && f.at === 'downBore', (f) => (f.fact === 'looked' ? { ...f, saw: { ...f.saw, stopperDry: false } } : f)), ['dry']],
  ['H6', 'a keeper under its torque', alterLast((f) => f.fact === 'keeper.turned', (f) => (f.fact === 'keeper.turned' ? { ...f, torqueNm: 120 } : f)), ['torque', 'holdBack', 'marked']],
  ['H6', 'a stem that leaves too wide a gap', alterLast((f) => f.fact === 'keeper.turned', (f) => (f.fact === 'keeper.turned' ? { ...f, gapM: 0.007 } : f)), ['gap']],
  ['H6', 'a tee that moved with its keeper', late({ atS: 0, fact: 'tee.strained', turns: 0.06 }), ['holdBack']],
  ['H6', 'bubbles at the keeper', alterLast((f) => f.fact === 'leak.looked' && f.at === 'keeper', (f) => (f.fact === 'leak.looked' ? { ...f, bubbles: 'fine' } : f)), ['fluid']],
  ['H7', 'a stop proved over half an hour ago', (facts) => facts.map((f) => (f.fact === 'signed' && f.holdPoint === 'H7' ? { ...f, atS: f.atS + 1800 } : f)), ['stopFresh']],
  ['H7', 'gas heard at the pilot opening', alterLast((f) => f.fact === 'listened', (f) => (f.fact === 'listened' ? { ...f, heard: true } : f)), ['noFlow']],
  ['H8', 'a tee that does not pass the ring', alterLast((f) => f.fact === 'gaugeRing.tried', (f) => (f.fact === 'gaugeRing.tried' ? { ...f, passes: false } : f)), ['gaugeRing']],
  ['H9', 'a chamber pumped well over the main', alterLast((f) => f.fact === 'pumped', (f) => (f.fact === 'pumped' ? { ...f, headGaugePa: 3.2e5 } : f)), ['neverOver']],
  ['H9', 'a keeper that moved after its mark', late({ atS: 0, fact: 'joint.turned', joint: 'keeper', meant: 'tee' }), ['keeperMark']],
  ['H10', 'a main read above the rating', alterLast((f) => f.fact === 'gauge.read' && f.gauge === 'main', reading(62 * 6894.757)), ['mainPressure']],
  ['H11', 'a plug forced', alterLast((f) => f.fact === 'closing.turned', (f) => (f.fact === 'closing.turned' ? { ...f, torqueNm: 130 } : f)), ['torque']],
  ['H11', 'a plug not turned far enough', alterLast((f) => f.fact === 'closing.turned', (f) => (f.fact === 'closing.turned' ? { ...f, engagedTurns: 4.7 } : f)), ['turns']],
  ['H11', 'a crossed thread', alterLast((f) => f.fact === 'closing.turned', (f) => (f.fact === 'closing.turned' ? { ...f, crossed: true } : f)), ['notCrossed']],
  ['H11', 'a plug seen askew', alterLast((f) => f.fact === 'looked' && f.at === 'downBore', (f) => (f.fact === 'looked' ? { ...f, saw: { ...f.saw, closingSquare: false } } : f)), ['square']],
  ['H11', 'a bleed shut in for a minute only', shortShutIn, ['shutIn']],
  ['H12', 'bubbles watched for a moment only', alterLast((f) => f.fact === 'leak.looked' && f.at === 'weld', (f) => (f.fact === 'leak.looked' ? { ...f, watchS: 10 } : f)), ['fluid.weld']],
  ['H12', 'a pressure in the record that nobody read', alter((f) => f.fact === 'record.written' && f.field === 'proof2', (f) => (f.fact === 'record.written' ? { ...f, value: '52 psig' } : f)), ['record']],
  ['H12', 'a proof written down as nothing', alter((f) => f.fact === 'record.written' && f.field === 'proof1', (f) => (f.fact === 'record.written' ? { ...f, value: '0 psig' } : f)), ['record']],
]; // prettier-ignore

const ids = exercise().holdPoints.map(({ id }) => id);
/** What a handed-back renewal asks for besides: tests/hands/renewal.test.ts. */
const ofRenewal = new Set(['fluid.newPlug', 'fluid.teeThread', 'fluid.tieIn', 'relit']);

describe('the evidence of a hold point', () => {
  it.each(ids.map((id) => [id]))('%s is whole when a steady crew signs it, item for item', (id) => {
    const { met, items } = evidence(id, upTo(id), limits, job);
    // the manometer is asked for on a main under 10 psig alone: tests/hands/lowMain.test.ts
    expect(items.map((one) => one.id)).toEqual(
      evidenceItemIds[id].filter((item) => item !== 'manometer' && !ofRenewal.has(item)),
    );
    expect(items.filter((one) => !one.met)).toEqual([]);
    expect(met).toBe(true);
    for (const { numbers } of items)
      for (const value of Object.values(numbers)) expect(Number.isFinite(value)).toBe(true);
  });

  it.each(ids.map((id) => [id]))('%s is not there before the work that gives it', (id) => {
    expect(evidence(id, [], limits, job).met).toBe(false);
  });

  it.each(cases)('%s is lost by %s', (id, _, edit, lost) => {
    expect(wanting(id, edit(upTo(id)))).toEqual(lost);
  });
});

describe('the seat test', () => {
  it('expects p(V − Vₐ)/V of the volumes the rig is made of', () => {
    const litres = (value: { readonly value: number }): number => value.value;
    const ball = litres(constants.valveBelowBallM3) + litres(constants.valveBallM3);
    const above = litres(constants.valveAboveBallM3) + litres(constants.testHeadM3);
    expect(firstChamber.aboveBallM3).toBeCloseTo(above, 9);
    expect(firstChamber.wholeM3).toBeCloseTo(litres(constants.saddleNetFirstM3) + ball + above, 9);
    const spooled = above + litres(constants.spoolUpperM3);
    for (const size of teeSizes) {
      const { portIdM, axisToBossM } = pieces.serviceTee.dims(size);
      const inTee = (Math.PI / 4) * portIdM * portIdM * (axisToBossM + portIdM);
      const saddle = litres(constantsByTeeSize.saddleNetSecondM3[size]);
      const whole = saddle + litres(constants.spoolLowerM3) + ball + spooled + inTee;
      expect(secondChamber(size).aboveBallM3, size).toBeCloseTo(spooled, 9);
      // told to the nearest 10 mL, as an operator's card would tell it
      expect(Math.abs(secondChamber(size).wholeM3 - whole), size).toBeLessThanOrEqual(5e-6);
    }
  });
});
