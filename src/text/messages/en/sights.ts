import type { Sight } from '../../../core/rig/index.ts';
import type { LookPlace } from '../../../core/rig/index.ts';
import { capital } from '../../sentence.ts';
import { decimals } from '../../figures.ts';
import type { Units } from '../../units.ts';
import { lookPlaces } from './places.ts';
import { troubles } from './troubles.ts';

const faces = {
  dirty: 'dirt and rust hide the metal; clean it and look again',
  sound: 'sound, even metal',
  pitted: 'pitted, but even enough to seal on with care',
  beyondUse: 'so corroded that no ring can seal on it: beyond use',
} as const;

const wraps: Readonly<Record<string, string>> = {
  coalTar: 'old coal-tar wrap, of the known kind',
  tape: 'tape wrap',
  bare: 'bare pipe',
  suspect: 'wrap that may hold asbestos: stop, and call a specialist',
};

/** What an eye found at a place, as one sentence or two. */
export function sights(at: LookPlace, saw: Sight, units: Units): string {
  if (!saw.visible) return `The ${lookPlaces[at]} cannot be seen from here.`;
  const seen = [
    saw.face && faces[saw.face],
    saw.wrap !== undefined && (Object.hasOwn(wraps, saw.wrap) ? wraps[saw.wrap] : saw.wrap),
    saw.wallSound !== undefined && (saw.wallSound ? 'the wall is sound' : 'the wall is thin and wasted'),
    saw.plugIn === true && saw.closingSquare === undefined && 'a plug stands in the thread',
    saw.boreClear !== undefined && (saw.boreClear ? 'the bore is clear' : 'scale and bits lie in the bore'),
    saw.stopperSeen !== undefined && saw.plugIn !== true && stopper(saw, units),
    saw.threadsSound !== undefined &&
      (saw.threadsSound ? 'the threads are clean and sound' : 'the threads are damaged'),
    saw.closingSquare !== undefined && closing(saw),
    ...(saw.signs ?? []).map((sign) => troubles[sign]),
    saw.chainsBear !== undefined && (saw.chainsBear ? 'the links bear flat' : 'the links do not bear flat'),
  ].filter((part) => typeof part === 'string');
  const tail = seen.length === 0 ? 'nothing out of the ordinary' : seen.join('; ');
  return `${capital(lookPlaces[at])}: ${tail}.`;
}

function stopper(saw: Sight, units: Units): string {
  if (!saw.stopperSeen) return 'no stopper to be seen';
  const where =
    saw.stopperBelowPortM === undefined
      ? ''
      : saw.stopperBelowPortM < 0
        ? `, its washer ${units.length(-saw.stopperBelowPortM)} above the underside of the port`
        : `, its washer ${units.length(saw.stopperBelowPortM)} below the port`;
  const square = saw.stopperSquare === false ? 'askew' : 'square';
  const dry = saw.stopperDry === false ? 'wet' : 'dry';
  return `the stopper stands ${square} and ${dry}${where}`;
}

function closing(saw: Sight): string {
  const turns =
    saw.closingTurnsShown === undefined ? '' : `, ${decimals(saw.closingTurnsShown, 1)} threads showing`;
  return saw.closingSquare
    ? `the closing plug is square and in${turns}`
    : `the closing plug is askew${turns}`;
}
