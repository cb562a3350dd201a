import { exp } from '../../units/index.ts';
import { constants } from '../../catalogue/index.ts';
import { tensionerTorqueNm } from '../../physics/index.ts';
import { chainSet, endLoadN, rigWeightN, seating } from '../seats.ts';
import { strikes } from '../strikes.ts';
import type { ChainState, RigState } from '../state.ts';
import { did, tidy, type Acts } from './outcome.ts';

const c = constants;

/** A hook comes off its link by hand up to so many turns past snug (assumed). */
const HOOK_FREE_TURNS = 0.1;
/** Share of its weight from which an unchained rig will not stay put (assumed). */
const FLOATS_SHARE = 0.75;
/** Turns of slack a tensioner has before its thread runs out (assumed). */
const MOST_TURNS = 3;
/** Share of the slack still in a chain that one tap of its links lets go (assumed). */
const TAP_SHARE = 0.75;

/** Chains, tensioners and collar bolts. */
export const seatActs: Acts<'chain.hook' | 'chain.tap' | 'tensioner.turn' | 'collarBolt.turn'> = {
  'chain.hook': (rig, { chain, hooked }, sense) => {
    const was = rig.chains[chain];
    if (was.piece === null) return 'noChains';
    if (was.hooked === hooked) return 'alreadyDone';
    if (hooked) {
      if (rig.saddle.on === 'board') return 'nothingBelow';
      return did(withChain(rig, chain, { ...was, hooked, ...slackOf(rig), settledM: 0, taps: 0 }));
    }
    // no hand lifts a hook off a leg that is drawn tight
    if (Math.max(was.left, was.right) > HOOK_FREE_TURNS) return 'tooTight';
    const force = seating(rig).clampN / 2;
    const chamberGaugePa = sense.gaugePa('chamber');
    const free = withChain(rig, chain, { ...was, hooked, left: 0, right: 0 });
    const released = { fact: 'chain.released', forceN: force, chamberGaugePa } as const;
    // with the last leg gone a rig that gas all but carries rocks, lets more out and goes up
    const upN = endLoadN(free, chamberGaugePa) - FLOATS_SHARE * rigWeightN(free);
    return strikes(free, [released], chainSet(free).legs === 0 && upN > 0, 'stackThrown');
  },
  'chain.tap': (rig, { chain }) => {
    const was = rig.chains[chain];
    if (!was.hooked) return 'notHooked';
    const settles = was.unsettledM * TAP_SHARE * (seating(rig).clampN > 100 ? 1 : 0);
    return did(
      withChain(rig, chain, {
        ...was,
        settledM: tidy(was.settledM + settles),
        unsettledM: tidy(was.unsettledM - settles),
        taps: was.taps + 1,
      }),
      { fact: 'chain.tapped', chain, settledM: settles },
    );
  },
  'tensioner.turn': (rig, { chain, side, turns }, sense) => {
    const was = rig.chains[chain];
    if (!was.hooked) return 'notHooked';
    const now = tidy(was[side] + turns);
    if (now > MOST_TURNS || (now < 0 && was[side] <= 0)) return 'ratchetEnd';
    const turned = withChain(rig, chain, { ...was, [side]: Math.max(0, now) });
    const sits = seating(turned);
    const legForceN = side === 'left' ? sits.leftLegN : sits.rightLegN;
    const facts = [
      {
        fact: 'tensioner.turned',
        chain,
        side,
        turns: Math.max(0, now),
        torqueNm: tensionerTorqueNm(legForceN, c.tensionerDiameterM.value, c.nutFactor.value),
        legForceN,
      } as const,
    ];
    if (turns < 0 && now <= 0 && endLoadN(rig, sense.gaugePa('chamber')) > 100) {
      const released = {
        fact: 'chain.released',
        forceN: seating(rig).clampN / 2,
        chamberGaugePa: sense.gaugePa('chamber'),
      } as const;
      return did(turned, ...facts, released);
    }
    return did(turned, ...facts);
  },
  'collarBolt.turn': (rig, { bolt, turns }) => {
    if (rig.collar.collar === null) return 'notFitted';
    if (rig.saddle.on === 'coupling') return 'covered';
    const bolts: [number, number] = [rig.collar.bolts[0], rig.collar.bolts[1]];
    const now = tidy(bolts[bolt] + turns);
    if (now < 0 || now > MOST_TURNS) return 'ratchetEnd';
    bolts[bolt] = now;
    return did({ ...rig, collar: { ...rig.collar, bolts } }, { fact: 'collarBolt.turned', bolts });
  },
};

/** Slack that lies in a chain hooked on this pipe: links that have not bedded, and scale if it was left on. */
function slackOf(rig: RigState): { unsettledM: number } {
  const scale = rig.site.cleaned.pipe ? 0 : rig.job.workpiece.scaleUnderChainsM;
  return { unsettledM: c.tapCleanedM.value + scale };
}

function withChain(rig: RigState, chain: number, state: ChainState): RigState {
  return { ...rig, chains: chain === 0 ? [state, rig.chains[1]] : [rig.chains[0], state] };
}

const LN_2 = 0.6931471805599453;

/** Time in which pressure alone beds half of what was never tapped, s (assumed). */
const BEDDING_S = 150;
/** Chamber pressure from which links work, Pa gauge (assumed: 10 psi). */
const BEDDING_FROM_PA = 69000;

/** Links nobody tapped bed themselves under pressure, and the clamp falls with them. Called at whole marks of time. */
export function bedChains(rig: RigState, chamberGaugePa: number, durationS: number): RigState {
  if (chamberGaugePa < BEDDING_FROM_PA || rig.chains.every((chain) => chain.unsettledM < 1e-7)) return rig;
  const share = 1 - exp((-LN_2 * durationS) / BEDDING_S);
  const bed = (chain: ChainState): ChainState => {
    const settles = tidy(chain.unsettledM * share);
    return {
      ...chain,
      settledM: tidy(chain.settledM + settles),
      unsettledM: tidy(chain.unsettledM - settles),
    };
  };
  return { ...rig, chains: [bed(rig.chains[0]), bed(rig.chains[1])] };
}
