import { createPublicKey, verify } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { keyOf, parseDecision, reassess, textToSign, type Decision } from '../../core/review/index.ts';
import {
  fetchWords,
  languages,
  report,
  sayPlace,
  saySurvived,
  speakBy,
  type Language,
  type UnitSystem,
} from '../../text/index.ts';
import { reasonOf, Unusable } from '../io.ts';
import { readFile } from '../readInput.ts';

export interface ReportAsked {
  readonly run: string;
  readonly output: string;
  readonly decision: string | null;
  readonly units: string;
  readonly language: string;
  readonly hideMarks: boolean;
}

/** Writes a run's report. Throws Unusable where the run or the decision cannot be used. */
export async function makeReport(asked: ReportAsked): Promise<void> {
  const system = oneOf<UnitSystem>(asked.units, ['us', 'si'], 'units');
  const language = oneOf<Language>(asked.language, languages, 'language');
  const told = reassess(readBytes(asked.run));
  if (told.record === null || told.integrity === 'damaged') {
    const bad = told.firstBad === null ? '' : sayPlace(told.firstBad);
    const left = told.survived === null ? '' : ` ${saySurvived(told.survived)}`;
    throw new Unusable(`${asked.run}: ${bad}${left}`);
  }
  const decision = asked.decision === null ? null : readDecision(asked.decision, told.fileDigest);
  await fetchWords(language);
  speakBy(() => language);
  const { record, assessment, integrity, firstBad, fileDigest } = told;
  const input = { record, assessment, integrity, firstBad, fileDigest, keyOf, decision };
  const page = report(
    { ...input, signature: decision === null ? 'unchecked' : check(decision) },
    { system, hideMarks: asked.hideMarks },
  );
  speakBy(() => 'en');
  try {
    writeFileSync(asked.output, page);
  } catch (error) {
    throw new Unusable(`${asked.output}: cannot be written (${reasonOf(error)}).`);
  }
}

function oneOf<T extends string>(word: string, allowed: readonly T[], what: string): T {
  const found = allowed.find((one) => one === word);
  if (found === undefined)
    throw new Unusable(`There are no ${what} called ${word}; there are ${allowed.join(' and ')}.`);
  return found;
}

function readBytes(file: string): Uint8Array {
  try {
    return readFileSync(file);
  } catch (error) {
    throw new Unusable(`${file}: cannot be read (${reasonOf(error)}).`);
  }
}

function readDecision(file: string, runDigest: string): Decision {
  const parsed = parseDecision(readFile(file));
  if ('problem' in parsed) {
    const { where, says } = parsed.problem;
    throw new Unusable(`${file}${where === '' ? '' : `, ${where}`}: ${says}`);
  }
  if (parsed.decision.run.digest !== runDigest)
    throw new Unusable(`${file}, run.digest: this decision is of another run.`);
  return parsed.decision;
}

function check(decision: Decision): 'good' | 'bad' {
  const { publicKey, value } = decision.signature;
  const x = Buffer.from(publicKey, 'hex').toString('base64url');
  try {
    const key = createPublicKey({ key: { kty: 'OKP', crv: 'Ed25519', x }, format: 'jwk' });
    const good = verify(null, Buffer.from(textToSign(decision), 'utf8'), key, Buffer.from(value, 'hex'));
    return good ? 'good' : 'bad';
  } catch {
    // A key that is no point of the curve signs nothing.
    return 'bad';
  }
}
