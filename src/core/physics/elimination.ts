/**
 * In which order cells are eliminated from the equations of a step, and what each of them then touches. A network of
 * pipes and chambers is close to a tree: taken leaves first, hardly anything is filled in that was empty before.
 */
export interface Elimination {
  readonly cellCount: number;
  readonly order: Int32Array;
  /** Neighbours of the n-th cell of the order that go later: from start[n] up to start[n + 1]. */
  readonly start: Int32Array;
  readonly neighbours: Int32Array;
}

/** Plans made so far, by what joins what: a rig has a dozen shapes in a whole job. */
const made: { from: Int32Array; to: Int32Array; plan: Elimination }[] = [];
const KEPT_PLANS = 8;

/** The plan of a network, made once a shape. Nodes from cellCount up are boundaries. */
export function planElimination(cellCount: number, from: Int32Array, to: Int32Array): Elimination {
  for (const one of made)
    if (one.plan.cellCount === cellCount && same(one.from, from) && same(one.to, to)) return one.plan;
  const plan = planFor(cellCount, from, to);
  if (made.length >= KEPT_PLANS) made.shift();
  made.push({ from, to, plan });
  return plan;
}

function same(a: Int32Array, b: Int32Array): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i += 1) if (a[i] !== b[i]) return false;
  return true;
}

/** Plans the elimination by least degree, the lowest index first among equals. */
function planFor(cellCount: number, from: Int32Array, to: Int32Array): Elimination {
  const joined = new Uint8Array(cellCount * cellCount);
  const degree = new Int32Array(cellCount);
  const join = (a: number, b: number): void => {
    if (a === b || joined[a * cellCount + b] === 1) return;
    joined[a * cellCount + b] = 1;
    joined[b * cellCount + a] = 1;
    degree[a] += 1;
    degree[b] += 1;
  };
  for (let l = 0; l < from.length; l += 1) if (from[l] < cellCount && to[l] < cellCount) join(from[l], to[l]);
  const done = new Uint8Array(cellCount);
  const order = new Int32Array(cellCount);
  const start = new Int32Array(cellCount + 1);
  const neighbours: number[] = [];
  for (let n = 0; n < cellCount; n += 1) {
    const cell = leastDegree(degree, done);
    done[cell] = 1;
    order[n] = cell;
    for (let other = 0; other < cellCount; other += 1) {
      if (done[other] === 1 || joined[cell * cellCount + other] === 0) continue;
      neighbours.push(other);
      degree[other] -= 1;
    }
    for (let i = start[n]; i < neighbours.length; i += 1)
      for (let j = i + 1; j < neighbours.length; j += 1) join(neighbours[i], neighbours[j]);
    start[n + 1] = neighbours.length;
  }
  return { cellCount, order, start, neighbours: Int32Array.from(neighbours) };
}

function leastDegree(degree: Int32Array, done: Uint8Array): number {
  let best = -1;
  for (let cell = 0; cell < degree.length; cell += 1)
    if (done[cell] === 0 && (best < 0 || degree[cell] < degree[best])) best = cell;
  return best;
}
