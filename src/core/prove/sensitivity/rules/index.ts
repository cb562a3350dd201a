import type { HoldPointId } from '../../../rig/index.ts';
import type { Act } from '../acts.ts';
import type { Way } from '../deviations.ts';
import { whenLess, whenMore } from './amounts.ts';
import { costs, harmless, type Expected } from './expected.ts';
import { whenNeverDone, whenUninspected } from './neverDone.ts';
import { whenOnceOmitted } from './onceOmitted.ts';
import { isPaperKey } from './paperKey.ts';
import { afterSigning, whenSwapped } from './reorder.ts';
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
  'mark tee': 'R4',
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
      return swapped(act, acts);
    case 'late':
      return late(act, acts);
    case 'early':
      return early(act);
  }
}

function swapped(act: Act, acts: readonly Act[]): Expected | null {
  const next = acts[acts.indexOf(act) + 1];
  return next === undefined ? null : whenSwapped(act, next, (one) => omitted(one, acts));
}

/** Put off until after the next signature. What moves parts then comes out of its turn as well, which only some rules know. */
function late(act: Act, acts: readonly Act[]): Expected | null {
  const asked = askedAt[act.key];
  if (asked !== undefined && asked !== act.toward) return harmless('it is there by the time it is asked for');
  return isPaperKey(act.key) && !needsItsTurn(act.key) ? afterSigning(act, omitted(act, acts)) : null;
}

/** Brought forward to before the signature before: nothing hangs on when these are done, if they are done by then. */
function early(act: Act): Expected | null {
  return anyTime.some((beginning) => act.key.startsWith(beginning))
    ? harmless('it is done by the time it is asked for')
    : null;
}

const anyTime: readonly string[] = [
  'site.do bring',
  'site.do supportPipe',
  'piece.inspect ',
  'mark portLine',
];

/** What has a moment of its own, other than a signature, by which it must be done. */
function needsItsTurn(key: string): boolean {
  const turns = [
    'leakFluid.apply topJoint', 'sealant.apply', 'service.purge', 'site.do layService', 'gaugeRing.try',
    'piece.inspect serviceCap', 'piece.inspect valveCap', 'piece.inspect closingPlug', 'site.do measureVolts',
  ]; // prettier-ignore
  return turns.some((beginning) => key.startsWith(beginning));
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
