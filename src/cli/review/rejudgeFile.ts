import { readFileSync } from 'node:fs';
import {
  rejudge,
  rowOf,
  type JudgementChange,
  type JudgingChange,
  type RunRow,
} from '../../core/review/index.ts';
import { sayPlace } from '../../text/index.ts';
import { reasonOf } from '../io.ts';

/** One file judged as it stands and as it would be judged after a change. */
export type RejudgedFile = {
  readonly file: string;
  readonly digest: string;
} & (
  | {
      readonly state: 'judged';
      readonly person: string | null;
      /** Null where nothing changes. */
      readonly change: JudgementChange | null;
      /** The line of the table as it would be. */
      readonly row: RunRow;
    }
  | { readonly state: 'refused'; readonly says: string }
);

const refusals = {
  otherWork: 'The changed exercise is other work than what was done in this run.',
  weights: 'With this change the weights of the five headings do not sum to 100.',
};

/** Judges one file twice from one playing. Never throws: a file that cannot be used says why. */
export function rejudgeFile(file: string, change: JudgingChange): RejudgedFile {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(file);
  } catch (error) {
    return { file, digest: '', state: 'refused', says: `It cannot be read (${reasonOf(error)}).` };
  }
  const told = rejudge(bytes, change);
  const { reassessed } = told;
  const { fileDigest: digest, firstBad, record } = reassessed;
  if ('refused' in told) {
    const unbelieved =
      firstBad === null
        ? `Made by another engine (${record?.engine ?? ''}): not judged again.`
        : sayPlace(firstBad);
    const says = { ...refusals, notBelieved: unbelieved }[told.refused];
    return { file, digest, state: 'refused', says };
  }
  const row = rowOf(file, { ...reassessed, assessment: told.after });
  return { file, digest, state: 'judged', person: row.person, change: told.change, row };
}
