import { PSI_PA } from '../../units/index.ts';
import { latest } from '../recall.ts';
import { testOn, longestHold, quietUnderFluid } from '../lineTest.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';

/**
 * Renewal tee proved on the bench: its stopper is the only thing that will stand between the main and the open branch,
 * so it is shown to hold the main's pressure from below before it goes down.
 */
export function benchProved(told: Told): readonly EvidenceItem[] {
  const { limits } = told;
  const mainGaugePa = latest(told.facts, 'gauge.read', (f) => f.gauge === 'main')?.readingGaugePa ?? 0;
  const test = testOn(told, 'bench');
  const hold = test === null ? null : longestHold(test, mainGaugePa);
  const heldS = hold === null ? 0 : hold.end.atS - hold.start.atS;
  const dropPa = hold === null ? 0 : hold.start.readingGaugePa - hold.end.readingGaugePa;
  return [
    item('atPressure', mainGaugePa > 0 && hold !== null, {
      readingGaugePa: hold?.start.readingGaugePa ?? 0,
      mainGaugePa,
    }),
    item('held', hold !== null && heldS >= limits.holdS, { heldS, holdS: limits.holdS }),
    item('noDrop', hold !== null && heldS > 0 && dropPa <= limits.dropPa, {
      dropPa,
      dropLimitPa: limits.dropPa,
    }),
    quietUnderFluid(test, 'benchTee', mainGaugePa - PSI_PA, limits.fluidWatchS),
  ];
}
