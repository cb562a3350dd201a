import { addPoint, addQuad, empty, type Solid } from './solid.ts';

export interface HelixSize {
  readonly lowM: number;
  readonly highM: number;
  readonly pitchM: number;
  /** Radius of the crests at a height, m, and how deep the groove between them is. */
  readonly crestM: (z: number) => number;
  readonly grooveM: number;
  /** Right-hand unless said otherwise. */
  readonly leftHand?: boolean;
  readonly facets?: number;
}

/**
 * A threaded bar along z, closed flat at both ends: one ridge that climbs a pitch a turn, with a start and a runout as
 * a cut thread has.
 */
export function helix(size: HelixSize): Solid {
  const { lowM, highM, pitchM, crestM, grooveM } = size;
  const facets = size.facets ?? 24;
  const turns = Math.max(2, Math.floor((highM - lowM) / pitchM + 1e-9));
  const end = (turns - 1) * facets;
  const solid = empty();
  const at = (j: number, r: number, z: number): number => {
    const a = (2 * Math.PI * j) / facets;
    return addPoint(solid, r * Math.cos(a), r * Math.sin(a), z);
  };
  const climb = (j: number) => lowM + (pitchM * j) / facets;
  const rootAt = (z: number) => crestM(z) - grooveM;
  const root = Array.from({ length: end + facets + 1 }, (_, j) => at(j, rootAt(climb(j)), climb(j)));
  const crest = Array.from({ length: end + 1 }, (_, j) => {
    const z = climb(j) + pitchM / 2;
    return at(j, crestM(z), z);
  });
  const bottom = [root[0], ...Array.from({ length: facets - 1 }, (_, k) => at(k + 1, rootAt(lowM), lowM))];
  const topZ = climb(end + facets);
  const top = [
    root[end + facets],
    ...Array.from({ length: facets - 1 }, (_, k) => at(k + 1, rootAt(topZ), topZ)),
  ];
  for (let k = 0; k < facets; k++) {
    const l = (k + 1) % facets;
    addQuad(solid, bottom[k], bottom[l], root[k + 1], root[k]);
    addQuad(solid, root[end + k], root[end + k + 1], top[l], top[k]);
  }
  for (let j = 0; j < end; j++) {
    addQuad(solid, root[j], root[j + 1], crest[j + 1], crest[j]);
    addQuad(solid, crest[j], crest[j + 1], root[j + 1 + facets], root[j + facets]);
  }
  solid.corners.push(root[0], crest[0], root[facets]);
  solid.corners.push(root[end], root[end + facets], crest[end]);
  const rim = Array.from({ length: facets }, (_, k) => at(k, rootAt(topZ), Math.max(highM, topZ + 1e-5)));
  const low = addPoint(solid, 0, 0, lowM);
  const high = addPoint(solid, 0, 0, Math.max(highM, topZ + 1e-5));
  for (let k = 0; k < facets; k++) {
    const l = (k + 1) % facets;
    addQuad(solid, top[k], top[l], rim[l], rim[k]);
    solid.corners.push(low, bottom[l], bottom[k], high, rim[k], rim[l]);
  }
  return size.leftHand ? mirrored(solid) : solid;
}

/** Seen in a mirror across the x axis, its faces turned to stay outward. */
function mirrored({ points, corners }: Solid): Solid {
  return {
    points: points.map((c, i) => (i % 3 === 1 ? -c : c)),
    corners: corners.map((_, i) => corners[i % 3 === 1 ? i + 1 : i % 3 === 2 ? i - 1 : i]),
  };
}
