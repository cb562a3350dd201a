import type { Readings } from '../../core/run/index.ts';
import { say } from '../say.ts';
import { decibels } from '../units.ts';

/** What the ear gets over the noise of the street. */
export function earLines(readings: Readings): string[] {
  const lines: string[] = [];
  if (readings.bleedHeard) lines.push(say('twin.bleedHeard', { level: decibels(readings.bleedDb) }));
  if (readings.holeHeard) lines.push(say('twin.holeHeard', { level: decibels(readings.holeDb) }));
  return lines.length === 0 ? [say('twin.silence')] : lines;
}
