/** Which rows of a long table are really in the page. */
export interface Window {
  readonly from: number;
  /** One past the last. */
  readonly to: number;
}

/** Rows kept ready above and below what is seen. */
const spareRows = 8;

/** The rows of a table of `count` rows, each `rowPx` high, that are seen at this scroll, with some to spare. */
export function windowOf(scrollPx: number, heightPx: number, rowPx: number, count: number): Window {
  const first = Math.floor(scrollPx / rowPx);
  const to = Math.min(count, first + Math.ceil(heightPx / rowPx) + spareRows);
  return { from: Math.max(0, Math.min(first - spareRows, to)), to };
}

/** Scroll that brings a row into view with the least movement, px. */
export function scrollTo(row: number, scrollPx: number, heightPx: number, rowPx: number): number {
  const top = row * rowPx;
  if (top < scrollPx) return top;
  return top + rowPx > scrollPx + heightPx ? top + rowPx - heightPx : scrollPx;
}
