import { ATM_PA, PSI_PA } from '../../units/index.ts';
import { serviceTestGaugePa, workOf, type Fact } from '../../rig/index.ts';
import { kindOf, latest } from '../recall.ts';
import { longestHold, quietUnderFluid, testOn, type TestHold } from '../lineTest.ts';
import { renewalLimits } from '../settings.ts';
import { item, type EvidenceItem, type Told } from '../told.ts';

/**
 * Service tested alone, its main end capped (49 CFR 192.511; an old line put back: 192.725): test air put on a joined
 * line stands on the stopper, which nothing holds against it from above.
 */
export function lineTested(told: Told): readonly EvidenceItem[] {
  const { facts, limits, job } = told;
  const set = limits.renewal ?? renewalLimits;
  const neededGaugePa = serviceTestGaugePa(job);
  const test = testOn(told, 'line');
  const hold = test === null ? null : longestHold(test, neededGaugePa);
  const heldS = hold === null ? 0 : hold.end.atS - hold.start.atS;
  const temperatures = test === null || hold === null ? null : temperaturesOf(test, hold);
  const dropPa = temperatures === null || hold === null ? 0 : correctedDropPa(hold, temperatures);
  const purged = latest(facts, 'service.purged');
  const pumped = latest(facts, 'testSet.pumped', (f) => f.on === 'line');
  return [
    item('alone', test !== null && pumped !== null && !joinedBefore(told, pumped.atS) && !pumped.onStopper),
    item(
      'gasFree',
      workOf(job) === 'renew' || (purged !== null && pumped !== null && purged.atS < pumped.atS),
    ),
    item('atPressure', hold !== null, { readingGaugePa: hold?.start.readingGaugePa ?? 0, neededGaugePa }),
    item('held', heldS >= set.lineTestS, { heldS, holdS: set.lineTestS }),
    item('temperature', temperatures !== null),
    item('noDrop', temperatures !== null && heldS > 0 && dropPa <= set.lineDropPa, {
      dropPa,
      dropLimitPa: set.lineDropPa,
    }),
    quietUnderFluid(test, 'lineEnds', neededGaugePa - PSI_PA, limits.fluidWatchS),
  ];
}

/** A tie-in was on when the last strokes were told. */
function joinedBefore({ facts, job }: Told, atS: number): boolean {
  const on = latest(facts, 'piece.placed', (f) => kindOf(job, f.piece) === 'tieIn' && f.atS <= atS);
  const off = latest(facts, 'piece.removed', (f) => kindOf(job, f.piece) === 'tieIn' && f.atS <= atS);
  return on !== null && (off === null || off.atS < on.atS);
}

/** A temperature goes with a reading when it was taken within this time of it, s (assumed). */
const WITH_READING_S = 120;

function temperaturesOf(test: readonly Fact[], { start, end }: TestHold): readonly [number, number] | null {
  const near = (atS: number): number | null => {
    const read = test.find((f) => f.fact === 'temperature.read' && Math.abs(f.atS - atS) <= WITH_READING_S);
    return read?.fact === 'temperature.read' ? read.readingK : null;
  };
  const [before, after] = [near(start.atS), near(end.atS)];
  return before === null || after === null ? null : [before, after];
}

/** What the reading fell by beyond what cooling accounts for, Pa: both brought to the temperature at the start. */
function correctedDropPa({ start, end }: TestHold, [beforeK, afterK]: readonly [number, number]): number {
  const endAbsPa = ((end.readingGaugePa + ATM_PA) * beforeK) / afterK;
  return start.readingGaugePa + ATM_PA - endAbsPa;
}
