import { psi } from '../../units/index.ts';
import { act, fluidQuiet, readGauge, StopWork, wait, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';

/** Waited beyond each time asked for, s. */
const TO_BE_SURE_S = 3;
/** Aimed at above what is asked for, Pa: clear of the gauge's own error. */
const ABOVE_PA = psi(2.2);

/** The renewal tee on its bench cap: the main's pressure from below, held, fluid at its open branch; then the signature. */
export function* provedOnBench(crew: Crew): Work {
  const { limits } = crew.order;
  yield* act(crew, { kind: 'testSet.join', to: 'bench' });
  yield* act(crew, { kind: 'gauge.zero', gauge: 'test' });
  yield* pumpTestTo(crew, crew.mainReadingPa + ABOVE_PA, 1);
  yield* wait(crew, limits.settleS);
  const start = yield* readGauge(crew, 'test');
  if (!(yield* fluidQuiet(crew, 'benchTee', 30))) throw new StopWork('proofFails');
  yield* wait(crew, limits.holdS + TO_BE_SURE_S);
  const end = yield* readGauge(crew, 'test');
  if (start - end > limits.dropPa) throw new StopWork('proofFails');
  yield* act(crew, { kind: 'sign', holdPoint: 'R1' });
  yield* testSetOff(crew);
}

/** Pumps so many strokes at a time until the test gauge reads so much, Pa gauge. */
export function* pumpTestTo(crew: Crew, targetPa: number, strokes: number): Work {
  for (let pulls = 0; pulls < 60; pulls += 1) {
    if ((yield* readGauge(crew, 'test')) >= targetPa) return;
    yield* act(crew, { kind: 'testSet.pump', strokes });
    yield* wait(crew, 1);
  }
  throw new StopWork('proofFails');
}

/** Vented to nothing, then taken off. */
export function* testSetOff(crew: Crew): Work {
  yield* act(crew, { kind: 'testSet.vent', open: 1 });
  for (let waits = 0; waits < 60 && (yield* readGauge(crew, 'test')) > psi(0.5); waits += 1)
    yield* wait(crew, 10);
  yield* act(crew, { kind: 'testSet.join', to: null });
}
