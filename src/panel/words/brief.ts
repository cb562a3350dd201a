import type { Scenario } from '../../core/scenario/index.ts';
import { spoken } from '../../text/index.ts';

const inOtherLanguages = import.meta.glob<string>('../../../scenarios/*/brief.*.txt', {
  query: '?raw',
  import: 'default',
});

/**
 * What an exercise tells of the job before it is begun, in the language of the moment: fetched for this exercise alone.
 * One that nobody has put into that language speaks as it was written.
 */
export function briefOf({ id, brief }: Scenario): string | Promise<string> {
  const fetchBrief = inOtherLanguages[`../../../scenarios/${id}/brief.${spoken()}.txt`];
  return fetchBrief === undefined ? brief : fetchBrief();
}
