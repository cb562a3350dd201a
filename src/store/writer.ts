/** The right to write one run. Only one page holds it at a time. */
export interface Writer {
  release(): void;
}

/**
 * Asks to be the one page that writes a run; null when another page is.
 * Where the browser has no locks (a page that is not served securely) everyone is let in.
 */
export async function claimWriter(runId: string): Promise<Writer | null> {
  if (!('locks' in navigator)) return { release: () => undefined };
  return new Promise((answer) => {
    void navigator.locks.request(`stillmain.run.${runId}`, { ifAvailable: true }, (lock) => {
      if (lock === null) {
        answer(null);
        return undefined;
      }
      return new Promise<void>((release) => answer({ release }));
    });
  });
}
