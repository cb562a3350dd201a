import type { BufferGeometry } from 'three';

export interface Closedness {
  readonly edges: number;
  /** Edges not used once in each direction. */
  readonly open: number;
  readonly volumeM3: number;
}

/** Count edges of a drawable by position (to 10 nm) and the volume it encloses. */
export function closedness(geometry: BufferGeometry): Closedness {
  const p = geometry.getAttribute('position');
  const names = new Map<string, number>();
  const name = (i: number): number => {
    const key = [p.getX(i), p.getY(i), p.getZ(i)].map((c) => Math.round(c * 1e8)).join(',');
    const known = names.get(key);
    if (known !== undefined) return known;
    names.set(key, names.size);
    return names.size - 1;
  };
  const directed = new Map<string, number>();
  let six = 0;
  for (let t = 0; t < p.count; t += 3) {
    const ids = [0, 1, 2].map((k) => name(t + k));
    for (let k = 0; k < 3; k++) {
      const key = `${ids[k]}>${ids[(k + 1) % 3]}`;
      directed.set(key, (directed.get(key) ?? 0) + 1);
    }
    const [a, b, c] = [0, 1, 2].map((k) => [p.getX(t + k), p.getY(t + k), p.getZ(t + k)]);
    six +=
      a[0] * (b[1] * c[2] - b[2] * c[1]) +
      a[1] * (b[2] * c[0] - b[0] * c[2]) +
      a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
  let open = 0;
  for (const [key, count] of directed) {
    const [from, to] = key.split('>');
    if (count !== 1 || directed.get(`${to}>${from}`) !== 1) open++;
  }
  return { edges: directed.size / 2, open, volumeM3: six / 6 };
}
