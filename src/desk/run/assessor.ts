/** Who sits at this desk, so that it need not be typed for every run. Kept in this browser only. */
export interface Assessor {
  readonly name: string;
  readonly role: string;
}

const place = 'stillmain.desk.assessor';

/** The assessor of the last decision made here; empty where there was none or the browser keeps nothing. */
export function rememberedAssessor(): Assessor {
  try {
    const kept = JSON.parse(localStorage.getItem(place) ?? '{}') as Partial<Record<string, unknown>>;
    return { name: textOf(kept.name), role: textOf(kept.role) };
  } catch {
    return { name: '', role: '' };
  }
}

/** Remembers who decided. A browser that keeps nothing forgets it, and asks again. */
export function rememberAssessor(assessor: Assessor): void {
  try {
    localStorage.setItem(place, JSON.stringify(assessor));
  } catch {
    return;
  }
}

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');
