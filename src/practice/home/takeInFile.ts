import { parseRecord } from '../../core/run/index.ts';
import { judge } from '../../core/judge/index.ts';
import type { KeptRun, Store } from '../../store/index.ts';
import { fetchWords, spoken, words } from '../../text/index.ts';

/**
 * Opens a run file that was made here or elsewhere, judges it anew and keeps it.
 * A file that cannot be read is refused with the place and the reason in one sentence.
 */
export async function takeInFile(store: Store, file: Blob): Promise<{ run: KeptRun } | { why: string }> {
  const text = await file.text();
  const parsed = parseRecord(text);
  if (parsed.state === 'unusable') {
    const { where, says } = parsed.problem;
    await fetchWords(spoken());
    const said = words().problem(says);
    return { why: where === '' ? said : `${where}: ${said}` };
  }
  const { record } = parsed;
  const { verdict, score } = judge(record.scenario, record);
  const { person, attempt } = record.by ?? {};
  const sat = {
    mode: record.sitting?.mode ?? 'practice',
    ...(person === undefined ? {} : { person, attempt }),
  };
  return { run: await store.takeIn(record.scenario, text, record.endS, { verdict, score, ...sat }) };
}
