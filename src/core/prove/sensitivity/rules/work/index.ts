import type { Act } from '../../acts.ts';
import type { Expected } from '../expected.ts';
import { firstFitting, saidBy } from '../line.ts';
import { bleeding, rodWork } from './overValve.ts';
import { pieces } from './pieces.ts';
import { proving, seating } from './seating.ts';
import { service } from './service.ts';

const lines = [...seating, ...proving, ...bleeding, ...rodWork, ...service, ...pieces];

/** What leaving out one act of the hands must cost, or null where nothing is written. */
export function whenWorkOmitted(act: Act): Expected | null {
  const line = firstFitting(lines, act);
  return line === null ? null : saidBy(line);
}
