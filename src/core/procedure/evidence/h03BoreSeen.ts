import { latest } from '../recall.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';

/** Bore seen: a stopper squeezed over scale does not seal, and a bit that falls jams the thread. */
export function boreSeen({ facts }: Told): readonly EvidenceItem[] {
  const drawnS = latest(facts, 'plug.free')?.atS ?? null;
  const look = latest(facts, 'looked', (f) => f.at === 'downBore' && f.saw.visible && f.saw.plugIn === false);
  const seen = drawnS !== null && look !== null && look.atS >= drawnS;
  return [item('looked', seen), item('clear', seen && look.saw.boreClear === true)];
}
