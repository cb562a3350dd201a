import {
  ageBy,
  chainSet,
  endLoadN,
  ignitionNear,
  layOut,
  mainTurnsAtS,
  move,
  rigWeightN,
  testSetPumped,
  type Fact,
  type FactBody,
  type RigState,
  type Sense,
} from '../rig/index.ts';
import { tellProcedure } from './tell.ts';
import { senseOf } from './sense.ts';
import { changed } from './changed.ts';
import { alike, ready, type GasView } from './gas.ts';
import { leadingOf } from './places.ts';
import { SNAP_S, type Crossing, type Pending } from './step.ts';
import { strikesNow, strikeTimes, struckRig } from './struck.ts';
import { refit } from './transfer.ts';
import type { EarState, Ledger, RunState } from './types.ts';

/** Takes a worked-out step: gas, air, ledger and ear move to its end, and what it crossed happens. */
export function settle(run: RunState, pending: Pending): RunState {
  const moved = book(run, pending);
  const after = pending.crossing === null ? moved : cross(moved, pending.crossing, pending.view);
  const marked = after.gas.atS >= after.markS - SNAP_S ? atMark(after, pending.view) : after;
  return struck(marked, run.facts.length, marked.gas.atS);
}

/** Lets planted faults strike that are due; the gas of the run stands at that time. */
export function struck(run: RunState, factsBefore: number, atS: number): RunState {
  const strikes = strikesNow(run, factsBefore, atS, SNAP_S);
  if (strikes.length === 0) return run;
  const known = changed(run, { struck: run.struck.concat(strikes) });
  return relay(known, struckRig(run, strikes), atS);
}

/** Books a step without looking at thresholds or marks: the gas is where it is, the ledger knows how it got there. */
export function book(run: RunState, pending: Pending): RunState {
  const { step, air } = pending;
  const { throughputMol, closure } = closureAfter(run, pending);
  return changed(run, {
    gas: {
      atS: step.endS,
      airMol: step.contents.airMol,
      gasMol: step.contents.gasMol,
      stepS: step.nextStepS,
    },
    air,
    ledger: enter(run, pending),
    ear: hear(run, pending),
    throughputMol,
    closure,
  });
}

/** A trickle this small does not keep a release going, mol/s: 0.2 mg/s. */
const QUIET_MOL_PER_S = 1e-5;

function enter(run: RunState, { step, into }: Pending): Ledger {
  const { ledger } = run;
  const leading = leadingOf(run.network);
  const toHole = sumOf(step.linkGasMol, leading.toHole);
  let airIntoMain = 0;
  for (const i of leading.fromMain) airIntoMain += Math.max(0, -step.linkAirMol[i]);
  const durationS = step.endS - run.gas.atS;
  const going = toHole > QUIET_MOL_PER_S * durationS;
  const puffMol = going ? ledger.puffMol + into.gasMol : 0;
  return {
    toHoleMol: ledger.toHoleMol + toHole,
    throughBleedMol: ledger.throughBleedMol + sumOf(step.linkGasMol, leading.toStreet),
    toServiceMol: ledger.toServiceMol + sumOf(step.linkGasMol, leading.toFar),
    airIntoMainMol: ledger.airIntoMainMol + airIntoMain,
    fromMainMol: ledger.fromMainMol + sumOf(step.linkGasMol, leading.fromMain),
    puffMol,
    largestPuffMol: Math.max(ledger.largestPuffMol, puffMol),
  };
}

function sumOf(mol: readonly number[], at: readonly number[]): number {
  let sum = 0;
  for (const i of at) sum += mol[i];
  return sum;
}

function hear(run: RunState, { into }: Pending): EarState {
  const { ear } = run;
  if (ear.blowing === null) return ear;
  return { ...ear, blowing: { ...ear.blowing, mol: ear.blowing.mol + into.gasMol } };
}

