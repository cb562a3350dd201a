import { parseRecord } from '../../core/run/index.ts';
import { judge } from '../../core/judge/index.ts';
import type { KeptRun, Store } from '../../store/index.ts';

/**
 * Opens a run file that was made here or elsewhere, judges it anew and keeps it.
 * A file that cannot be read is refused with the place and the reason in one sentence.
 */
export async function takeInFile(store: Store, file: Blob): Promise<{ run: KeptRun } | { why: string }> {
  const text = await file.text();
  const parsed = parseRecord(text);
  if (parsed.state === 'unusable') {
    const { where, says } = parsed.problem;
    return { why: where === '' ? says : `${where}: ${says}` };
  }
  const { record } = parsed;
  const { verdict, score } = judge(record.scenario, record);
  return { run: await store.takeIn(record.scenario, text, record.endS, { verdict, score }) };
}
