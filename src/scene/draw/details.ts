import { Group, Mesh, type BufferGeometry } from 'three';
import type { DetailView } from '../describe/view.ts';
import { detail } from '../shape/detail.ts';
import { toGeometry } from '../shape/geometry.ts';
import type { Materials } from './materials.ts';

/** Paint, coating, scale, fluid and tools. A form is made once for each set of its sizes. */
export class Details {
  readonly root = new Group();
  readonly #geometries = new Map<string, BufferGeometry>();
  readonly #materials: Materials;

  constructor(materials: Materials) {
    this.#materials = materials;
  }

  sync(views: readonly DetailView[]): void {
    this.root.clear();
    for (const view of views) {
      const key = JSON.stringify(view.form);
      const geometry = this.#geometries.get(key) ?? toGeometry(detail(view.form));
      this.#geometries.set(key, geometry);
      const mesh = new Mesh(geometry, this.#materials.part(view.stuff, -1, view.cut, false));
      mesh.position.set(...(view.position as [number, number, number]));
      mesh.rotation.z = -2 * Math.PI * view.turns;
      mesh.updateMatrixWorld(true);
      mesh.userData = { id: view.id, part: '', cut: view.cut };
      this.root.add(mesh);
    }
  }

  dispose(): void {
    for (const geometry of this.#geometries.values()) geometry.dispose();
    this.#geometries.clear();
    this.root.clear();
  }
}
