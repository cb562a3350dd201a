import { Group, Mesh } from 'three';
import type { CableView, SceneView } from '../describe/view.ts';
import { toGeometry } from '../shape/geometry.ts';
import type { Stuff } from '../pieces/part.ts';
import { pit } from '../shape/pit.ts';
import type { Solid } from '../shape/solid.ts';
import { sweep } from '../shape/sweep.ts';
import { ladder, shoring } from '../shape/timber.ts';
import type { Materials } from './materials.ts';

/** Half length and half width of the hole's floor (assumed: 1.5 by 1.0), how far its sides lean, the soil shown, m. */
const WALLS = { halfXM: 0.75, halfYM: 0.5, slopeM: 0.05 };
const WALL_M = 0.2;

/** The hole in the ground, and the hose and cable that lie in it. */
export class Ground {
  readonly root = new Group();
  readonly #materials: Materials;
  #holeKey = '';
  #cableKey = '';
  readonly #hole = new Group();
  readonly #cables = new Group();

  constructor(materials: Materials) {
    this.#materials = materials;
    this.root.add(this.#hole, this.#cables);
  }

  sync(hole: SceneView['hole'], cables: readonly CableView[]): void {
    const holeKey = JSON.stringify(hole);
    if (holeKey !== this.#holeKey) {
      this.#holeKey = holeKey;
      this.#dig(hole);
    }
    const cableKey = JSON.stringify(cables);
    if (cableKey === this.#cableKey) return;
    this.#cableKey = cableKey;
    clear(this.#cables);
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
    clear(this.#hole);
    clear(this.#cables);
  }

  #dig(hole: SceneView['hole']): void {
    clear(this.#hole);
    const walls = { ...WALLS, floorZM: hole.floorZM, gradeZM: hole.floorZM + hole.depthM };
    this.#add('soil', 'soil', true, pit({ ...walls, wallM: WALL_M, main: hole.main, service: hole.service }));
    if (hole.ladder) this.#add('ladder', 'wood', false, ladder(walls));
    if (hole.shoring) this.#add('shoring', 'wood', true, shoring(walls));
  }

  #add(part: string, stuff: Stuff, cut: boolean, body: Solid): void {
    const mesh = new Mesh(toGeometry(body), this.#materials.part(stuff, 1, cut, false));
    mesh.userData = { id: 'hole', part, cut, stuff };
    this.#hole.add(mesh);
  }
}

function clear(group: Group): void {
  for (const child of group.children) if (child instanceof Mesh) child.geometry.dispose();
  group.clear();
}
