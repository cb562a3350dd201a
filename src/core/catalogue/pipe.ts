import { B36, B36_MEMORY, type Source } from './source.ts';
import { inchM, type Nps } from './sizes.ts';

/** Steel pipe, schedule 40 (the standard weight for the larger sizes): outside, wall and inside in metres. */
export interface PipeSize {
  readonly odM: number;
  readonly wallM: number;
  readonly idM: number;
  readonly source: Source;
}

const row = (odIn: number, wallIn: number, source: Source): PipeSize => ({
  odM: inchM(odIn),
  wallM: inchM(wallIn),
  idM: inchM(odIn - 2 * wallIn),
  source,
});

/** ASME B36.10M; outside diameters and NPS 3/4–4 bores were read in secondary copies, NPS 6–12 are from memory. */
export const pipes: Readonly<Record<Nps, PipeSize>> = {
  '3/4': row(1.05, 0.113, B36),
  '1': row(1.315, 0.133, B36),
  '1-1/4': row(1.66, 0.14, B36),
  '1-1/2': row(1.9, 0.145, B36),
  '2': row(2.375, 0.154, B36),
  '3': row(3.5, 0.216, B36),
  '4': row(4.5, 0.237, B36),
  '6': row(6.625, 0.28, B36_MEMORY),
  '8': row(8.625, 0.322, B36_MEMORY),
  '10': row(10.75, 0.365, B36_MEMORY),
  '12': row(12.75, 0.406, B36_MEMORY),
};
