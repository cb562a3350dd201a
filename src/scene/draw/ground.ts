import { Group, Mesh } from 'three';
import type { CableView, SceneView } from '../describe/view.ts';
import { toGeometry } from '../shape/geometry.ts';
import type { Point2 } from '../shape/polygon.ts';
import { prism } from '../shape/prism.ts';
import { alongX } from '../shape/solid.ts';
import { sweep } from '../shape/sweep.ts';
import type { Materials } from './materials.ts';

/** Half length and half width of the hole's floor, m (assumed: 1.5 by 1.0). */
const HALF_X_M = 0.55;
const HALF_Y_M = 0.5;
const THICK_M = 0.16;

/** The hole in the ground, and the hose and cable that lie in it. */
export class Ground {
  readonly root = new Group();
  readonly #materials: Materials;
  #holeKey = '';
  #cableKey = '';
  #soil: Mesh | null = null;
  readonly #cables = new Group();

  constructor(materials: Materials) {
    this.#materials = materials;
    this.root.add(this.#cables);
  }

  sync(hole: SceneView['hole'], cables: readonly CableView[]): void {
    const holeKey = `${hole.depthM} ${hole.floorZM}`;
    if (holeKey !== this.#holeKey) {
      this.#holeKey = holeKey;
      this.#dig(hole.floorZM, hole.floorZM + hole.depthM);
    }
    const cableKey = JSON.stringify(cables);
    if (cableKey === this.#cableKey) return;
    this.#cableKey = cableKey;
    this.#clearCables();
    for (const cable of cables) {
      const mesh = new Mesh(
        toGeometry(sweep(cable.path, cable.radiusM, { facets: 14 })),
        this.#materials.part(cable.stuff, 1, false, false),
      );
      mesh.userData = { id: cable.id, part: cable.id, cut: false };
      this.#cables.add(mesh);
    }
  }

  dispose(): void {
    this.#soil?.geometry.dispose();
    this.#clearCables();
  }

  #dig(floorZM: number, gradeZM: number): void {
    if (this.#soil) {
      this.root.remove(this.#soil);
      this.#soil.geometry.dispose();
    }
    const slope = 0.05;
    const outer = HALF_Y_M + slope + THICK_M;
    // Across the main, in (y, z): floor and two walls in one piece.
    const profile: Point2[] = [
      [-outer, floorZM - THICK_M * 0.6],
      [outer, floorZM - THICK_M * 0.6],
      [outer, gradeZM],
      [HALF_Y_M + slope, gradeZM],
      [HALF_Y_M, floorZM],
      [-HALF_Y_M, floorZM],
      [-HALF_Y_M - slope, gradeZM],
      [-outer, gradeZM],
    ];
    const soil = new Mesh(
      toGeometry(alongX(prism(profile, -HALF_X_M, HALF_X_M))),
      this.#materials.part('soil', 1, true, false),
    );
    soil.userData = { id: 'hole', part: 'soil', cut: true };
    this.#soil = soil;
    this.root.add(soil);
  }

  #clearCables(): void {
    for (const child of this.#cables.children) if (child instanceof Mesh) child.geometry.dispose();
    this.#cables.clear();
  }
}
