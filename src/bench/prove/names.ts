import type { Scenario } from '../../core/scenario/index.ts';
import { capital, words } from '../../text/index.ts';

/** What a fault of a proof is called; a proof knows it by its name in the document. */
export function faultNameOf(id: string, { faults }: Scenario): string {
  const known = faults.find(({ fault }) => fault === id);
  return known === undefined ? id : capital(words().conditions[known.fault]);
}

/** A finding by its title, a hold point by its letter and number. */
export function caughtByName(id: string): string {
  const { findings } = words();
  const found = Object.entries(findings).find(([finding]) => finding === id);
  return found === undefined ? id : found[1].title;
}
