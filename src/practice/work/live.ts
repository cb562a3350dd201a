import { createSubscriber } from 'svelte/reactivity';
import type { Sitting, SittingView } from '../../session/index.ts';

/** A sitting's view as a value that screens follow. */
export function follow(sitting: Sitting): { readonly view: SittingView } {
  const listen = createSubscriber((changed) => sitting.subscribe(changed));
  return {
    get view() {
      listen();
      return sitting.view();
    },
  };
}

const tickMs = 250;
/** A page that slept (hidden tab, closed lid) does not make up for it. */
const longestTickS = 1;

/** Moves the sitting's clock by the wall clock while the page is looked at. Returns what stops it. */
export function keepTime(sitting: Sitting): () => void {
  let lastMs = performance.now();
  const timer = setInterval(() => {
    const nowMs = performance.now();
    const passedS = Math.min(longestTickS, (nowMs - lastMs) / 1000);
    lastMs = nowMs;
    if (!document.hidden) sitting.tick(passedS);
  }, tickMs);
  return () => clearInterval(timer);
}
