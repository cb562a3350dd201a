import { describe } from 'vitest';
import { constants } from '../../src/core/catalogue/index.ts';
import { atPsig, crewFor, spoilt, type Crew } from '../crew.ts';
import { absPa } from './handbook.ts';
import { consequence, expectNear } from './law.ts';

/** Kilograms that leave in so many seconds, from anywhere to anywhere outside. */
function lostIn(crew: Crew, durationS: number): number {
  const lost = (): number => crew.lostKg('toHole') + crew.lostKg('throughBleed');
  const before = lost();
  crew.waits(durationS);
  return lost() - before;
}

/** Ways for the main to get out that are choked at every pressure tried. */
const ways: Readonly<Record<string, (psig: number) => Crew>> = {
  'a coupling stood open by a tee screwed out': (psig) =>
    crewFor(atPsig(psig), (job) => {
      job.workpiece.teeBreakNm = 100;
      // air enough that whoever works in the blow stays awake
      job.site.freshAirM3PerS = 1;
    })
      .does({ kind: 'branch.cut', part: 'through' })
      .begins({ kind: 'tee.turn', turns: -8, holdBack: true })
      .waits(1),
  'an open bleed over an open bore': (psig) =>
    crewFor(atPsig(psig)).upTo('plugDrawn').barrelOn('socket', null).opensBleed().opensValve().waits(30),
  'a valve that passes, nothing on it': (psig) =>
    crewFor(
      atPsig(psig),
      spoilt('isolationValve', { seatPassingCdAM2: constants.valvePassingBadCdAM2.value }),
    )
      .upTo('plugDrawn')
      .waits(60),
};

describe('kilograms lost', () => {
  for (const [way, begin] of Object.entries(ways)) {
    consequence(`go with the absolute pressure of the main: ${way}`, () => {
      const perPa = [20, 35, 55].map((psig) => lostIn(begin(psig), 20) / absPa(psig));
      expectNear(perPa[1], perPa[0], 0.01, '35 against 20 psig:');
      expectNear(perPa[2], perPa[0], 0.01, '55 against 20 psig:');
    });
  }
});
