import { constants } from '../../catalogue/index.ts';
import { OPEN_RAD } from '../actions.ts';
import { fallThrough } from '../strikes.ts';
import { hasValve, topIs } from '../network.ts';
import { ballObstructed } from '../reach.ts';
import type { RigState } from '../state.ts';
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
    const openRad = Math.max(0, Math.min(QUARTER_RAD, tidy(rig.valve.openRad + angleRad)));
    if (openRad === rig.valve.openRad) return 'atStop';
    if (ballObstructed(rig)) return 'pieceInBall';
    const chamberPa = sense.gaugePa('chamber');
    const turned = {
      fact: 'valve.turned',
      openRad,
      differenceGaugePa: chamberPa - sense.gaugePa('above'),
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
    return did(
      { ...rig, bleed: { openRad } },
      {
        fact: 'bleed.turned',
        openRad,
        aboveGaugePa,
        puff: opening && aboveGaugePa > PUFF_HEARD_PA,
        levelDb: sense.bleedDb,
      },
    );
  },
};

/** Least pressure behind a cracked bleed that an attentive ear and hand notice, Pa gauge: half a psi (assumed). */
const PUFF_HEARD_PA = 3447;
