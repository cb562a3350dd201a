import type { findingIds, FindingId } from '../../../../core/judge/index.ts';
import type { FindingWords } from '../../../catalogue.ts';
import { duration, percent } from '../../../units.ts';
import { numberOf, piecesOf, timesOf } from './shared.ts';

type Of<H extends string> = {
  [K in FindingId]: (typeof findingIds)[K]['heading'] extends H ? K : never;
}[FindingId];
export type GasFinding = Of<'gasControl'>;

const BURNS = 'Gas in the hole is air that can burn and air that cannot be breathed.';

export const gasFindings: Readonly<Record<GasFinding, FindingWords>> = {
  gasToHole: {
    title: 'Gas let into the hole',
    happened: (f, { units }) =>
      `${units.mass(numberOf(f, 'toHoleKg'))} of gas went into the hole; the parts of the rig by themselves leave up to ${units.mass(numberOf(f, 'partsLeaveKg'))}.`,
    why: BURNS,
    next: 'Bleed every space through the hose until it is quiet, and see that nothing comes back, before you open it.',
  },
  largePuff: {
    title: 'A large puff',
    happened: (f, { units }) =>
      `${units.mass(numberOf(f, 'puffKg'))} came in one puff; more than ${units.mass(numberOf(f, 'limitKg'))} was under pressure.`,
    why: 'A puff of that size comes at the face of whoever opened the joint.',
    next: 'Bleed first, wait, open the bleed again: no puff. Then open.',
  },
  lowAlarm: {
    title: 'Low gas alarm',
    happened: (f) =>
      `The air of the hole came to ${percent(numberOf(f, 'peakLelShare'))} LEL and stood above the low step for ${duration(numberOf(f, 'overAlarmS'))}.`,
    why: BURNS,
    next: 'Find where it comes from and stop it; let the air clear before going on.',
  },
  highAlarm: {
    title: 'High gas alarm',
    happened: (f) =>
      `The air of the hole came to ${percent(numberOf(f, 'peakLelShare'))} LEL; the high step is ${percent(numberOf(f, 'alarmLelShare'))}.`,
    why: `${BURNS} The average of the hole hides what stands near the leak.`,
    next: 'Out, upwind, people first. Then shut what can be shut from where it is safe.',
  },
  flammableHole: {
    title: 'Flammable air in the hole',
    happened: (f, { units }) =>
      `The air could burn: ${percent(numberOf(f, 'lelShare'))} LEL on average, out to ${units.distance(numberOf(f, 'nearReachM'))} from the leak.`,
    why: 'From here one spark is enough: a tool, a phone, a boot nail.',
    next: 'Keep the live bore contained at all times; leave at the high alarm.',
  },
  flammableAtSource: {
    title: 'Flammable air with a source there',
    happened: (f, { units }) =>
      `Flammable out to ${units.distance(numberOf(f, 'nearReachM'))}, ${percent(numberOf(f, 'lelShare'))} LEL on average, with an ignition source not cleared.`,
    why: 'Gas and a source together are a fire that has not happened yet.',
    next: 'Clear every source before the first wrench, and keep them out.',
  },
  gasIgnited: {
    title: 'The gas took fire',
    happened: (f) => `It took fire at ${percent(numberOf(f, 'lelShare'))} LEL.`,
    why: 'A crew in the hole has no time to get out.',
    next: 'No source near the hole; nothing opened that has not been bled.',
  },
  airIntoMain: {
    title: 'Air pushed into the main',
    happened: (f, { units }) =>
      `${units.mass(numberOf(f, 'airKg'))} of air went into the main, more than ${units.mass(numberOf(f, 'limitKg'))}.`,
    why: 'Air travels along the main as a slug and puts flames out, or is itself close to burning.',
    next: 'Vent the proof before anything below is opened.',
  },
  bledIntoHole: {
    title: 'Bled into the hole',
    happened: (f, { units }) =>
      `The bleed was opened ${timesOf(f)} with its hose in the hole, the first time on ${units.pressure(numberOf(f, 'aboveGaugePa'))}.`,
    why: 'The bleed is there to carry gas away from the crew, not to it.',
    next: 'Lead the hose out, downwind and above grade, before the first bleed.',
  },
  openedUnderPressure: {
    title: 'Opened under pressure',
    happened: (f, s) => {
      const what =
        f.items.length === 0 ? 'The valve was opened with nothing above it' : `Took off ${piecesOf(f, s)}`;
      const thrust = numberOf(f, 'thrustN');
      const push = thrust > 0 ? `, pushing with ${s.units.force(thrust)}` : '';
      return `${what} with ${s.units.pressure(numberOf(f, 'pressureGaugePa'))} behind it${push}.`;
    },
    why: 'What is let go under pressure is thrown, at the face of whoever holds it, and the gas follows.',
    next: 'Valve shut, bled until quiet, shut, waited, opened again: no puff. Only then take it off, face clear.',
  },
  plugOutOpen: {
    title: 'Top plug out in the open',
    happened: (f, { units }) =>
      `The plug let go with ${units.pressure(numberOf(f, 'differenceGaugePa'))} under it and nothing over it; ${units.force(numberOf(f, 'thrustN'))} on the plug.`,
    why: 'The whole bore of the tee then blows into the hole, and the plug is a projectile.',
    next: 'Past an eighth of a turn the plug is turned only inside the proved chamber.',
  },
  teeOutOpen: {
    title: 'Tee out in the open',
    happened: (f, { units }) =>
      `The tee let go with nothing over it; ${units.force(numberOf(f, 'thrustN'))} threw it.`,
    why: 'The coupling then blows freely; there is nothing left to shut but the main.',
    next: 'Past an eighth of a turn the tee is turned only inside the second chamber, proved.',
  },
};
