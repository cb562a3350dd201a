import { pieces } from '../../core/catalogue/index.ts';
import { lathe, ring, type RZ } from '../shape/lathe.ts';
import { acrossFlats } from '../shape/polygon.ts';
import { prism } from '../shape/prism.ts';
import { alongX, join, moved } from '../shape/solid.ts';
import { HAIR, type PieceShape } from './part.ts';

/** Shortening of the rubber when fully squeezed: volume kept, the free barrel fills the bore and a little more (assumed). */
const SHORTENS = 0.16;

/** Rubber between washers, origin on top of the upper washer. `squeeze` 1 fills the bore firmly. */
export const boreStopper: PieceShape = ({ teeSize, squeeze = 0 }) => {
  const d = pieces.boreStopper.dims(teeSize);
  const core = d.coreOdM / 2;
  const washer = d.washerOdM / 2;
  const free = d.freeOdM / 2;
  const wall = d.boreM / 2 - HAIR;
  const top = -d.washerThickM;
  const length = d.rubberLengthM * (1 - SHORTENS * squeeze);
  const low = top - length;
  const rubber: RZ[] = [[core + HAIR, top - HAIR]];
  const steps = 10;
  for (let i = 0; i <= steps; i++) {
    const t = i / steps;
    // A barrel that meets the wall first at its middle and lies along it when squeezed home.
    const barrel = 1 - Math.pow(Math.abs(2 * t - 1), 2 + 6 * squeeze);
    const r = Math.min(wall, free + (wall - free) * 1.7 * squeeze * barrel);
    rubber.push([r, top - HAIR - (length - 2 * HAIR) * t]);
  }
  rubber.push([core + HAIR, low + HAIR]);
  const washerRing = (z: number) => ring(core + HAIR, washer, z, z + d.washerThickM, 32);
  const nutTop = low - d.washerThickM - HAIR;
  const screw = join(
    ring(0, core, nutTop - d.nutM - 0.001, d.stemM, 20),
    moved(alongX(ring(0, 0.0016, core + HAIR, core + 0.0035, 10)), [0, 0, d.stemM - 0.004]),
    moved(alongX(ring(0, 0.0016, -core - 0.0035, -core - HAIR, 10)), [0, 0, d.stemM - 0.004]),
  );
  return [
    { name: 'rubber', stuff: 'rubber', cut: true, body: lathe(rubber) },
    {
      name: 'washers',
      stuff: 'bright',
      cut: true,
      body: join(washerRing(top), washerRing(low - d.washerThickM)),
    },
    { name: 'screw', stuff: 'bright', cut: false, body: screw },
    {
      name: 'nut',
      stuff: 'brass',
      cut: false,
      body: prism(acrossFlats(6, 0.013), nutTop - d.nutM, nutTop),
    },
  ];
};
