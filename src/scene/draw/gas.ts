import {
  Color,
  CylinderGeometry,
  Group,
  InstancedBufferAttribute,
  InstancedMesh,
  Matrix4,
  Quaternion,
  Vector3,
} from 'three';
import type { GasView } from '../describe/view.ts';
import { gasColour } from '../pressureScale.ts';
import type { Materials } from './materials.ts';
import { linear } from './materials.ts';

const MOST_BODIES = 24;

/** All bodies of gas in one call: unit cylinders laid between their ends. */
export class GasBodies {
  readonly root = new Group();
  readonly #mesh: InstancedMesh;
  readonly #materials: Materials;
  #views: readonly GasView[] = [];

  constructor(materials: Materials) {
    this.#materials = materials;
    const unit = new CylinderGeometry(1, 1, 1, 40, 1);
    this.#mesh = new InstancedMesh(unit, materials.gas, MOST_BODIES);
    this.#mesh.instanceColor = new InstancedBufferAttribute(new Float32Array(MOST_BODIES * 3), 3);
    this.#mesh.frustumCulled = false;
    this.#mesh.count = 0;
    this.root.add(this.#mesh);
  }

  sync(views: readonly GasView[]): void {
    this.#views = views.slice(0, MOST_BODIES);
    const up = new Vector3(0, 1, 0);
    const colour = new Color();
    this.#views.forEach((view, i) => {
      const from = new Vector3(...(view.from as [number, number, number]));
      const along = new Vector3(...(view.to as [number, number, number])).sub(from);
      const length = along.length();
      const turn = new Quaternion().setFromUnitVectors(up, along.clone().divideScalar(length));
      const middle = from.addScaledVector(along, 0.5);
      const matrix = new Matrix4().compose(middle, turn, new Vector3(view.radiusM, length, view.radiusM));
      this.#mesh.setMatrixAt(i, matrix);
      this.#mesh.setColorAt(
        i,
        colour.copy(linear(gasColour(view.gaugePa, view.gasFraction, this.#materials.theme))),
      );
    });
    this.#mesh.count = this.#views.length;
    this.#mesh.instanceMatrix.needsUpdate = true;
    if (this.#mesh.instanceColor) this.#mesh.instanceColor.needsUpdate = true;
  }

  /** Colours again after a change of theme. */
  repaint(): void {
    this.sync(this.#views);
  }

  dispose(): void {
    this.#mesh.geometry.dispose();
    this.#mesh.dispose();
  }
}
