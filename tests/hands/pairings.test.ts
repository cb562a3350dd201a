import { describe, expect, it } from 'vitest';
import { drive, steady } from '../../src/core/hands/index.ts';
import { judge } from '../../src/core/judge/index.ts';
import { pairings, paired } from '../scenarios/pairings.ts';

// Every pairing at 35 psig. PAIRINGS=all npx vitest run tests/hands/pairings.test.ts adds 20 and 55 psig.
const pressures = process.env.PAIRINGS === 'all' ? [20, 35, 55] : [35];
const table = pressures.flatMap((psig) => pairings.map(([main, tee]) => [tee, main, psig] as const));

describe('the steady crew, unchanged, on every pairing of tee and main', () => {
  it.each(table)('completes NPS %s on NPS %s at %i psig with every hold point held', (tee, main, psig) => {
    const scenario = paired(main, tee, psig);
    const { entries, run } = drive(scenario, steady);
    const assessment = judge(scenario, { entries, endS: run.clockS });
    expect(assessment.findings.map((f) => f.id)).toEqual([]);
    expect([assessment.verdict, assessment.ending]).toEqual(['pass', 'complete']);
    expect(assessment.score).toBeGreaterThanOrEqual(95);
    expect(assessment.holdPoints.map((h) => [h.id, h.outcome])).toEqual(
      scenario.holdPoints.map(({ id }) => [id, 'held']),
    );
    const blocks = entries.filter(
      ({ action }) => action.kind === 'piece.place' && action.piece.startsWith('cradleBlock'),
    );
    expect(blocks).toHaveLength(['1-1/4', '1-1/2', '2', '3'].includes(main) ? 2 : 0);
  });
});
