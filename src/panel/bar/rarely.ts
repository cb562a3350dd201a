/** Browsers refuse to have the address written many times a second. */
const leastBetweenMs = 500;

/** Has something done at once and then at most twice a second; what is asked for last is always done in the end. */
export function rarely(): { readonly ask: (work: () => void) => void; readonly drop: () => void } {
  let doneMs = -Infinity;
  let waiting: ReturnType<typeof setTimeout> | undefined;

  function ask(work: () => void): void {
    clearTimeout(waiting);
    const leftMs = doneMs + leastBetweenMs - Date.now();
    if (leftMs > 0) {
      waiting = setTimeout(() => ask(work), leftMs);
      return;
    }
    doneMs = Date.now();
    work();
  }
  return { ask, drop: () => clearTimeout(waiting) };
}
