import type { Scenario } from '../../core/scenario/index.ts';
import { spoken } from '../../text/index.ts';

/** Ways to fetch what exercises tell in other languages, by the place of the file. */
export type Briefs = Readonly<Record<string, () => Promise<string>>>;

/**
 * What an exercise tells of the job before it is begun, in the language of the moment: fetched for this exercise alone.
 * One that nobody has put into that language speaks as it was written.
 */
export function briefOf({ id, brief }: Scenario, briefs: Briefs): string | Promise<string> {
  const file = `/${id}/brief.${spoken()}.txt`;
  const place = Object.keys(briefs).find((one) => one.endsWith(file));
  return place === undefined ? brief : briefs[place]();
}
