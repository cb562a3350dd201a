import { psi } from '../../../units/index.ts';
import { act, readGauge, StopWork, type Crew } from '../../crew.ts';
import type { Work } from '../../hand.ts';

/** A main that reads so much otherwise than at first has moved, Pa: more than sound gauges differ by. */
const MOVED_PA = psi(2);

/**
 * The main read again. One that has moved is told to gas control before anything else is put on it; one above the
 * rating is no main to go on with.
 */
export function* mainRead(crew: Crew): Work {
  const readingPa = yield* readGauge(crew, 'main');
  if (Math.abs(readingPa - crew.firstMainPa) > MOVED_PA) {
    yield* act(crew, { kind: 'site.do', task: 'callGasControl' });
    crew.firstMainPa = readingPa;
  }
  if (readingPa > crew.order.ratingGaugePa) throw new StopWork('pressureAboveRating');
}
