import type { RecordField } from '../../rig/index.ts';
import { PSI_PA } from '../../units/index.ts';
import { act, fluidQuiet, lastOf, readGauge, StopWork, wait, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';

/** Everything that stays in the ground tested, made good, and written down as it was read. */
export function* handBack(crew: Crew): Work {
  yield* readGauge(crew, 'main');
  const { leakWatchS } = crew.order.limits;
  for (const place of ['closingPlug', 'weld', 'cutEnd'] as const) {
    if (!(yield* fluidQuiet(crew, place, leakWatchS + 5))) throw new StopWork('proofFails');
  }
  yield* airAtZero(crew, 'hole');
  yield* airAtZero(crew, 'beside');
  yield* act(crew, { kind: 'bond.clamp', end: 'tee', clamped: false });
  yield* act(crew, { kind: 'bond.clamp', end: 'service', clamped: false });
  yield* act(crew, { kind: 'site.do', task: 'coat' });
  for (const [field, value] of writing(crew)) yield* act(crew, { kind: 'record.write', field, value });
  yield* act(crew, { kind: 'sign', holdPoint: 'H12' });
  yield* act(crew, { kind: 'site.do', task: 'cover' });
}

function* airAtZero(crew: Crew, where: 'hole' | 'beside'): Work {
  for (let tries = 0; tries < 10; tries += 1) {
    const facts = yield* act(crew, { kind: 'detector.read', where });
    if (lastOf(facts, 'detector.read')?.lelShare === 0) return;
    if (crew.view.rig.done.ventilate === undefined) yield* act(crew, { kind: 'site.do', task: 'ventilate' });
    yield* wait(crew, 60);
  }
  throw new StopWork('gasInHole');
}

function writing(crew: Crew): readonly (readonly [RecordField, string])[] {
  return [
    ['mainPressure', psigText(crew.mainReadingPa)],
    ['proof1', psigText(crew.proofPa.tee)],
    ['proof2', psigText(crew.proofPa.coupling)],
    ['leakTest', 'Leak fluid on plug, weld and cut end: no bubbles'],
    ['disconnected', 'Cut at the tee, tee drawn'],
    ['purged', 'Purged away from the hole'],
    ['sealed', 'Closing plug in the coupling, cap on the service'],
    ['testMedium', 'Air by hand pump; gas at main pressure'],
    ['crew', 'Yard crew of two'],
  ];
}

/** A gauge figure as it is written down: to a tenth of a psi. */
function psigText(gaugePa: number): string {
  const tenths = Math.floor((gaugePa / PSI_PA) * 10 + 0.5);
  return `${Math.floor(tenths / 10)}.${tenths % 10} psig`;
}
