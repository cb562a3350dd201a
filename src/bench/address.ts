/** Parts of an exercise, each a page of the bench. */
export const sections = [
  'order', 'workpiece', 'system', 'site', 'kit', 'faults', 'holdPoints', 'limits', 'scoring', 'notes', 'proof', 'trial',
] as const; // prettier-ignore
export type SectionId = (typeof sections)[number];

/** What the bench's part of the address bar means. */
export type BenchAddress =
  | { readonly page: 'shelf' }
  /** One part of an exercise; `field` is the place in the document that is gone to, or nothing. */
  | {
      readonly page: 'edit';
      readonly id: string;
      readonly section: SectionId;
      readonly field: string | null;
    }
  | { readonly page: 'lost' };

const exerciseName = /^[a-z0-9][a-z0-9-]{2,60}$/;
const fieldName = /^[A-Za-z0-9.[\]]{1,120}$/;

/** Reads what follows `#/bench/`. Anything that is not exactly an address of the bench is `lost`. */
export function readBench(path: readonly string[]): BenchAddress {
  const [page, id, second, third, ...rest] = path;
  if (page === undefined || (page === '' && path.length === 1)) return { page: 'shelf' };
  if (page !== 'edit' || id === undefined || !exerciseName.test(id) || rest.length > 0)
    return { page: 'lost' };
  const section = second === undefined ? 'order' : sections.find((one) => one === second);
  if (section === undefined) return { page: 'lost' };
  if (third === undefined) return { page: 'edit', id, section, field: null };
  const field = decoded(third);
  return fieldName.test(field) ? { page: 'edit', id, section, field } : { page: 'lost' };
}

/** The whole address of a view of the bench, from the `#` on. */
export function writeBench(address: Exclude<BenchAddress, { page: 'lost' }>): string {
  if (address.page === 'shelf') return '#/bench';
  const { id, section, field } = address;
  return `#/bench/edit/${id}/${section}${field === null ? '' : `/${encodeURIComponent(field)}`}`;
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
}
