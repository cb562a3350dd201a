import type { Act } from '../acts.ts';
import type { Way } from '../deviations.ts';
import { whenNeverDone, whenUninspected } from './neverDone.ts';
import { whenOnceOmitted } from './onceOmitted.ts';
import { whenWrongPiece } from './wrongPiece.ts';
import { costs, type Expected } from './expected.ts';

const unwritten = costs('holdPoints', 2, 'the record is part of the job');

/**
 * What a deviation must cost, or null where nothing is written for it yet. What is done after the last signature, as in
 * a job that is referred back, has no rules yet: what a stop leaves undone is not the crew's to answer for.
 */
export function expectedOf(act: Act, way: Way): Expected | null {
  if (act.toward === null) return null;
  if (way === 'never') return neverDone(act.key);
  if (way === 'wrongPiece') return whenWrongPiece(act.key);
  if (way !== 'leftOut') return null;
  return act.of === 1 ? neverDone(act.key) : whenOnceOmitted(act);
}

function neverDone(key: string): Expected | null {
  if (key.startsWith('piece.inspect ')) return whenUninspected(key.slice('piece.inspect '.length));
  if (key.startsWith('record.write ')) return unwritten;
  return Object.hasOwn(whenNeverDone, key) ? whenNeverDone[key] : null;
}

export type { Expected } from './expected.ts';
