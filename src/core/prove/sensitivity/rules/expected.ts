import type { Heading } from '../../../scenario/index.ts';

/**
 * What a deviation must cost at least, of the heading's default weight, and why; or that it must cost nothing, and why.
 * Written from the trade before anything is judged.
 */
export type Expected =
  | { readonly heading: Heading; readonly least: number; readonly critical?: boolean; readonly why: string }
  | { readonly harmless: string };

/** Costs points under a heading. */
export const costs = (heading: Heading, least: number, why: string): Expected => ({ heading, least, why });
/** Fails the run whatever the points. */
export const critical = (why: string): Expected => ({ heading: 'holdPoints', least: 2, critical: true, why });
/** Must cost nothing. */
export const harmless = (why: string): Expected => ({ harmless: why });
