import { B1201, type Source } from './source.ts';
import { inchM } from './sizes.ts';

/** One row of the American taper pipe thread table. Lengths and diameters in metres. */
export interface TaperThread {
  readonly threadsPerInch: number;
  readonly pitchM: number;
  /** Pitch diameter at the small end of the male thread. */
  readonly e0M: number;
  /** Pitch diameter at the face of the female thread (hand-tight plane). */
  readonly e1M: number;
  /** Hand-tight engagement. */
  readonly l1M: number;
  /** Effective male thread. */
  readonly l2M: number;
  /** Wrench make-up: three threads up to NPS 2. */
  readonly l3M: number;
  /** Male end's reach into the female when made up: L1 + L3. */
  readonly madeUpM: number;
  readonly source: Source;
}

export type ThreadNps = '3/4' | '1' | '1-1/4' | '1-1/2' | '2';

const row = (tpi: number, e0: number, e1: number, l1: number, l2: number, l3: number): TaperThread => ({
  threadsPerInch: tpi,
  pitchM: inchM(1 / tpi),
  e0M: inchM(e0),
  e1M: inchM(e1),
  l1M: inchM(l1),
  l2M: inchM(l2),
  l3M: inchM(l3),
  madeUpM: inchM(l1) + inchM(l3),
  source: B1201,
});

/** ASME B1.20.1 Table 2, inches in, metres out. */
export const taperThreads: Readonly<Record<ThreadNps, TaperThread>> = {
  '3/4': row(14, 0.96768, 0.98887, 0.339, 0.5457, 0.2143),
  '1': row(11.5, 1.21363, 1.23863, 0.4, 0.6828, 0.2609),
  '1-1/4': row(11.5, 1.55713, 1.58338, 0.42, 0.7068, 0.2609),
  '1-1/2': row(11.5, 1.79609, 1.82234, 0.42, 0.7235, 0.2609),
  '2': row(11.5, 2.26902, 2.29627, 0.436, 0.7565, 0.2609),
};

/** Thread height as a share of pitch, and taper on diameter (ASME B1.20.1). */
export const THREAD_HEIGHT_PITCHES = 0.8;
export const TAPER_ON_DIAMETER = 1 / 16;

/** Diameter over the female thread's crests at a depth below its face, m: what must be passed on the way in. */
export function crestDiameterM(nps: ThreadNps, depthM: number): number {
  const t = taperThreads[nps];
  return t.e1M - depthM * TAPER_ON_DIAMETER - THREAD_HEIGHT_PITCHES * t.pitchM;
}
