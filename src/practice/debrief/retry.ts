import type { RunRecord } from '../../core/run/index.ts';
import type { SittingEvent } from '../../session/index.ts';
import { openStore, type KeptRun } from '../../store/index.ts';
import { beginRun } from '../work/begin.ts';

/**
 * Takes a finished run up again, as a new practice run, before what was done at a time, s. What came after is done
 * and given up in its journal, so that the chart shows both ways.
 */
export async function retryFrom(record: RunRecord, toS: number): Promise<KeptRun> {
  const store = await openStore();
  const run = await beginRun(store, record.scenario, 'practice', record.by?.person ?? '');
  const events: readonly SittingEvent[] = [
    ...record.entries.map(({ atS, action }) => ({ kind: 'acted', atS, action }) as const),
    { kind: 'waited', untilS: record.endS },
    { kind: 'rewound', toS },
  ];
  await store.appendAll(run.id, events, toS);
  return run;
}
