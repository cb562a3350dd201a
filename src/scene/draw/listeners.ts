/** Those who want to be told of something. */
export interface Listeners<T> {
  /** @returns a way to be told no more */
  readonly add: (listener: (what: T) => void) => () => void;
  readonly tell: (what: T) => void;
  readonly clear: () => void;
}

export function listenersOf<T>(): Listeners<T> {
  const all = new Set<(what: T) => void>();
  return {
    add: (listener) => {
      all.add(listener);
      return () => void all.delete(listener);
    },
    tell: (what) => all.forEach((listener) => listener(what)),
    clear: () => all.clear(),
  };
}
