import { spawnSync } from 'node:child_process';
import script from './scipy/reference.py?raw';
import { EQUAL_ERROR, scipyVersion, stiffCases, stiffReferences } from './stiff.ts';

/** SciPy's cheapest stiff method on one case at equal error. */
export interface ScipyBest {
  readonly method: string;
  readonly evaluations: number;
  /** Processor time of it in this run, ms; null where the figures are those committed. */
  readonly ms: number | null;
}

/** SciPy's best on every case, by name, and where the figures are from. */
export interface ScipyBests {
  readonly from: string;
  readonly best: ReadonlyMap<string, ScipyBest>;
}

interface Counted {
  readonly scipy: string;
  readonly counted: readonly {
    readonly name: string;
    readonly method: string;
    readonly rightHandSides: number;
    readonly ms: number;
    readonly worst: number;
  }[];
}

const PATIENCE_MS = 120_000;

/** Solved here and now where Python has SciPy, else as committed with the script that made the figures. */
export function readScipy(): ScipyBests {
  const live = recount();
  const best = new Map<string, ScipyBest>();
  const offer = (name: string, one: ScipyBest): void => {
    const before = best.get(name);
    if (before === undefined || one.evaluations < before.evaluations) best.set(name, one);
  };
  if (live !== null) {
    for (const { name, method, rightHandSides, ms, worst } of live.counted)
      if (worst <= EQUAL_ERROR * 1.001) offer(name, { method, evaluations: rightHandSides, ms });
    return { from: `SciPy ${live.scipy}, in this run`, best };
  }
  for (const { name, scipy } of stiffReferences)
    for (const [method, { rightHandSides }] of Object.entries(scipy))
      offer(name, { method, evaluations: rightHandSides, ms: null });
  return { from: `SciPy ${scipyVersion}, as committed`, best };
}

function recount(): Counted | null {
  const reference = { cases: stiffReferences };
  const answer = spawnSync('python3', ['-c', script, 'recount'], {
    input: JSON.stringify({ cases: stiffCases, reference }),
    encoding: 'utf8',
    timeout: PATIENCE_MS,
    maxBuffer: 1e7,
  });
  if (answer.status !== 0) return null;
  try {
    return JSON.parse(answer.stdout) as Counted;
  } catch {
    return null;
  }
}
