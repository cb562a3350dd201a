import type { BadPlace, Survived } from '../../core/review/index.ts';
import { filled } from '../sentence.ts';
import { reviewWords } from './words/index.ts';

/** The first bad place of a file as one sentence. Actions, links and bytes are counted from 1 for a reader. */
export function sayPlace(bad: BadPlace): string {
  const { bad: whys, place } = reviewWords();
  const params = { place: placeOf(bad), why: whys[bad.why], says: bad.says };
  return bad.says === '' ? filled(place.at, params) : filled(place.detail, params);
}

function placeOf({ where, entry, byte }: BadPlace): string {
  const { place } = reviewWords();
  const link = /^chain\[(\d+)\]$/.exec(where);
  if (link !== null) return filled(place.link, { n: Number(link[1]) + 1 });
  if (where === 'scenario' || where === 'end' || where === 'endDigest') return place[where];
  if (entry !== null) {
    const inside = where.replace(/^entries\[\d+\]\.?/, '');
    const action = filled(place.entry, { n: entry + 1 });
    return inside === '' || inside === 'action' ? action : `${action}, ${inside}`;
  }
  if (byte === null) return where === '' ? place.file : where;
  const told = filled(place.byte, { n: byte + 1 });
  return where === '' ? told : `${told} (${where})`;
}

/** What can still be read of a damaged file, as one sentence. */
export function saySurvived({ entries, bound, title, person }: Survived): string {
  const { survived, lost } = reviewWords();
  return filled(survived, { n: entries.length, bound, title: title ?? lost, person: person ?? lost });
}
