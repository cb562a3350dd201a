import type { HoldPointId } from '../../../rig/index.ts';
import type { Act } from '../acts.ts';
import type { Way } from '../deviations.ts';
import { whenLess, whenMore } from './amounts.ts';
import { costs, harmless, type Expected } from './expected.ts';
import { whenNeverDone, whenUninspected } from './neverDone.ts';
import { whenOnceOmitted } from './onceOmitted.ts';
import { whenWorkOmitted } from './work/index.ts';
import { whenWorkNever } from './work/never.ts';
import { whenWrongPiece } from './wrongPiece.ts';

const unwritten = costs('holdPoints', 1, 'the record is part of the job');
const setAside = harmless('it is not put in, set aside or not');
const notComeTo = harmless('the job was referred back before it was asked for');

/** Which hold point asks for what is got ready long before it. */
const askedAt: Readonly<Record<string, HoldPointId>> = {
  'site.do secondPerson': 'H10',
  'site.do bringSpares': 'H10',
  'service.purge': 'H12',
};

/**
 * What a deviation must cost, or null where nothing is written for it. What is done after the last signature, as in
 * a job that is referred back, has no rules: what a stop leaves undone is not the crew's to answer for.
 */
export function expectedOf(act: Act, way: Way, acts: readonly Act[]): Expected | null {
  if (act.toward === null) return null;
  switch (way) {
    case 'leftOut':
      return omitted(act, acts);
    case 'never':
      return known(whenWorkNever, act.key) ?? neverDone(act.key, acts);
    case 'less':
      return whenLess(act, omitted(act, acts));
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

function omitted(act: Act, acts: readonly Act[]): Expected | null {
  const inspects = act.key.startsWith('piece.inspect ');
  const once = act.of === 1 || inspects ? neverDone(act.key, acts) : whenOnceOmitted(act);
  return once ?? whenWorkOmitted(act);
}

function neverDone(key: string, acts: readonly Act[]): Expected | null {
  const asked = askedAt[key];
  if (asked !== undefined && !acts.some((act) => act.key === `sign ${asked}`)) return notComeTo;
  if (key.startsWith('piece.reject ')) return setAside;
  if (key.startsWith('piece.inspect ')) {
    const piece = key.slice('piece.inspect '.length);
    return whenUninspected(piece, isUsed(piece, acts));
  }
  if (key.startsWith('record.write ')) return unwritten;
  return known(whenNeverDone, key);
}

function isUsed(piece: string, acts: readonly Act[]): boolean {
  return ['piece.place', 'rod.load', 'rod.fit'].some((act) =>
    acts.some(({ key }) => key === `${act} ${piece}`),
  );
}

function known(table: Readonly<Record<string, Expected>>, key: string): Expected | null {
  return Object.hasOwn(table, key) ? table[key] : null;
}

export type { Expected } from './expected.ts';
