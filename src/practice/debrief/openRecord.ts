import { judge, type Assessment } from '../../core/judge/index.ts';
import { ENGINE, integrity, parseRecord, type RunRecord } from '../../core/run/index.ts';
import {
  openSitting,
  parseEvents,
  performAgain,
  type Performance,
  type Sample,
} from '../../session/index.ts';
import { words } from '../../text/index.ts';
import { openStore, type KeptRun, type Store } from '../../store/index.ts';

/** A finished run, judged anew and performed again. */
export interface Reviewed {
  readonly kept: KeptRun;
  readonly text: string;
  readonly record: RunRecord;
  readonly performance: Performance;
  /** Stretches given up by going back. */
  readonly abandoned: readonly (readonly Sample[])[];
  readonly assessment: Assessment;
  readonly integrity: 'same' | 'differs' | 'altered';
  /** Entry from which an altered record disagrees with its chain, counted from 1. */
  readonly firstBad: number | null;
  readonly otherEngine: string | null;
}

/** Opens a finished run of this browser; null where there is none. */
export async function openRecord(runId: string): Promise<Reviewed | null> {
  const store = await openStore();
  const [kept, text] = await Promise.all([store.findRun(runId), store.findRecord(runId)]);
  if (kept === undefined || text === undefined) return null;
  const parsed = parseRecord(text);
  if (parsed.state === 'unusable')
    throw new Error(`${parsed.problem.where} ${words().problem(parsed.problem.says)}`);
  const { record } = parsed;
  const performance = performAgain(record.scenario, record.entries, record.endS);
  return {
    kept,
    text,
    record,
    performance,
    abandoned: await givenUp(store, kept),
    assessment: judge(record.scenario, record),
    integrity: parsed.state === 'altered' ? 'altered' : integrity(record, performance.end),
    firstBad: parsed.state === 'altered' ? parsed.firstBad + 1 : null,
    otherEngine: record.engine === ENGINE ? null : record.engine,
  };
}

/** What was tried and given up in this browser. A run that came as a file, or that is no longer readable, has none. */
async function givenUp(store: Store, kept: KeptRun): Promise<readonly (readonly Sample[])[]> {
  try {
    const events = parseEvents(await store.listEvents(kept.id));
    if (!events.some(({ kind }) => kind === 'rewound')) return [];
    return openSitting(kept.scenario, events, { append: async () => undefined }).view().abandoned;
  } catch {
    return [];
  }
}
