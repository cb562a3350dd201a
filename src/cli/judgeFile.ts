import { readFileSync } from 'node:fs';
import { judge, type Assessment } from '../core/judge/index.ts';
import { ENGINE, parseRecord, type RunRecord } from '../core/run/index.ts';
import { reasonOf } from './io.ts';

/** What is said of one file: how far it may be believed and, where it can be played again, its assessment. */
export type JudgedFile =
  | ({ readonly file: string; readonly integrity: Integrity; readonly firstBad?: number } & Assessment)
  | {
      readonly file: string;
      readonly integrity: Integrity;
      readonly firstBad?: number;
      readonly says: string;
    }
  | { readonly file: string; readonly integrity: 'unusable'; readonly says: string };

type Integrity = 'same' | 'differs' | 'altered';

/**
 * Judges one run file by playing it again. `firstBad` is the entry, counted from 0, at which the hash chain breaks.
 * Never throws: a file that cannot be used says why.
 */
export function judgeFile(file: string): JudgedFile {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(file);
  } catch (error) {
    return { file, integrity: 'unusable', says: `It cannot be read (${reasonOf(error)}).` };
  }
  const parsed = parseRecord(bytes);
  if (parsed.state === 'unusable') {
    const { where, says } = parsed.problem;
    return { file, integrity: 'unusable', says: where === '' ? says : `${where}: ${says}` };
  }
  if (parsed.state === 'altered') {
    const { firstBad } = parsed;
    return { file, integrity: 'altered', firstBad, ...played(parsed.record) };
  }
  const { record } = parsed;
  if (record.engine !== ENGINE) {
    return {
      file,
      integrity: 'differs',
      says: `Made by another engine (${record.engine}): not judged again.`,
    };
  }
  const result = played(record);
  const same = 'digest' in result && result.digest === record.endDigest;
  return { file, integrity: same ? 'same' : 'differs', ...result };
}

function played(record: RunRecord): Assessment | { readonly says: string } {
  try {
    return judge(record.scenario, record);
  } catch (error) {
    return { says: `It cannot be played again: ${reasonOf(error)}.` };
  }
}

/** Good: believed, and passed. */
export function isGood(judged: JudgedFile): boolean {
  return judged.integrity === 'same' && 'verdict' in judged && judged.verdict === 'pass';
}
