import type { Heading } from '../../../scenario/index.ts';

/**
 * What a deviation must cost at least, of the heading's default weight, under one of its headings, and why; or that it must
 * cost nothing, and why. Written from the trade before anything is judged.
 */
export type Expected =
  | {
      /** Where a slip shows in more than one way, any of these is right. */
      readonly headings: readonly Heading[];
      readonly least: number;
      readonly critical?: boolean;
      readonly why: string;
    }
  | { readonly harmless: string };

/** Costs points under a heading. */
export const costs = (heading: Heading, least: number, why: string): Expected => ({
  headings: [heading],
  least,
  why,
});
/** Costs points under one of several headings, by what the slip comes to. */
export const costsIn = (headings: readonly Heading[], least: number, why: string): Expected => ({
  headings,
  least,
  why,
});
/** Fails the run whatever the points, by a finding under one of these headings. */
export const critical = (why: string, headings: readonly Heading[] = ['holdPoints']): Expected => ({
  headings,
  least: 2,
  critical: true,
  why,
});
/** Fails the run because live gas is opened to the hole: as its own finding, or as the hold point it voids. */
export const opensLive = (why: string): Expected => critical(why, ['gasControl', 'holdPoints']);
/** Must cost nothing. */
export const harmless = (why: string): Expected => ({ harmless: why });

/** What it comes to hangs on figures of the exercise that no rule of the trade fixes: such a slip is counted, not played. */
export interface Undecided {
  readonly undecided: string;
}
export const undecided = (why: string): Undecided => ({ undecided: why });
