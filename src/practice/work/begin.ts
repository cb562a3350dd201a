import type { Scenario } from '../../core/scenario/index.ts';
import type { KeptRun, Sat, Store } from '../../store/index.ts';

/** Begins a run of an exercise. Who gives a name has the run counted among their others of that exercise. */
export async function beginRun(
  store: Store,
  scenario: Scenario,
  mode: Required<Sat>['mode'],
  name: string,
): Promise<KeptRun> {
  const person = name.trim();
  if (person === '') return store.begin(scenario, { mode });
  const others = (await store.listRuns()).filter(
    (run) => run.person === person && run.scenario.id === scenario.id,
  );
  const attempt = 1 + Math.max(0, ...others.map((run) => run.attempt ?? 0));
  return store.begin(scenario, { mode, person, attempt });
}
