import { describe, expect, it, vi } from 'vitest';
import type * as Catalogue from '../../src/core/catalogue/index.ts';
import { constants } from '../../src/core/catalogue/index.ts';

/*
 * The same proofs where every opening of the catalogue has a discharge of nothing. What is shown by flow cannot be
 * shown then: each single proof must break, or it would have held without any gas and proved nothing. The constants
 * are changed from outside, for this file alone; the product knows no such switch.
 */
vi.mock('../../src/core/catalogue/index.ts', async (importOriginal) => {
  const real = await importOriginal<typeof Catalogue>();
  const shut = Object.entries(real.constants).map(([name, one]) =>
    /Discharge$|CdAM2$/.test(name) ? [name, { ...one, value: 0 }] : [name, one],
  );
  return { ...real, constants: Object.fromEntries(shut) };
});
vi.mock('./gasIs.ts', () => ({ gasIs: 'stopped' }));

const proofs = import.meta.glob('./*.test.ts');
const others = Object.keys(proofs).filter((file) => file !== './withoutDischarge.test.ts');
for (const file of others) await proofs[file]();

describe('without discharge', () => {
  it('no opening of the catalogue passes anything, and every line of the free order is tried', () => {
    expect(constants.boreDischarge.value).toBe(0);
    expect(constants.plugNoSealantCdAM2.value).toBe(0);
    expect(others).toHaveLength(18);
  });
});
