import { judge } from '../../core/judge/index.ts';
import { recordText, sealRecord } from '../../core/run/index.ts';
import type { SittingView } from '../../session/index.ts';
import type { Store } from '../../store/index.ts';

/** Seals a run that has ended, judges it, and keeps both. */
export async function closeRun(store: Store, runId: string, view: SittingView): Promise<void> {
  const record = sealRecord(view.run.scenario, view.entries, view.run);
  const { verdict, score } = judge(record.scenario, record);
  await store.finish(runId, recordText(record), { verdict, score });
}
