import type { Act } from '../acts.ts';
import type { Way } from '../deviations.ts';
import { whenLess, whenMore } from './amounts.ts';
import { costs, type Expected } from './expected.ts';
import { whenNeverDone, whenUninspected } from './neverDone.ts';
import { whenOnceOmitted } from './onceOmitted.ts';
import { whenWorkOmitted } from './work/index.ts';
import { whenWorkNever } from './work/never.ts';
import { whenWrongPiece } from './wrongPiece.ts';

const unwritten = costs('holdPoints', 2, 'the record is part of the job');

/**
 * What a deviation must cost, or null where nothing is written for it yet. What is done after the last signature, as in
 * a job that is referred back, has no rules yet: what a stop leaves undone is not the crew's to answer for.
 */
export function expectedOf(act: Act, way: Way): Expected | null {
  if (act.toward === null) return null;
  switch (way) {
    case 'leftOut':
      return omitted(act);
    case 'never':
      return neverDone(act.key) ?? known(whenWorkNever, act.key);
    case 'less':
      return whenLess(act, omitted(act));
    case 'more':
      return whenMore(act);
    case 'wrongPiece':
      return whenWrongPiece(act.key);
    case 'swapped':
    case 'early':
    case 'late':
      return null;
  }
}

function omitted(act: Act): Expected | null {
  const once = act.of === 1 ? neverDone(act.key) : whenOnceOmitted(act);
  return once ?? whenWorkOmitted(act);
}

function neverDone(key: string): Expected | null {
  if (key.startsWith('piece.inspect ')) return whenUninspected(key.slice('piece.inspect '.length));
  if (key.startsWith('record.write ')) return unwritten;
  return known(whenNeverDone, key);
}

function known(table: Readonly<Record<string, Expected>>, key: string): Expected | null {
  return Object.hasOwn(table, key) ? table[key] : null;
}

export type { Expected } from './expected.ts';