function closureAfter(run: RunState, { step }: Pending): { throughputMol: number; closure: number } {
  let before = 0;
  let after = 0;
  let net = 0;
  let through = 0;
  for (let i = 0; i < run.network.cells.length; i += 1) {
    before += run.gas.airMol[i] + run.gas.gasMol[i];
    after += step.contents.airMol[i] + step.contents.gasMol[i];
  }
  const { from, to, cellCount, linkCount } = ready(run.network);
  for (let i = 0; i < linkCount; i += 1) {
    const mol = step.linkAirMol[i] + step.linkGasMol[i];
    through += Math.abs(mol);
    if (to[i] < cellCount) net += mol;
    if (from[i] < cellCount) net -= mol;
  }
  const throughputMol = run.throughputMol + through;
  const scale = throughputMol + before;
  const error = scale > 0 ? Math.abs(after - before - net) / scale : 0;
  return { throughputMol, closure: Math.max(run.closure, error) };
}

/** Adds facts at a time and lets the procedure follow them. */
export function raise(run: RunState, atS: number, bodies: readonly FactBody[]): RunState {
  if (bodies.length === 0) return run;
  const facts: Fact[] = bodies.map((body) => ({ atS, ...body }));
  return tellProcedure(changed(run, { facts: run.facts.concat(facts) }), facts);
}

/** The rig changed, by a hand or by itself: cells and links are laid out anew and the gas carried over. */
export function relay(run: RunState, rig: RigState, atS: number): RunState {
  const refitted = refit(run, rig, atS);
  return changed(refitted, { sinceS: atS, markS: Math.min(atS + FIRST_MARK_S, ...dueTimes(run, rig, atS)) });
}

/**
 * Marks after an action: half a second, then each twice as far on as the action is back; no wider than ten seconds while the seals still
 * change, and a minute once they do not.
 */
export const FIRST_MARK_S = 0.5;
const WIDEST_MARK_S = 10;
const WIDEST_STILL_MARK_S = 60;

/** At a mark the seals are looked at again, with pressure and age as they are now. */
function atMark(run: RunState, view: GasView): RunState {
  const atS = run.gas.atS;
  const sense = senseOf(run, view, atS, run.air);
  const since = Math.max(FIRST_MARK_S, atS - run.sinceS);
  const { rig, facts } = whatIsDue(ageBy(run.rig, sense, atS - run.agedS), sense);
  const laid = layOut(rig, sense);
  const still = rig === run.rig && alike(run.network, laid);
  const markS = atS + Math.min(still ? WIDEST_STILL_MARK_S : WIDEST_MARK_S, 2 * since);
  return raise(
    changed(run, {
      rig,
      agedS: atS,
      network: still ? run.network : laid,
      markS: Math.min(markS, ...dueTimes(run, rig, atS)),
    }),
    atS,
    facts,
  );
}

/** Times at which something turns: pump strokes and valves that shut the main come to their end, a schedule to its point. */
function dueTimes(run: RunState, rig: RigState, atS: number): readonly number[] {
  const times: number[] = [...strikeTimes(run)];
  const turnsS = mainTurnsAtS(rig, atS);
  if (turnsS !== null) times.push(turnsS);
  if (rig.testHead.strokes > 0) times.push(rig.testHead.pumpUntilS);
  if (rig.testSet.strokes > 0) times.push(rig.testSet.pumpUntilS);
  if (rig.site.isolatedAtS !== null) times.push(rig.site.isolatedAtS);
  return times;
}

/** What comes to its end at this mark. */
function whatIsDue(rig: RigState, sense: Sense): { rig: RigState; facts: readonly FactBody[] } {
  const byNow = sense.atS + SNAP_S;
  const { testHead, site } = rig;
  if (site.isolatedAtS !== null && site.isolatedAtS <= byNow) {
    const ending = { kind: 'isolated' } as const;
    return {
      rig: { ...rig, site: { ...site, mainIsolated: true }, ending },
      facts: [{ fact: 'ended', ending }],
    };
  }
  if (testHead.strokes > 0 && testHead.pumpUntilS <= byNow) {
    const fact = { fact: 'pumped', strokes: testHead.strokes, headGaugePa: sense.gaugePa('above') } as const;
    return { rig: { ...rig, testHead: { ...testHead, strokes: 0 } }, facts: [fact] };
  }
  if (rig.testSet.strokes > 0 && rig.testSet.pumpUntilS <= byNow) return testSetPumped(rig, sense);
  return { rig, facts: [] };
}

