/** Nominal pipe sizes the yard knows. A size is a name; its dimensions are in pipe.ts, npt.ts and fittings.ts. */
export const npsList = ['3/4', '1', '1-1/4', '1-1/2', '2', '3', '4', '6', '8', '10', '12'] as const;
export type Nps = (typeof npsList)[number];

/** Sizes a service tee (and the coupling it stands in) is made in. */
export const teeSizes = ['3/4', '1', '1-1/4'] as const;
export type TeeSize = (typeof teeSizes)[number];

/** Mains the method covers: NPS 1-1/4 and larger (common practice, no source). */
export const mainSizes = ['1-1/4', '1-1/2', '2', '3', '4', '6', '8', '10', '12'] as const;
export type MainNps = (typeof mainSizes)[number];

/** Exact by definition: one inch in metres. */
export const INCH_M = 0.0254;
export const inchM = (inches: number): number => inches * INCH_M;
export const mm = (millimetres: number): number => millimetres / 1000;
