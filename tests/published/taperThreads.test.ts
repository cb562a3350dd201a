import { describe, expect, it } from 'vitest';
import { taperThreads } from '../../src/core/catalogue/index.ts';
import { slackPerTurnM, taperThread } from '../../src/core/physics/index.ts';
import { INCH_M } from '../../src/core/units/index.ts';
import { comparing } from './compare.ts';

/*
 * Source: ASME B1.20.1 Table 2, read in two handbook copies that agree (one web copy misprints L1 of 1-1/2). Tolerance:
 * half the last printed figure.
 */
const inches = comparing('ASME B1.20.1', 'Table 2, inches', 'copy', 'in');
const turns = comparing('ASME B1.20.1', 'Table 2, threads engaged', 'copy', 'turns');
const slacks = comparing('ASME B1.20.1', 'radial slack a turn backed off', 'arithmetic', 'mm');
const TABLE = [
  ['3/4', 1.05, 14, 0.96768, 0.98887, 0.339, 0.5457, 0.2143, 4.75, 7.75, 0.0567],
  ['1', 1.315, 11.5, 1.21363, 1.23863, 0.4, 0.6828, 0.2609, 4.6, 7.6, 0.069],
  ['1-1/4', 1.66, 11.5, 1.55713, 1.58338, 0.42, 0.7068, 0.2609, 4.83, 7.83, 0.069],
  ['1-1/2', 1.9, 11.5, 1.79609, 1.82234, 0.42, 0.7235, 0.2609, 4.83, 7.83, 0.069],
  ['2', 2.375, 11.5, 2.26902, 2.29627, 0.436, 0.7565, 0.2609, 5.01, 8.01, 0.069],
] as const;

describe('American taper pipe thread', () => {
  it.each(TABLE.map((row) => [row[0], row] as const))('NPS %s follows from the formulas', (size, row) => {
    const [, outside, tpi, e0, e1, l1, l2, l3, hand, total, slack] = row;
    const thread = taperThread(outside * INCH_M, tpi, l1 * INCH_M);
    inches(`NPS ${size} E0`, thread.e0M / INCH_M, e0, { absolute: 6e-6 });
    inches(`NPS ${size} E1`, thread.e1M / INCH_M, e1, { absolute: 6e-6 });
    inches(`NPS ${size} L2`, thread.l2M / INCH_M, l2, { absolute: 6e-5 });
    inches(`NPS ${size} L3`, thread.l3M / INCH_M, l3, { absolute: 6e-5 });
    turns(`NPS ${size} hand-tight`, thread.handTightTurns, hand, { absolute: 6e-3 });
    turns(`NPS ${size} in all`, thread.totalTurns, total, { absolute: 6e-3 });
    slacks(`NPS ${size}`, slackPerTurnM(thread.pitchM) * 1000, slack, { absolute: 6e-5 });
    // The catalogue's row is the same thread.
    expect(Math.abs(taperThreads[size].e1M - thread.e1M)).toBeLessThan(1e-6);
    expect(Math.abs(taperThreads[size].madeUpM - thread.totalTurns * thread.pitchM)).toBeLessThan(3e-6);
  });
});