function cross(run: RunState, crossing: Crossing, view: GasView): RunState {
  const sense = senseOf(run, view, run.gas.atS, run.air);
  const atS = run.gas.atS;
  switch (crossing.kind) {
    case 'moves': {
      const { rig, facts } = move(run.rig, crossing.what, sense);
      return raise(relay(run, rig, atS), atS, facts);
    }
    case 'alarm': {
      const air = { ...run.air, alarm: crossing.step };
      return raise(changed(run, { air }), atS, [
        { fact: 'gas.alarm', step: crossing.step, lelShare: run.air.detectorLelShare },
      ]);
    }
    case 'faints':
      return hurt(run, 'asphyxia', []);
    case 'hiss':
      return changed(run, { ear: { ...run.ear, hissSinceS: atS } });
    case 'quiet': {
      const hissedS = atS - (run.ear.hissSinceS ?? atS);
      const aboveGaugePa = sense.gaugePa('above');
      return raise(changed(run, { ear: { ...run.ear, hissSinceS: null } }), atS, [
        { fact: 'bleed.quiet', hissedS, aboveGaugePa },
      ]);
    }
    case 'relief': {
      const headGaugePa = sense.gaugePa('above');
      const fact = crossing.lifted ? 'relief.lifted' : 'relief.shut';
      return raise(changed(run, { ear: { ...run.ear, reliefLifted: crossing.lifted } }), atS, [
        { fact, headGaugePa },
      ]);
    }
    case 'saddle':
      return saddleMoves(run, crossing.lifted, sense);
    case 'blow':
      return blows(run, crossing.from, crossing.kgPerS, atS);
    case 'flammable':
      return mayBurn(run, crossing.nearReachM, atS);
  }
}

function saddleMoves(run: RunState, up: boolean, sense: Sense): RunState {
  const heard = changed(run, { ear: { ...run.ear, saddleLifted: up } });
  if (!up) return heard;
  const chamberGaugePa = sense.gaugePa('chamber');
  const forceN = endLoadN(run.rig, chamberGaugePa);
  const fact = { fact: 'saddle.lifted', chamberGaugePa, forceN } as const;
  const free = chainSet(run.rig).legs === 0 && forceN - rigWeightN(run.rig) > 0;
  // nothing holds it but its weight, and that is lifted: the whole rig goes up
  return free ? hurt(heard, 'stackThrown', [fact]) : raise(heard, sense.atS, [fact]);
}

/** The exercise ends as the job would: somebody is hurt. */
function hurt(run: RunState, cause: string, before: readonly FactBody[]): RunState {
  const ending = { kind: 'hurt', cause } as const;
  return raise(changed(run, { rig: { ...run.rig, ending } }), run.gas.atS, [
    ...before,
    { fact: 'ended', ending },
  ]);
}

function blows(run: RunState, from: string | null, kgPerS: number, atS: number): RunState {
  if (from !== null) {
    const ear = { ...run.ear, blowing: { from, sinceS: atS, mol: 0 } };
    return raise(changed(run, { ear }), atS, [{ fact: 'blow.began', from, kgPerS }]);
  }
  const was = run.ear.blowing;
  const lostKg = (was?.mol ?? 0) * run.network.gas.molarMassKgPerMol;
  return raise(changed(run, { ear: { ...run.ear, blowing: null } }), atS, [
    { fact: 'blow.ended', from: was?.from ?? '', lostKg },
  ]);
}

/** The air of the hole, or a jet in it, can burn; with a source there, it does. */
function mayBurn(run: RunState, nearReachM: number, atS: number): RunState {
  const lelShare = run.air.gasFraction / run.scenario.job.site.lelFraction;
  const warned = raise(changed(run, { ear: { ...run.ear, flammable: true } }), atS, [
    { fact: 'gas.flammable', lelShare, nearReachM },
  ]);
  if (!ignitionNear(run.rig)) return warned;
  return hurt(warned, 'ignited', [{ fact: 'gas.ignited', lelShare }]);
}
