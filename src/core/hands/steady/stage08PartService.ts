import { act, lastOf, put, StopWork, wait, type Crew } from '../crew.ts';
import type { Work } from '../hand.ts';
import { airGood } from './stage01SetUp.ts';

/** Pilot hole watched, branch cut through, tee trimmed until the gauge ring passes, service purged and capped. */
export function* partService(crew: Crew): Work {
  yield* act(crew, { kind: 'site.do', task: 'supportPipe' });
  yield* act(crew, { kind: 'site.do', task: 'measureVolts' });
  yield* act(crew, { kind: 'bond.clamp', end: 'tee', clamped: true });
  yield* act(crew, { kind: 'bond.clamp', end: 'service', clamped: true });
  yield* act(crew, { kind: 'branch.cut', part: 'pilot' });
  yield* deadAtPilot(crew);
  yield* act(crew, { kind: 'sign', holdPoint: 'H7' });
  yield* act(crew, { kind: 'branch.cut', part: 'through' });
  yield* trim(crew);
  yield* act(crew, { kind: 'service.purge' });
  yield* put(crew, 'serviceCap');
  yield* act(crew, { kind: 'site.do', task: 'bringRig' });
  yield* act(crew, { kind: 'site.do', task: 'bringSpares' });
}

function* deadAtPilot(crew: Crew): Work {
  const start = yield* act(crew, { kind: 'listen' });
  yield* wait(crew, crew.order.limits.noFlowS + 3);
  const end = yield* act(crew, { kind: 'listen' });
  if (lastOf(start, 'listened')?.heard || lastOf(end, 'listened')?.heard) throw new StopWork('stopFails');
  yield* airGood(crew);
}

function* trim(crew: Crew): Work {
  for (const how of ['saw', 'dress', 'file'] as const) yield* act(crew, { kind: 'tee.trim', how });
  const facts = yield* act(crew, { kind: 'gaugeRing.try' });
  if (lastOf(facts, 'gaugeRing.tried')?.passes !== true) throw new StopWork('other');
}
