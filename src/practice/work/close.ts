import { judge } from '../../core/judge/index.ts';
import { recordText, sealRecord } from '../../core/run/index.ts';
import type { SittingView } from '../../session/index.ts';
import type { KeptRun, Store } from '../../store/index.ts';

/**
 * Seals a run that has ended, judges it, and keeps both. The record says who worked, how it was sat, and what the
 * screen said of it.
 */
export async function closeRun(store: Store, kept: KeptRun, view: SittingView): Promise<void> {
  const { mode, asked, entries, run } = view;
  const sitting = { mode, asked };
  const { verdict, ending, score, holdPoints } = judge(run.scenario, { entries, endS: run.clockS, sitting });
  const { person, attempt = 1, begunAt } = kept;
  const record = sealRecord(run.scenario, entries, run, {
    ...(person === undefined ? {} : { by: { person, attempt, begunAt } }),
    sitting,
    said: { verdict, ending, score },
  });
  const held = holdPoints.filter(({ outcome }) => outcome === 'held').map(({ id }) => id);
  await store.finish(kept.id, recordText(record), { verdict, score, held });
}
