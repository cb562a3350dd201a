import { constants } from '../../catalogue/index.ts';
import { OPEN_RAD } from '../actions.ts';
import { fallThrough } from '../strikes.ts';
import { hasValve, topIs, topPiece } from '../network.ts';
import { ballObstructed } from '../reach.ts';
import type { RigState } from '../state.ts';
import type { Sense } from '../sense.ts';
import { troubleSize, type TroubleKind } from '../troubles.ts';
import { rodPushN, rodVerdict } from '../../physics/index.ts';
import { rodGland, rodLoose } from '../rodFree.ts';
import { did, tidy, type Acts } from './outcome.ts';

const QUARTER_RAD = Math.PI / 2;
/** A fallen stopper this far above the port lies on the ball, m. */
const ON_BALL_M = -0.05;

/** Isolation valve, vent, pump and bleed. */
export const valveActs: Acts<'valve.turn' | 'vent.turn' | 'pump.stroke' | 'bleed.turn'> = {
  'valve.turn': (rig, { angleRad }, sense) => {
    if (!hasValve(rig)) return 'notFitted';
    const stiffNm = valveStiffNm(rig);
    const byRad = stiffNm > 0 ? Math.max(-STIFF_TURN_RAD, Math.min(STIFF_TURN_RAD, angleRad)) : angleRad;
    const openRad = Math.max(0, Math.min(QUARTER_RAD, tidy(rig.valve.openRad + byRad)));
    if (openRad === rig.valve.openRad) return 'atStop';
    if (ballObstructed(rig)) return 'pieceInBall';
    const chamberPa = sense.gaugePa('chamber');
    const turned = {
      fact: 'valve.turned',
      openRad,
      differenceGaugePa: chamberPa - sense.gaugePa('above'),
      ...(stiffNm > 0 && { stiffNm }),
    } as const;
    const opened: RigState = { ...rig, valve: { openRad } };
    if (openRad >= OPEN_RAD && rig.stopper.at === 'fallen' && rig.stopper.belowPortM < ON_BALL_M) {
      const fallen = fallThrough(opened, sense);
      return did(fallen.rig, turned, ...fallen.facts);
    }
    // a rod nobody holds that neither flies nor sinks: worth saying, it teaches where the balance lies
    const balanced =
      openRad > rig.valve.openRad && rodLoose(rig) && rodVerdict(rodGland, chamberPa) === 'still';
    return balanced
      ? did(opened, turned, { fact: 'rod.still', netN: rodPushN(rodGland, chamberPa) })
      : did(opened, turned);
  },
  'vent.turn': (rig, { open }, sense) => {
    if (!topIs(rig, 'testHead')) return 'needsTestHead';
    const ventOpen = Math.max(0, Math.min(1, tidy(rig.testHead.ventOpen + open)));
    if (ventOpen === rig.testHead.ventOpen) return 'atStop';
    return did(
      { ...rig, testHead: { ...rig.testHead, ventOpen } },
      { fact: 'vent.turned', open: ventOpen, aboveGaugePa: sense.gaugePa('above') },
    );
  },
  'pump.stroke': (rig, { strokes }, sense) => {
    if (!topIs(rig, 'testHead')) return 'needsTestHead';
    // told when the strokes are done, with the pressure they have made: the run raises it
    const pumpUntilS = sense.atS + strokes / constants.pumpStrokesPerS.value;
    return did({ ...rig, testHead: { ...rig.testHead, pumpUntilS, strokes } });
  },
  'bleed.turn': (rig, { angleRad }, sense) => {
    if (!topIs(rig, 'rodBarrel') && !topIs(rig, 'sightCap')) return 'needsBleed';
    const openRad = Math.max(0, Math.min(QUARTER_RAD, tidy(rig.bleed.openRad + angleRad)));
    if (openRad === rig.bleed.openRad) return 'atStop';
    const aboveGaugePa = sense.gaugePa('above');
    const opening = rig.bleed.openRad === 0;
    const found = outOfBleed(rig, sense, opening);
    return did(
      { ...rig, bleed: { openRad } },
      {
        fact: 'bleed.turned',
        openRad,
        aboveGaugePa,
        puff: opening && aboveGaugePa > PUFF_HEARD_PA && bleedOpenShare(rig) > PUFF_NEEDS_SHARE,
        levelDb: sense.bleedDb,
        ...(found.length > 0 && { found }),
      },
    );
  },
};

/** How far one pull turns a ball whose handle goes hard, rad (assumed: 20°). */
const STIFF_TURN_RAD = 0.35;

function valveStiffNm(rig: RigState): number {
  const valve = rig.stack.find((piece) => piece.kind === 'isolationValve');
  return valve === undefined ? 0 : (rig.kit[valve.id].defects.stiffNm ?? 0);
}

/** Share of the bleed's bore from which a puff can be felt at all (assumed). */
const PUFF_NEEDS_SHARE = 0.02;

/** Share of the bleed that debris and a kinked hose leave open. */
function bleedOpenShare(rig: RigState): number {
  const top = topPiece(rig);
  const blocked = top === null ? 0 : (rig.kit[top].defects.bleedBlocked ?? 0);
  return (1 - blocked) * (1 - troubleSize(rig, 'hoseKinked'));
}

/** What comes out of the bleed beside plain gas with its smell. */
function outOfBleed(rig: RigState, sense: Sense, opened: boolean): readonly TroubleKind[] {
  if (!opened || sense.gaugePa('above') <= PUFF_HEARD_PA || sense.gasFraction('above') < SMELT_SHARE)
    return [];
  return (['liquid', 'noOdour'] as const).filter((what) => troubleSize(rig, what) > 0);
}

/** Gas in the air of the bleed from which a nose expects the odorant. */
const SMELT_SHARE = 0.05;

/** Least pressure behind a cracked bleed that an attentive ear and hand notice, Pa gauge: half a psi (assumed). */
const PUFF_HEARD_PA = 3447;
