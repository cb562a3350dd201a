import type { PassingSound } from './sounds.ts';

/** How a passing sound is made of noise: band's middle and width (Q), how long a stroke rings and how far apart they are. */
interface Burst {
  readonly pitchHz: number;
  readonly width: number;
  readonly lastsS: number;
  readonly apartS: number;
}

/** Made by ear; nothing is recorded. */
export const burstOf: Readonly<Record<PassingSound, Burst>> = {
  ratchet: { pitchHz: 3200, width: 6, lastsS: 0.03, apartS: 0.06 },
  'ratchet.hard': { pitchHz: 2300, width: 9, lastsS: 0.05, apartS: 0.09 },
  knock: { pitchHz: 900, width: 12, lastsS: 0.18, apartS: 0.32 },
  detent: { pitchHz: 4200, width: 10, lastsS: 0.04, apartS: 0.1 },
  thread: { pitchHz: 1400, width: 3, lastsS: 0.12, apartS: 0.2 },
  skip: { pitchHz: 2000, width: 14, lastsS: 0.06, apartS: 0.14 },
  free: { pitchHz: 700, width: 6, lastsS: 0.2, apartS: 0.2 },
  handle: { pitchHz: 600, width: 4, lastsS: 0.15, apartS: 0.2 },
  pump: { pitchHz: 500, width: 1.5, lastsS: 0.35, apartS: 0.45 },
  touch: { pitchHz: 1700, width: 16, lastsS: 0.12, apartS: 0.25 },
  slide: { pitchHz: 1100, width: 1, lastsS: 0.4, apartS: 0.4 },
  bang: { pitchHz: 300, width: 3, lastsS: 0.6, apartS: 0.6 },
  saw: { pitchHz: 2600, width: 2, lastsS: 0.22, apartS: 0.3 },
  tear: { pitchHz: 1500, width: 1, lastsS: 0.25, apartS: 0.3 },
};
