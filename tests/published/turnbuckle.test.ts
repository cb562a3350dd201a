import { describe, it } from 'vitest';
import { constants } from '../../src/core/catalogue/index.ts';
import { INCH_M, POUND_FORCE_N } from '../../src/core/units/index.ts';
import { comparing } from './compare.ts';

/*
 * Sources: ASTM F1145, turnbuckles: two threads of opposite hand take up two pitches a turn (scope read; working loads of
 * 1/2 in *from memory*); NACM welded chain specification, a chart (read in a copy): grade 30, 5/16 in, 1,900 lb, breaks
 * at four times that. Our own limits must lie inside both.
 */
const takeUp = comparing('ASTM F1145', 'take-up a turn, 1/2-13', 'read', 'mm');
const working = comparing(
  'ASTM F1145',
  'our overload beside the working load, jaw and eye 1/2 in',
  'memory',
  'lb',
);
const chain = comparing(
  'NACM welded chain specification',
  'our overload beside grade 30, 5/16 in',
  'copy',
  'lb',
);

describe('the chains’ tensioners', () => {
  it('take up two pitches a turn', () => {
    takeUp(
      'two threads of 13 to the inch',
      constants.tensionerAdvanceM.value * 1e3,
      (2 * INCH_M * 1e3) / 13,
      {
        share: 1e-3,
      },
    );
  });

  it('are called overloaded well before a turnbuckle or a chain of their size is at its working load', () => {
    const ours = constants.chainLegOverloadN.value / POUND_FORCE_N;
    working('one leg', ours, 2200, { from: -0.65, to: -0.5 });
    chain('one leg', ours, 1900, { from: -0.6, to: -0.45 });
  });
});
