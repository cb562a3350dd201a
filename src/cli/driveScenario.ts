import { writeFileSync } from 'node:fs';
import { allHands, drive } from '../core/hands/index.ts';
import { judge, type Assessment } from '../core/judge/index.ts';
import { recordText, sealRecord } from '../core/run/index.ts';
import type { Scenario } from '../core/scenario/index.ts';
import { reasonOf, Unusable } from './io.ts';

export const handNames = Object.keys(allHands);

export type DrivenRun = Assessment & { readonly wallS: number };

/** Lets a hand perform an exercise, writes the run where asked, and judges what was written. Throws Unusable. */
export function driveScenario(scenario: Scenario, handName: string, output: string | undefined): DrivenRun {
  if (!Object.hasOwn(allHands, handName))
    throw new Unusable(`There is no hand called ${handName}; there are ${handNames.join(', ')}.`);
  const startMs = performance.now();
  const { entries, run } = drive(scenario, allHands[handName]);
  const record = sealRecord(scenario, entries, run);
  if (output !== undefined) {
    try {
      writeFileSync(output, recordText(record));
    } catch (error) {
      throw new Unusable(`${output}: cannot be written (${reasonOf(error)}).`);
    }
  }
  const assessment = judge(scenario, record);
  return { ...assessment, wallS: Math.round(performance.now() - startMs) / 1000 };
}
