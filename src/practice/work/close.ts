import { judge } from '../../core/judge/index.ts';
import { recordText, sealRecord } from '../../core/run/index.ts';
import type { SittingView } from '../../session/index.ts';
import type { Store } from '../../store/index.ts';

/** Seals a run that has ended, judges it, and keeps both. The record says how it was sat. */
export async function closeRun(store: Store, runId: string, view: SittingView): Promise<void> {
  const { mode, asked } = view;
  const record = sealRecord(view.run.scenario, view.entries, view.run, { sitting: { mode, asked } });
  const { verdict, score, holdPoints } = judge(record.scenario, record);
  const held = holdPoints.filter(({ outcome }) => outcome === 'held').map(({ id }) => id);
  await store.finish(runId, recordText(record), { verdict, score, held });
}
