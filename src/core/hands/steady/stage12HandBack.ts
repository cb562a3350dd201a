import type { RecordField } from '../../rig/index.ts';
import { leftInGround, renewalLimits } from '../../procedure/index.ts';
import { PSI_PA } from '../../units/index.ts';
import { act, fluidQuiet, lastOf, readGauge, StopWork, wait, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';

/** Everything that stays in the ground tested, made good, and written down as it was read. */
export function* handBack(crew: Crew): Work {
  yield* readGauge(crew, 'main');
  const { leakWatchS } = crew.order.limits;
  for (const place of leftInGround[crew.order.work]) {
    if (!(yield* fluidQuiet(crew, place, leakWatchS + 5)))
      throw new StopWork(place === 'weld' ? 'weldLeaks' : 'proofFails');
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
  const all: readonly (readonly [RecordField, string])[] = [
    ['mainPressure', psigText(crew.mainReadingPa)],
    ['proof1', psigText(crew.proofPa.tee)],
    ['proof2', psigText(crew.proofPa.coupling)],
    ['leakTest', 'Leak fluid on plug, weld and cut end: no bubbles'],
    ['disconnected', 'Cut at the tee, tee drawn'],
    ['purged', 'Purged away from the hole'],
    ['sealed', 'Cap on the cut end of the service; the main closed at the coupling'],
    ['testMedium', 'Air by hand pump; gas at main pressure'],
    ['testDuration', minutes(crew.order.limits.holdS)],
    ['leaksFound', 'None left: every joint quiet under leak fluid'],
    ['abandonedFacility', 'Service from the cut to the meter, left in place, cut end capped'],
    ['operator', 'Harrow Vale Gas; tests by its own yard crew'],
    ['crew', 'Yard crew of two'],
  ];
  const renewed: readonly (readonly [RecordField, string])[] = [
    ['serviceTest', psigText(crew.lineTestPa)],
    ['serviceTestDuration', minutes((crew.order.limits.renewal ?? renewalLimits).lineTestS)],
    ['gasPurge', `${Math.floor(crew.purgedShare * 100 + 0.5)} per cent`],
  ];
  if (crew.order.work === 'abandon') return all;
  return [...all, ...renewed].filter(([field]) => crew.order.record.includes(field));
}

const minutes = (durationS: number): string => `${Math.floor(durationS / 60)} min`;

/** A gauge figure as it is written down: to a tenth of a psi. */
function psigText(gaugePa: number): string {
  const tenths = Math.floor((gaugePa / PSI_PA) * 10 + 0.5);
  return `${Math.floor(tenths / 10)}.${tenths % 10} psig`;
}
