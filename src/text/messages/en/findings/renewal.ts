import type { FindingWords } from '../../../catalogue.ts';
import { percent } from '../../../units.ts';
import { numberOf } from './shared.ts';

/** What a renewal can go wrong by. */
export const renewalFindings = {
  testAirOnStopper: {
    title: 'Test air put against the stopper',
    happened: (f, { units }) =>
      `The line was joined when it was pumped to ${units.pressure(numberOf(f, 'gaugePa'))}: ${units.force(numberOf(f, 'thrustN'))} pushed the stopper down, and its grip was ${units.force(numberOf(f, 'holdsN'))}.`,
    why: 'The keeper holds the stopper against the main, not against air from above: pushed out it is lost in the main, and air follows it.',
    next: 'Test the service alone, its main end capped; join it afterwards.',
  },
  drawnUnequalised: {
    title: 'Stopper drawn against the main’s pressure',
    happened: (f, { units }) => `${units.force(numberOf(f, 'thrustN'))} pushed it up as it left its bore.`,
    why: 'The main throws stopper and rod up at whoever holds it.',
    next: 'Slacken a little, wait until the pressures have come equal, then draw.',
  },
  airLeftInLine: {
    title: 'Relit with air in the line',
    happened: (f) =>
      `The last reading at the riser was ${percent(numberOf(f, 'gasShare'))} gas; ${percent(numberOf(f, 'limitShare'))} is asked for.`,
    why: 'Gas and air in one pipe burn inside it.',
    next: 'One continuous flow to the outdoor riser until the instrument has read full gas for a minute.',
  },
} satisfies Readonly<Record<string, FindingWords>>;
