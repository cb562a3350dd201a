import { altered } from './altered.ts';
import { believed } from './believed.ts';
import { steady } from './steady/index.ts';

/** A wait longer than this is watching for something; shorter ones belong to the work, s. */
const WORKING_WAIT_S = 10;
const GLANCE_S = 2;

/** Set-up that only finds something out: what it would find is taken from the order. */
const findsOut: ReadonlySet<string> = new Set([
  'traceAtMain',
  'traceAtMeter',
  'checkFarFeed',
  'ignitionCleared',
  'findShutoff',
]);

/**
 * A crew that knows the moves, makes them well, and signs for what it never looked at: nothing is read, watched, heard
 * out or looked over, because it has always been all right.
 */
export const trusting = altered(steady, (order) => ({
  instead: (step, view) => {
    if ('waitS' in step) return { steps: [step.waitS > WORKING_WAIT_S ? { waitS: GLANCE_S } : step] };
    if (step.kind === 'site.do' && findsOut.has(step.task)) return { believed: [] };
    const taken = believed(step, order, view);
    return taken === null ? { steps: [step] } : { believed: taken };
  },
  feels: (fact) => fact,
}));
