/** What the address bar means. Every view can be linked and reloaded. */
export type Address =
  | { readonly page: 'home' }
  | { readonly page: 'model' }
  | { readonly page: 'parts' }
  | { readonly page: 'watch'; readonly scenarioId: string; readonly hand: string | null }
  | { readonly page: 'practice'; readonly scenarioId: string; readonly runId: string | null }
  /** The work order of an exercise that is to be sat as an assessment. */
  | { readonly page: 'assess'; readonly scenarioId: string }
  | { readonly page: 'debrief'; readonly runId: string; readonly atS: number | null }
  /** Another workplace, which reads the rest of its address itself. */
  | { readonly page: 'desk' | 'bench'; readonly path: readonly string[] }
  | { readonly page: 'lost' };

const name = /^[A-Za-z0-9-]{1,80}$/;

/** Reads `location.hash`. Anything that is not exactly an address of ours is `lost`. */
export function readAddress(hash: string): Address {
  const parts = hash.replace(/^#?\/?/, '').split('/');
  const [page, first, second, ...rest] = parts;
  if (page === '' && parts.length === 1) return { page: 'home' };
  if (page === 'model' && parts.length === 1) return { page: 'model' };
  if (page === 'parts' && parts.length === 1) return { page: 'parts' };
  if (page === 'desk' || page === 'bench') return { page, path: parts.slice(1) };
  if (rest.length > 0 || first === undefined || !name.test(first)) return { page: 'lost' };
  if (page === 'practice' && (second === undefined || name.test(second)))
    return { page: 'practice', scenarioId: first, runId: second ?? null };
  if (page === 'assess' && second === undefined) return { page: 'assess', scenarioId: first };
  if (page === 'watch' && (second === undefined || name.test(second)))
    return { page: 'watch', scenarioId: first, hand: second ?? null };
  if (page === 'debrief' && (second === undefined || /^\d{1,6}$/.test(second)))
    return { page: 'debrief', runId: first, atS: second === undefined ? null : Number(second) };
  return { page: 'lost' };
}

/** The address of a view, as it stands after the `#`. */
export function writeAddress(address: Exclude<Address, { page: 'lost' }>): string {
  if (address.page === 'home') return '#/';
  if (address.page === 'model') return '#/model';
  if (address.page === 'parts') return '#/parts';
  if (address.page === 'assess') return `#/assess/${address.scenarioId}`;
  if (address.page === 'watch')
    return `#/watch/${address.scenarioId}${address.hand === null ? '' : `/${address.hand}`}`;
  if ('path' in address) return [`#/${address.page}`, ...address.path].join('/');
  if (address.page === 'practice')
    return `#/practice/${address.scenarioId}${address.runId === null ? '' : `/${address.runId}`}`;
  return `#/debrief/${address.runId}${address.atS === null ? '' : `/${Math.floor(address.atS)}`}`;
}
