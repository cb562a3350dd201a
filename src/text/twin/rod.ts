import type { Readings, RunState } from '../../core/run/index.ts';
import type { Speech } from '../catalogue.ts';
import { say } from '../say.ts';
import { capital } from '../sentence.ts';
import { words } from '../words.ts';

/** Tip, what hangs on it, how far down it stands and what the hand feels. */
export function rodLines({ rig }: RunState, readings: Readings, speech: Speech): string[] {
  const { rod } = rig;
  const { loads, push } = words().felt;
  if (rod.tip === null && rig.stack.at(-1)?.kind !== 'rodBarrel') return [];
  const lines = [
    rod.tip === null ? say('twin.rodNoTip') : say('twin.rodTip', { tip: speech.piece(rod.tip) }),
  ];
  lines.push(rod.load === null ? say('twin.rodEmpty') : say('twin.rodLoad', { load: loads[rod.load] }));
  if (rod.collarTravelM !== null)
    lines.push(say('twin.collarAt', { travel: speech.units.length(rod.collarTravelM) }));
  if (rig.stack.at(-1)?.kind !== 'rodBarrel') return lines;
  const held = say(rod.held ? 'twin.rodHeld' : 'twin.rodFree');
  lines.push(say('twin.rodTravel', { travel: speech.units.length(readings.rodTravelM), held }));
  if (rod.engaged !== null) lines.push(say('twin.rodEngaged', { load: loads[rod.engaged] }));
  if (readings.rodFeltN !== null && rod.held) lines.push(`${capital(push(readings.rodFeltN, speech))}.`);
  return lines;
}
