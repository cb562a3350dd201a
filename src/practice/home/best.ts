import type { KeptRun } from '../../store/index.ts';

/** The furthest this browser has seen an exercise come to. */
export type Best = 'passed' | 'tried' | 'working';

/** The best of the runs of one exercise; null where there is none. */
export function bestOf(runs: readonly KeptRun[], scenarioId: string): Best | null {
  const own = runs.filter(({ scenario }) => scenario.id === scenarioId);
  if (own.some(({ verdict }) => verdict === 'pass')) return 'passed';
  if (own.some(({ state }) => state === 'finished')) return 'tried';
  return own.length > 0 ? 'working' : null;
}
