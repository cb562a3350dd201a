import { constants } from '../catalogue/index.ts';
import { isAudible, oxygenFraction, readDetector, rodHoldN } from '../physics/index.ts';
import { barrelOn, gaugeReading, mainGaugePa, oxygenShown, rodGland } from '../rig/index.ts';
import { streetDb } from './gas.ts';
import { senseOf } from './sense.ts';
import { cutAt } from './step.ts';
import type { Readings } from './readings.types.ts';
import type { RunState } from './types.ts';

/** What the crew could see, hear and read at the run's clock. Looking changes nothing. */
export function read(run: RunState): Readings {
  const { view, air } = cutAt(run, run.clockS);
  const sense = senseOf(run, view, run.clockS, air);
  const shown = readDetector(
    { sensedLel: air.detectorLelShare, overRange: air.overRange },
    constants.detectorStepLel.value,
  );
  return {
    atS: run.clockS,
    mainGaugePa: gaugeReading(run.rig, 'main', sense)?.readingGaugePa ?? 0,
    secondGaugePa: gaugeReading(run.rig, 'second', sense)?.readingGaugePa ?? 0,
    headGaugePa: gaugeReading(run.rig, 'head', sense)?.readingGaugePa ?? null,
    lelShare: shown ?? 1,
    overRange: shown === null,
    alarm: run.air.alarm,
    oxygenShare: oxygenShown(oxygenFraction(air.gasFraction, constants.airOxygenFraction.value)),
    bleedDb: sense.bleedDb,
    bleedHeard: isAudible(sense.bleedDb, streetDb),
    holeDb: sense.holeDb,
    holeHeard: isAudible(sense.holeDb, streetDb),
    rodFeltN: barrelOn(run.rig) ? rodHoldN(rodGland, sense.gaugePa('above')) : null,
    rodTravelM: run.rig.rod.travelM,
  };
}

/** True pressure of every cell and of the main at the clock, Pa gauge, for charts and picture; never shown to a crew. */
export function truePressures(run: RunState): Readonly<Record<string, number>> {
  const { view, air } = cutAt(run, run.clockS);
  const out: Record<string, number> = {};
  for (let i = 0; i < view.network.cells.length; i += 1) out[view.network.cells[i].id] = view.gaugePa[i];
  out.main = mainGaugePa(run.rig, senseOf(run, view, run.clockS, air));
  return out;
}

/** Flow of every link at the clock, kg/s of gas and air together, signed from → to; for the picture. */
export function trueFlows(
  run: RunState,
): readonly { id: string; from: string; to: string; kgPerS: number }[] {
  const { view } = cutAt(run, run.clockS);
  const { gas, air } = run.network;
  const { gasMolPerS, airMolPerS } = view.flows;
  return view.network.links.map((link, i) => ({
    id: link.id,
    from: link.from,
    to: link.to,
    kgPerS: gasMolPerS[i] * gas.molarMassKgPerMol + airMolPerS[i] * air.molarMassKgPerMol,
  }));
}
