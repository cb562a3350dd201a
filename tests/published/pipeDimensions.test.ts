import { describe, expect, it } from 'vitest';
import { pipes } from '../../src/core/catalogue/index.ts';
import { INCH_M } from '../../src/core/units/index.ts';
import { comparing } from './compare.ts';

/*
 * Source: ASME B36.10M schedule 40, inches: outside and inside of NPS 1/2 to 4 read in IFGC 2018 tables and a thread
 * table; walls, and NPS 6 to 12, *from memory*. Metric column computed with `fluids` (it rounds to 0.1 and 0.01 mm).
 */
const inches = comparing('ASME B36.10M', 'schedule 40, inches', 'copy', 'in');
const metric = comparing('ASME B36.10M', 'schedule 40, metric column of fluids 1.0.22', 'computed', 'mm');
const TABLE = [
  ['3/4', 1.05, 0.113, 0.824, 26.7, 20.96],
  ['1', 1.315, 0.133, 1.049, 33.4, 26.64],
  ['1-1/4', 1.66, 0.14, 1.38, 42.2, 35.08],
  ['1-1/2', 1.9, 0.145, 1.61, 48.3, 40.94],
  ['2', 2.375, 0.154, 2.067, 60.3, 52.48],
  ['3', 3.5, 0.216, 3.068, 88.9, 77.92],
  ['4', 4.5, 0.237, 4.026, 114.3, 102.26],
  ['6', 6.625, 0.28, 6.065, 168.3, 154.08],
  ['8', 8.625, 0.322, 7.981, 219.1, 202.74],
  ['10', 10.75, 0.365, 10.02, 273.0, 254.46],
  ['12', 12.75, 0.406, 11.938, 323.8, 303.18],
] as const;

describe('steel pipe, schedule 40', () => {
  it.each(TABLE)(
    'NPS %s has outside %s, wall %s and inside %s in',
    (size, outside, wall, inside, odMm, idMm) => {
      const pipe = pipes[size];
      inches(`NPS ${size} outside`, pipe.odM / INCH_M, outside, { absolute: 1e-6 });
      inches(`NPS ${size} wall`, pipe.wallM / INCH_M, wall, { absolute: 1e-6 });
      inches(`NPS ${size} inside`, pipe.idM / INCH_M, inside, { absolute: 1e-6 });
      expect(Math.abs(pipe.idM - (pipe.odM - 2 * pipe.wallM))).toBeLessThan(1e-9);
      // The metric rounding: 0.002 in of 25.4 mm and 0.1 mm of the larger outsides.
      metric(`NPS ${size} outside`, pipe.odM * 1000, odMm, { absolute: 0.08 });
      metric(`NPS ${size} inside`, pipe.idM * 1000, idMm, { absolute: 0.06 });
    },
  );
});
