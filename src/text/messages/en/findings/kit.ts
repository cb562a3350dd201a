import type { FindingWords } from '../../../catalogue.ts';
import { conditions } from '../conditions.ts';
import { endingItems } from '../evidence.ts';
import { percent } from '../../../units.ts';
import { itemsOf, numberOf, piecesOf, timesOf } from './shared.ts';

export const kitFindings = {
  wrongSize: {
    title: 'Wrong size',
    happened: (f, s) => `Used ${piecesOf(f, s)}, which is not of the size this job asks for.`,
    why: 'A piece of the wrong size seals nothing, or lets go when it is needed.',
    next: 'Pick every piece by the stamp and hold it against the work.',
  },
  unfitUsed: {
    title: 'Unfit piece used',
    happened: (f, s) =>
      `Used ${piecesOf(f, s)}, which was not sound${numberOf(f, 'looked') > 0 ? ' and had been looked over' : ' and had not been looked over'}.`,
    why: 'A flaw that an eye can find on the bench is found by gas in the hole.',
    next: 'Look every piece over; set the doubtful one aside and take another.',
  },
  usedUninspected: {
    title: 'Used without a look',
    happened: (f, s) => `Not looked over before use: ${piecesOf(f, s)}.`,
    why: 'Nobody knows what is wrong with a piece nobody looked at.',
    next: 'Look over every piece before the job begins.',
  },
  noCradleBlocks: {
    title: 'Cradle blocks left out',
    happened: (f) => `Cradle blocks under the main: ${numberOf(f, 'blocks')} of 2.`,
    why: 'Round a small main a chain has nothing to bear on and the saddle rocks.',
    next: 'One cradle block of the main’s size under each chain.',
  },
  noSealant: {
    title: 'Closing plug without sealant',
    happened: (f, s) => `Turned in ${piecesOf(f, s)} dry.`,
    why: 'A dry taper thread weeps; this one stays in the ground.',
    next: 'Put sealant on the plug before it goes into the socket.',
  },
  sealantOnRubber: {
    title: 'Sealant on rubber',
    happened: (f, s) => `Put thread sealant on ${piecesOf(f, s)}.`,
    why: 'Sealant on rubber lets it slide and swell.',
    next: 'Sealant is for threads. Rubber goes on clean and dry.',
  },
} as const satisfies Readonly<Record<string, FindingWords>>;

export const abnormalFindings = {
  wentOnAboveRating: {
    title: 'Went on above the rating',
    happened: (f, { units }) =>
      `Work went on with the main at ${units.pressure(numberOf(f, 'mainGaugePa'))}; the rating is ${units.pressure(numberOf(f, 'ratingGaugePa'))}.`,
    why: 'Above its rating nothing on the rig has been shown to hold.',
    next: 'Stop and refer back. That is the right ending of such a job.',
  },
  wentOnBossBeyondUse: {
    title: 'Went on with a boss beyond use',
    happened: () => 'The saddle was set on a boss that no ring can seal on.',
    why: 'The first seal of the job would be the weakest, with the bore open below it.',
    next: 'Clean, look, and if it is beyond use stop and refer back.',
  },
  abnormalNotNoticed: {
    title: 'Not noticed',
    happened: (f) => `Work that it endangers began before this was noticed: ${itemsOf(f, conditions)}.`,
    why: 'A crew that does not look for it works on as if all were well.',
    next: 'Take the readings and looks of set-up in full; each is there for one such thing.',
  },
  abnormalWrongReaction: {
    title: 'Noticed, but not answered',
    happened: (f) => `It showed itself and work went on: ${itemsOf(f, conditions)}.`,
    why: 'Seeing it is half; the other half is to stop.',
    next: 'Stop at the nearest safe state and deal with it, or refer back.',
  },
  workedInAlarm: {
    title: 'Worked on in the alarm',
    happened: (f) =>
      `Worked on ${timesOf(f)} under the high alarm, ${percent(numberOf(f, 'lelShare'))} LEL when it began.`,
    why: 'The high alarm means that the air is on its way to burning.',
    next: 'Out, upwind, people first. Come back when the air is good.',
  },
  needlessStop: {
    title: 'Stopped without a cause that showed',
    happened: () => 'Work was stopped, but nothing that was read or seen spoke against going on.',
    why: 'A customer and a main wait on a job that could have been finished.',
    next: 'Stop whenever in doubt, and name what you saw.',
  },
} as const satisfies Readonly<Record<string, FindingWords>>;

export const endingFindings = {
  stoppedUnsafe: {
    title: 'Stopped in an unsafe state',
    happened: (f) => `When work was stopped, ${itemsOf(f, endingItems)}.`,
    why: 'To stop means to reach the nearest safe state first.',
    next: 'Go to the nearest safe state, back or forward, and only then leave.',
  },
  completedUndone: {
    title: 'Handed back undone',
    happened: (f) => `The job was handed back as complete, but ${itemsOf(f, endingItems)}.`,
    why: 'A service left connected, open or unsealed is not abandoned.',
    next: 'Finish every step, or stop and say what is left.',
  },
  thrown: {
    title: 'Somebody would have been hurt',
    happened: (f) => `The exercise ended: ${itemsOf(f, endingItems)}.`,
    why: 'Pressure does not wait. In the field the day ends here, and not well.',
    next: 'Know what is behind every joint before a hand goes to it.',
  },
} as const satisfies Readonly<Record<string, FindingWords>>;
