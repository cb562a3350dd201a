import { renewalLimits } from '../../procedure/index.ts';
import { psi } from '../../units/index.ts';
import { act, fluidQuiet, lastOf, pick, put, readGauge, StopWork, wait, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { pumpTestTo, testSetOff } from './renewBench.ts';

/** Aimed at above the least test pressure, Pa. */
const ABOVE_PA = psi(1.5);
const TO_BE_SURE_S = 3;

/** The line tested alone with its main end capped; the tee marked where it now stands. */
export function* testLine(crew: Crew): Work {
  const { limits, serviceTestGaugePa, work } = crew.order;
  const set = limits.renewal ?? renewalLimits;
  yield* act(crew, { kind: 'mark', at: 'tee' });
  if (work === 'renew') {
    yield* act(crew, { kind: 'site.do', task: 'layService' });
    yield* put(crew, 'serviceCap', 1);
  }
  yield* act(crew, { kind: 'testSet.join', to: 'line' });
  yield* act(crew, { kind: 'gauge.zero', gauge: 'test' });
  yield* pumpTestTo(crew, serviceTestGaugePa + ABOVE_PA, 60);
  yield* wait(crew, limits.settleS);
  const beforeK = yield* temperatureK(crew);
  const start = yield* readGauge(crew, 'test');
  if (!(yield* fluidQuiet(crew, 'lineEnds', 60))) throw new StopWork('proofFails');
  yield* wait(crew, set.lineTestS + TO_BE_SURE_S);
  const end = yield* readGauge(crew, 'test');
  const afterK = yield* temperatureK(crew);
  if (Math.abs(beforeK - afterK) < 1 && start - end > set.lineDropPa) throw new StopWork('proofFails');
  crew.lineTestPa = end;
  yield* act(crew, { kind: 'sign', holdPoint: 'R3' });
  yield* testSetOff(crew);
  const cap = pick(crew, 'serviceCap', work === 'renew' ? 1 : 0);
  yield* act(crew, { kind: 'piece.remove', piece: cap, holdBack: true });
}

function* temperatureK(crew: Crew): Work<number> {
  const facts = yield* act(crew, { kind: 'temperature.read' });
  return lastOf(facts, 'temperature.read')?.readingK ?? 0;
}
