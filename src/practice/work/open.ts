import {
  openSitting,
  parseEvents,
  UnreadableSitting,
  type Sitting,
  type SittingEvent,
} from '../../session/index.ts';
import { claimWriter, openStore, type KeptRun, type Store, type Writer } from '../../store/index.ts';

/** What came of opening a kept run to go on with it. */
export type Opened =
  | {
      readonly state: 'open';
      readonly sitting: Sitting;
      readonly run: KeptRun;
      readonly store: Store;
      /** Every other run kept here, newest first. */
      readonly past: readonly KeptRun[];
      readonly writer: Writer;
    }
  | { readonly state: 'lost' }
  | { readonly state: 'finished' }
  | { readonly state: 'elsewhere' }
  | { readonly state: 'unreadable'; readonly index: number; readonly why: string };

/** Opens a kept run where it stood after its last action, as the only page that may write it. */
export async function openKeptRun(runId: string): Promise<Opened> {
  const store = await openStore();
  const run = await store.findRun(runId);
  if (run === undefined) return { state: 'lost' };
  if (run.state === 'finished') return { state: 'finished' };
  const writer = await claimWriter(runId);
  if (writer === null) return { state: 'elsewhere' };
  try {
    const events = parseEvents(await store.listEvents(runId));
    const journal = { append: (event: SittingEvent) => store.append(runId, event, reachedBy(event)) };
    const sitting = openSitting(run.scenario, events, journal, run.mode);
    const past = (await store.listRuns()).filter(({ id }) => id !== runId);
    if (events.length === 0) sitting.begin();
    return { state: 'open', sitting, run, store, writer, past };
  } catch (reason) {
    writer.release();
    if (reason instanceof UnreadableSitting)
      return { state: 'unreadable', index: reason.index, why: reason.message };
    throw reason;
  }
}

/** Simulated time an event brought the run to, s. */
function reachedBy(event: SittingEvent): number {
  if (event.kind === 'waited') return event.untilS;
  return event.kind === 'rewound' ? event.toS : event.atS;
}
