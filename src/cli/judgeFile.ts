import { readFileSync } from 'node:fs';
import { reassess, type Reassessed } from '../core/review/index.ts';
import type { Assessment } from '../core/judge/index.ts';
import { sayPlace } from '../text/index.ts';
import { reasonOf } from './io.ts';

/** What is said of one file: how far it may be believed and, where it can be played again, its assessment. */
export type JudgedFile = { readonly file: string } & Told;

type Told =
  | (Standing & Assessment)
  | (Standing & { readonly says: string })
  | { readonly integrity: 'unusable'; readonly says: string };

interface Standing {
  readonly integrity: 'same' | 'differs' | 'altered';
  /** Place of the first thing that was changed, and the entry, counted from 0, from which nothing can be relied on. */
  readonly where?: string;
  readonly firstBad?: number;
}

/** Judges one run file by playing it again. Never throws: a file that cannot be used says why. */
export function judgeFile(file: string): JudgedFile {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(file);
  } catch (error) {
    return { file, integrity: 'unusable', says: `It cannot be read (${reasonOf(error)}).` };
  }
  return { file, ...told(reassess(bytes)) };
}

function told({ integrity, firstBad, record, assessment }: Reassessed): Told {
  if (integrity === 'damaged' || record === null)
    return { integrity: 'unusable', says: firstBad === null ? '' : sayPlace(firstBad) };
  if (integrity === 'differs')
    return { integrity, says: `Made by another engine (${record.engine}): not judged again.` };
  const entry = firstBad?.entry ?? (firstBad?.where === 'scenario' ? 0 : record.entries.length);
  const standing = firstBad === null ? { integrity } : { integrity, where: firstBad.where, firstBad: entry };
  if (assessment !== null) return { ...standing, ...assessment };
  return { ...standing, says: firstBad === null ? '' : sayPlace(firstBad) };
}

/** Good: believed, and passed. */
export function isGood(judged: JudgedFile): boolean {
  return judged.integrity === 'same' && 'verdict' in judged && judged.verdict === 'pass';
}
