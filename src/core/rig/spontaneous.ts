import { constants } from '../catalogue/index.ts';
import { rodPushN, rodVerdict, stopperVerdict } from '../physics/index.ts';
import { withDepth } from './acts/stopper.ts';
import { bedChains } from './acts/seat.ts';
import type { FactBody } from './facts.ts';
import { mainGaugePa } from './mainFeed.ts';
import { hasValve } from './network.ts';
import { ballUpTravelM, renewed, tipFloor, travelForTip } from './reach.ts';
import { rodGland, rodLoose } from './rodFree.ts';
import { OPEN_RAD } from './actions.ts';
import type { Sense } from './sense.ts';
import type { RigState } from './state.ts';
import { stopperHoldsN, stopperInBore, stopperThrustN } from './stopping.ts';
import { stopperGone, strikes } from './strikes.ts';

const c = constants;

/** What gas and weight do by themselves, without a hand. */
export type Spontaneous = 'rodThrown' | 'rodSinks' | 'stopperSlips' | null;

/** Free play of a rod above its fully-up mark, m (assumed). */
const REBOUND_M = 0.05;
/** How far a stopper that lets go travels before the port vents what pushed it, m (assumed). */
const SLIP_M = 0.03;
/** Thrust that lifts a slack stopper with its rod, N (assumed: the rod's own weight). */
const LIFTS_ROD_N = 30;
/** A rod thrown with more energy than this ends the exercise, J (assumed: a hammer blow to the face). */
const HURT_ENERGY_J = 8;

/** What would move now at these pressures, first things first. */
export function wouldMove(rig: RigState, sense: Sense): Spontaneous {
  if (rig.ending !== null) return null;
  // the main's thrust on a slackened stopper is more than a rod weighs
  if (renewed(rig) && stopperSlips(rig, sense)) return 'stopperSlips';
  if (rodLoose(rig)) {
    const verdict = rodVerdict(rodGland, sense.gaugePa('above'));
    // a rod that has flown up and lies against its stop is not thrown again; one that sank may well be
    if (verdict === 'thrown' && !(rig.rod.resting && rig.rod.travelM <= 0)) return 'rodThrown';
    if (verdict === 'sinks' && sinkTravelM(rig) > rig.rod.travelM + 1e-6) return 'rodSinks';
  }
  return stopperSlips(rig, sense) ? 'stopperSlips' : null;
}

function stopperSlips(rig: RigState, sense: Sense): boolean {
  if (!stopperInBore(rig) || rig.stopper.belowPortM < -SLIP_M / 2) return false;
  const thrust = thrustUpN(rig, sense);
  // one slackened right off is a piston while a difference stands across it; one being lowered lets the gas by
  if (rig.stopper.torqueNm <= 0 && !(renewed(rig) && thrust > LIFTS_ROD_N)) return false;
  // a keeper stops it going up; nothing stops it going down
  if (thrust > 0 && rig.keeper.at === 'tee' && !stemTooShort(rig)) return false;
  return stopperVerdict(thrust, holdsN(rig, sense.atS)) === 'slips';
}

/** A stem so short that a stopper slides past the port before it meets the keeper, m (assumed). */
const STEM_IDLE_M = 0.012;

function stemTooShort(rig: RigState): boolean {
  const { piece } = rig.keeper;
  return piece !== null && (rig.kit[piece].defects.stemShortM ?? 0) > STEM_IDLE_M;
}

/** Thrust of the gas on the stopper, N, upward positive. */
function thrustUpN(rig: RigState, sense: Sense): number {
  return stopperThrustN(rig, mainGaugePa(rig, sense), sense.gaugePa('barrel'));
}

/** Friction on the bore, and two hands on the rod while the holder is latched and held. */
function holdsN(rig: RigState, atS: number): number {
  const hands = rig.stopper.at === 'holder' && rig.rod.held ? c.handHoldN.value : 0;
  return stopperHoldsN(rig, atS) + hands;
}

function sinkTravelM(rig: RigState): number {
  const ballUp = ballUpTravelM(rig);
  if (hasValve(rig) && rig.valve.openRad < OPEN_RAD && ballUp !== null) return ballUp;
  return Math.min(c.rodStrokeM.value, rig.rod.collarTravelM ?? 1, travelForTip(rig, tipFloor(rig).zM) ?? 1);
}

/** Lets it happen. */
export function move(
  rig: RigState,
  what: Spontaneous,
  sense: Sense,
): { rig: RigState; facts: readonly FactBody[] } {
  switch (what) {
    case 'rodThrown': {
      // it lets go while the barrel is still filling: what drives it along its way is the chamber behind the ball
      const behind = rig.valve.openRad > 0 ? sense.gaugePa('chamber') : 0;
      const pressureGaugePa = Math.max(sense.gaugePa('above'), behind);
      const push = rodPushN(rodGland, pressureGaugePa);
      const energyJ = (push - rodGland.glandFrictionN) * (rig.rod.travelM + REBOUND_M);
      const up = withDepth({ ...rig, rod: { ...rig.rod, travelM: 0, resting: true } });
      const thrown: FactBody = { fact: 'rod.thrown', thrustN: push, pressureGaugePa, energyJ };
      return strikes(up, [thrown], energyJ > HURT_ENERGY_J, 'rodThrown');
    }
    case 'rodSinks': {
      const travelM = sinkTravelM(rig);
      return {
        rig: withDepth({ ...rig, rod: { ...rig.rod, travelM, resting: true } }),
        facts: [{ fact: 'rod.sank', travelM }],
      };
    }
    case 'stopperSlips': {
      const thrust = thrustUpN(rig, sense);
      const slipped: FactBody = {
        fact: 'stopper.slipped',
        byM: SLIP_M,
        thrustN: thrust,
        holdsN: holdsN(rig, sense.atS),
      };
      return thrust > 0
        ? { rig: slippedUp(rig, SLIP_M), facts: [slipped] }
        : { rig: stopperGone(rig), facts: [slipped, { fact: 'stopper.dropped', into: 'main' }] };
    }
    case null:
      return { rig, facts: [] };
  }
}

/** The stopper goes up; a rod still latched to it goes with it. */
function slippedUp(rig: RigState, byM: number): RigState {
  const latched = rig.stopper.at === 'holder';
  return {
    ...rig,
    rod: latched ? { ...rig.rod, travelM: Math.max(0, rig.rod.travelM - byM) } : rig.rod,
    stopper: {
      ...rig.stopper,
      belowPortM: rig.stopper.belowPortM - byM,
      slippedM: rig.stopper.slippedM + byM,
    },
  };
}

/** A stopper near its limit creeps this fast, m/s (assumed). */
const CREEP_M_PER_S = 2e-5;

/** Slow things, at whole marks of time: links bed under pressure, a marginal stopper creeps up to the keeper. */
export function ageBy(rig: RigState, sense: Sense, durationS: number): RigState {
  const bedded = bedChains(rig, sense.gaugePa('chamber'), durationS);
  if (!stopperInBore(bedded) || bedded.stopper.torqueNm <= 0 || bedded.keeper.at === 'tee') return bedded;
  const thrust = thrustUpN(bedded, sense);
  const creeps = stopperVerdict(thrust, holdsN(bedded, sense.atS)) === 'creeps';
  return creeps && bedded.stopper.at === 'set' ? slippedUp(bedded, CREEP_M_PER_S * durationS) : bedded;
}
