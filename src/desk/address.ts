/** What the desk's part of the address bar means. */
export type DeskAddress =
  | { readonly page: 'runs' }
  | { readonly page: 'run'; readonly digest: string; readonly atS: number | null }
  | { readonly page: 'report'; readonly digest: string }
  | { readonly page: 'group' }
  | { readonly page: 'rejudge' }
  | { readonly page: 'keeping' }
  | { readonly page: 'proof' }
  | { readonly page: 'lost' };

const alone = ['group', 'rejudge', 'keeping', 'proof'] as const;
const digestPattern = /^[0-9a-f]{64}$/;

/** Reads what follows `#/desk/`. Anything that is not exactly an address of the desk is `lost`. */
export function readDesk(path: readonly string[]): DeskAddress {
  const [page, first, second] = path;
  if (page === undefined || (page === '' && path.length === 1)) return { page: 'runs' };
  const lone = alone.find((name) => name === page);
  if (lone !== undefined && path.length === 1) return { page: lone };
  if (first === undefined || !digestPattern.test(first) || path.length > 3) return { page: 'lost' };
  if (page === 'report' && path.length === 2) return { page, digest: first };
  if (page === 'run' && (second === undefined || /^\d{1,6}$/.test(second)))
    return { page, digest: first, atS: second === undefined ? null : Number(second) };
  return { page: 'lost' };
}

/** The whole address of a view of the desk, from the `#` on. */
export function writeDesk(address: Exclude<DeskAddress, { page: 'lost' }>): string {
  if (address.page === 'runs') return '#/desk';
  if (address.page === 'run')
    return `#/desk/run/${address.digest}${address.atS === null ? '' : `/${Math.floor(address.atS)}`}`;
  if (address.page === 'report') return `#/desk/report/${address.digest}`;
  return `#/desk/${address.page}`;
}
