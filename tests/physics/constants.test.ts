import { describe, expect, it } from 'vitest';
import { type Constant, type ConstantName, constants } from '../../src/core/catalogue/index.ts';

const rows = Object.entries(constants) as [ConstantName, Constant][];
const SUFFIXES: Readonly<Record<string, RegExp>> = {
  m: /M$/,
  'm²': /M2$/,
  'm³': /M3$/,
  'm³/s': /M3PerS$/,
  N: /N$/,
  'N·m': /Nm$/,
  'N/m': /NPerM$/,
  Pa: /Pa$/,
  'Pa·s': /PaS$/,
  kg: /Kg$/,
  'kg/mol': /KgPerMol$/,
  K: /K$/,
  s: /S$/,
  '1/s': /PerS$/,
  Hz: /Hz$/,
  dB: /Db$/,
};

describe('the numbers of the model', () => {
  it.each(rows)('%s lies in its range, in the unit its name says', (name, row) => {
    expect(row.low).toBeLessThanOrEqual(row.value);
    expect(row.high).toBeGreaterThanOrEqual(row.value);
    if (row.unit !== '-') expect(name).toMatch(SUFFIXES[row.unit]);
    expect(row.says).toMatch(/\w/);
  });

  it.each(rows.filter(([, row]) => row.source !== 'assumed'))(
    '%s names where it comes from',
    (_name, row) => {
      expect(row.source).toMatch(/^(published|from memory|computed): \w/);
    },
  );

  it.each(rows.filter(([, row]) => row.source === 'assumed'))(
    '%s, assumed, gives way on one side or says it is fixed',
    (name, row) => {
      // Thread diameters and the detector's step are choices, not estimates.
      const fixed = ['tensionerDiameterM', 'stopperScrewM', 'detectorStepLel'];
      expect(row.high > row.low || fixed.includes(name)).toBe(true);
    },
  );

  it('sum where they are sums: proofs, stack and chambers, within 1 %', () => {
    const v = (name: ConstantName): number => constants[name].value;
    const valve = v('valveBelowBallM3') + v('valveBallM3') + v('valveAboveBallM3');
    const sums: [ConstantName, number][] = [
      ['proofFirstM3', v('saddleNetFirstM3') + valve + v('testHeadM3')],
      [
        'proofSecondM3',
        v('saddleNetSecondM3') + v('spoolLowerM3') + valve + v('spoolUpperM3') + v('testHeadM3'),
      ],
      ['aboveBallBarrelM3', v('valveAboveBallM3') + v('rodBarrelNetM3')],
      ['aboveBallSpoolBarrelM3', v('valveAboveBallM3') + v('spoolUpperM3') + v('rodBarrelNetM3')],
      ['wholeFirstM3', v('saddleNetFirstM3') + valve + v('rodBarrelNetM3')],
      [
        'wholeSecondM3',
        v('saddleNetSecondM3') + v('spoolLowerM3') + valve + v('spoolUpperM3') + v('rodBarrelNetM3'),
      ],
    ];
    for (const [name, sum] of sums) expect(Math.abs(sum / v(name) - 1), name).toBeLessThan(0.01);
  });
});
