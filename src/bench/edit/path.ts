/** A place in a document, as problems and notes name it: `job.kit[3].stamped`, or `holdPoints.0.weight`. */
export function stepsOf(path: string): readonly (string | number)[] {
  return path
    .replace(/\[(\d+)\]/g, '.$1')
    .split('.')
    .filter((step) => step !== '')
    .map((step) => (/^\d+$/.test(step) ? Number(step) : step));
}

/** One way to write a place: places in lists in brackets. */
export function plainPath(path: string): string {
  return stepsOf(path).reduce<string>((whole, step) => {
    if (typeof step === 'number') return `${whole}[${step}]`;
    return whole === '' ? step : `${whole}.${step}`;
  }, '');
}

/** What stands at a place; undefined where nothing does. */
export function readAt(value: unknown, path: string): unknown {
  return stepsOf(path).reduce<unknown>((inner, step) => entryOf(inner, step), value);
}

/** The document with something else at a place; undefined takes the entry away. All else stays the very same. */
export function writeAt<T>(value: T, path: string, to: unknown): T {
  return written(value, stepsOf(path), to) as T;
}

function written(value: unknown, steps: readonly (string | number)[], to: unknown): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return to;
  const inner = written(entryOf(value, step), rest, to);
  if (Array.isArray(value)) {
    const list: readonly unknown[] = value;
    const at = Number(step);
    return inner === undefined
      ? list.filter((_, i) => i !== at)
      : list.map((one, i) => (i === at ? inner : one)).concat(at === list.length ? [inner] : []);
  }
  const entries = typeof value === 'object' && value !== null ? { ...value } : {};
  if (inner !== undefined) return { ...entries, [step]: inner };
  return Object.fromEntries(Object.entries(entries).filter(([key]) => key !== String(step)));
}

function entryOf(value: unknown, step: string | number): unknown {
  if (typeof value !== 'object' || value === null) return undefined;
  return (value as Readonly<Record<string | number, unknown>>)[step];
}
