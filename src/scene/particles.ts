import type { FlowView, FluidView } from './describe/view.ts';
import type { Vec3 } from './shape/solid.ts';

/** What a full bore blow would show at most, particles a second. */
const MOST_PER_S = 90;
/** Flow at which half of that is reached, kg/s. */
const HALF_KG_PER_S = 1e-3;
const MOST_BUBBLES_PER_S = 24;
/** Flow from which leak-detection fluid shows a bubble: 1e-4 std cm³/s (ASTM E515). */
export const BUBBLES_FROM_MOL_PER_S = 4.4615e-9;

/** What the air of an open pipe trembles by is no stream: from a thousandth of a gram in a quarter of an hour (assumed). */
const SEEN_FROM_KG_PER_S = 1e-9;

/** Particles a second for a flow: none for none, more for more, never more than the eye can tell apart. */
export function particlesPerS(kgPerS: number): number {
  if (kgPerS < SEEN_FROM_KG_PER_S) return 0;
  const share = Math.sqrt(kgPerS / HALF_KG_PER_S);
  return (MOST_PER_S * share) / (1 + share);
}

/** Bubbles a second under leak-detection fluid: none below the leak it can show. */
export function bubblesPerS(molPerS: number): number {
  if (molPerS < BUBBLES_FROM_MOL_PER_S) return 0;
  const decades = Math.log10(molPerS / BUBBLES_FROM_MOL_PER_S);
  return Math.min(MOST_BUBBLES_PER_S, 1 + 4 * decades);
}

/** Speed at which a particle is seen to travel, m/s: faster streams look faster, within what an eye can follow. */
export const seenSpeedMPerS = (kgPerS: number): number => 0.12 + (0.5 * particlesPerS(kgPerS)) / MOST_PER_S;

export interface Dot {
  readonly at: Vec3;
  readonly sizeM: number;
  readonly kind: 'gas' | 'air' | 'bubble';
}

/** Spread that looks like chance and is the same every time. */
const scatter = (n: number): number => {
  const x = Math.sin(n * 127.1) * 43758.5453;
  return 2 * (x - Math.floor(x)) - 1;
};

const lengthOf = (path: readonly Vec3[]): number =>
  path
    .slice(1)
    .reduce((sum, p, i) => sum + Math.hypot(p[0] - path[i][0], p[1] - path[i][1], p[2] - path[i][2]), 0);

function pointAlong(path: readonly Vec3[], s: number): Vec3 {
  let left = s;
  for (let i = 0; i + 1 < path.length; i++) {
    const [a, b] = [path[i], path[i + 1]];
    const d = Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
    if (left <= d || i + 2 === path.length) {
      const t = d === 0 ? 0 : Math.min(1, left / d);
      return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t];
    }
    left -= d;
  }
  return path[path.length - 1];
}

/**
 * The dots to be seen at a moment of the picture's own time. Stateless: the n-th particle of a link, counted from one,
 * set out at n divided by its rate, so a link without flow has none and looking twice shows the same.
 */
export function dotsAt(flows: readonly FlowView[], fluid: readonly FluidView[], atS: number): Dot[] {
  const dots: Dot[] = [];
  for (const flow of flows) {
    const rate = particlesPerS(flow.kgPerS);
    if (rate <= 0) continue;
    const speed = seenSpeedMPerS(flow.kgPerS);
    const length = lengthOf(flow.path);
    const last = Math.floor(atS * rate);
    const first = Math.max(1, Math.ceil((atS - length / speed) * rate));
    for (let n = last; n >= first; n--) {
      const p = pointAlong(flow.path, (atS - n / rate) * speed);
      const kind = scatter(n + 0.5) * 0.5 + 0.5 < flow.gasFraction ? 'gas' : 'air';
      const [dy, dz] = [scatter(n) * flow.spreadM, scatter(n + 0.25) * flow.spreadM * 0.4];
      dots.push({ at: [p[0] + 0.001 * scatter(n + 0.7), p[1] + dy, p[2] + dz], sizeM: 0.0022, kind });
    }
  }
  for (const ring of fluid) {
    const rate = bubblesPerS(ring.gasMolPerS);
    if (rate <= 0) continue;
    const lives = 1.6;
    const last = Math.floor(atS * rate);
    const first = Math.max(1, Math.ceil((atS - lives) * rate));
    for (let n = last; n >= first; n--) {
      const age = (atS - n / rate) / lives;
      const a = Math.PI * (0.5 + scatter(n) * 0.5) + Math.PI / 2;
      const [cx, cy, cz] = ring.centre;
      const r = ring.radiusM + 0.001;
      dots.push({
        at: [cx + r * Math.cos(a), cy + r * Math.sin(a), cz + 0.003 * age],
        sizeM: 0.001 + 0.005 * age * (0.6 + 0.4 * Math.abs(scatter(n + 0.3))),
        kind: 'bubble',
      });
    }
  }
  return dots;
}
