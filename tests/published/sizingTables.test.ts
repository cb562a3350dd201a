import { describe, expect, it } from 'vitest';
import { pipeMassFlowKgPerS, pipeSize } from '../../src/core/physics/index.ts';
import {
  ATM_PA,
  CUBIC_FOOT_M3,
  FOOT_M,
  GAS_CONSTANT,
  INCH_M,
  INCH_WATER_PA,
  psi,
} from '../../src/core/units/index.ts';
import { fuelGas, SITE_K } from '../physics/vessels.ts';
import { comparing } from './compare.ts';

/*
 * Source: IFGC 2018 / NFPA 54 sizing tables, schedule 40 steel, specific gravity 0.60, cubic feet an hour (read in
 * secondary copies; the 0.5 in w.c. rows from an older print). Our law is isothermal pipe flow with Colebrook,
 * roughness 0.0018 in, viscosity 1.2e-5 Pa·s. Tolerance 8 % for NPS 2 and smaller. Tables 402.4(5) and (7) are left
 * out: they follow L^-0.5, not their own equation. The equation itself lives here only.
 */
const hold = comparing('IFGC 2018 / NFPA 54 sizing tables', 'schedule 40 steel, gravity 0.60', 'copy', 'cfh');
const BORES_IN = { '3/4': 0.824, '1': 1.049, '1-1/4': 1.38, '2': 2.067 } as const;
type Size = keyof typeof BORES_IN;
interface Row {
  table: string;
  feet: number;
  cells: Partial<Record<Size, number>>;
  dropWater?: number;
  psig?: [number, number];
}
const ROWS: Row[] = [
  { table: '0.5 in w.c.', dropWater: 0.5, feet: 10, cells: { '3/4': 360, '1': 680, '1-1/4': 1400 } },
  {
    table: '0.5 in w.c.',
    dropWater: 0.5,
    feet: 50,
    cells: { '3/4': 151, '1': 285, '1-1/4': 580, '2': 1680 },
  },
  {
    table: '0.5 in w.c.',
    dropWater: 0.5,
    feet: 100,
    cells: { '3/4': 103, '1': 195, '1-1/4': 400, '2': 1150 },
  },
  { table: '402.4(3)', dropWater: 3, feet: 10, cells: { '3/4': 949, '1': 1790, '1-1/4': 3670, '2': 10600 } },
  { table: '402.4(3)', dropWater: 3, feet: 60, cells: { '3/4': 360, '1': 678, '1-1/4': 1390, '2': 4020 } },
  { table: '402.4(4)', dropWater: 6, feet: 50, cells: { '3/4': 578, '1': 1090, '1-1/4': 2240, '2': 6450 } },
  {
    table: '402.4(6)',
    psig: [3, 1],
    feet: 100,
    cells: { '3/4': 1420, '1': 2670, '1-1/4': 5470, '2': 15800 },
  },
];

/** The published equation, cubic feet an hour (constants *from memory*; they reproduce the tables read). */
function equationCfh(row: Row, boreIn: number): number {
  if (row.psig !== undefined) {
    const [p1, p2] = row.psig.map((gauge) => gauge + 14.7);
    return (18.93 * boreIn * (((p1 * p1 - p2 * p2) * 0.9992) / (0.6094 * row.feet)) ** 0.206) ** (1 / 0.381);
  }
  return (19.17 * boreIn * ((row.dropWater ?? 0) / (0.6094 * row.feet)) ** 0.206) ** (1 / 0.381);
}

/** Our law, cubic feet an hour at 60 °F and 14.73 psia. */
function oursCfh(row: Row, boreIn: number): number {
  const low = ATM_PA + psi(row.psig?.[1] ?? 0);
  const high =
    row.psig === undefined ? low + (row.dropWater ?? 0) * INCH_WATER_PA : ATM_PA + psi(row.psig[0]);
  const pipe = pipeSize(boreIn * INCH_M, row.feet * FOOT_M, 0.0018 * INCH_M, 0);
  const flow = pipeMassFlowKgPerS(pipe, high, low, {
    ...fuelGas,
    viscosityPaS: 1.2e-5,
    rt: GAS_CONSTANT * SITE_K,
  });
  const density = (psi(14.73) * fuelGas.molarMassKgPerMol) / (GAS_CONSTANT * SITE_K);
  return (flow / density / CUBIC_FOOT_M3) * 3600;
}

const cells = ROWS.flatMap((row) =>
  Object.entries(row.cells).map(([size, cfh]): [string, Row, number, number] => [
    `${row.table}, NPS ${size}, ${row.feet} ft`,
    row,
    BORES_IN[size as Size],
    cfh,
  ]),
);

describe('sizing tables of steel pipe', () => {
  it.each(cells)('%s: our pipe within 8 %%', (name, row, boreIn, cfh) => {
    hold(name, oursCfh(row, boreIn), cfh, { share: 0.08 });
  });

  // 1.5 % for the 2018 tables; the older print is rounded (its NPS 2 rows by 1.3 %), so 1.5 % holds there too.
  it.each(cells)('%s: the published equation within 1.5 %%', (_name, row, boreIn, cfh) => {
    expect(Math.abs(equationCfh(row, boreIn) / cfh - 1)).toBeLessThanOrEqual(0.015);
  });

  it('tables (5) and (7) fall with the root of length, which their equation does not', () => {
    // Printed flows of one size at 10 and 50 ft: 1510 and 673.
    expect(Math.abs(1510 / 673 / Math.sqrt(5) - 1)).toBeLessThan(0.005);
    expect(5 ** (0.206 / 0.381)).toBeGreaterThan(2.35);
  });
});
