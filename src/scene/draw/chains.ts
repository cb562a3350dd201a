import { Group, InstancedMesh, Matrix4, Quaternion, Vector3 } from 'three';
import { shapes } from '../pieces/index.ts';
import { toGeometry } from '../shape/geometry.ts';
import type { ChainView } from '../describe/view.ts';
import { drawnUpM, layChain, type Spot } from './layChain.ts';
import type { Materials } from './materials.ts';

const MOST_LINKS = 160;
const MOST_TENSIONERS = 4;

/** Links and tensioners of both chains, each kind of part drawn in one call. */
export class Chains {
  readonly root = new Group();
  readonly #links: InstancedMesh;
  readonly #upper: InstancedMesh;
  readonly #lower: InstancedMesh;
  readonly #bodies: InstancedMesh;

  constructor(materials: Materials) {
    const [link, upper, lower, body] = shapes.chain({ teeSize: '1', mainNps: '4' });
    const instanced = (part: typeof link, count: number) => {
      const mesh = new InstancedMesh(
        toGeometry(part.body),
        materials.part(part.stuff, 1, part.cut, false),
        count,
      );
      mesh.frustumCulled = false;
      mesh.count = 0;
      mesh.userData = { cut: part.cut, targets: [] as string[] };
      this.root.add(mesh);
      return mesh;
    };
    this.#links = instanced(link, MOST_LINKS);
    this.#upper = instanced(upper, MOST_TENSIONERS);
    this.#lower = instanced(lower, MOST_TENSIONERS);
    this.#bodies = instanced(body, MOST_TENSIONERS);
  }

  sync(views: readonly ChainView[]): void {
    const targets = { links: [] as string[], tensioners: [] as string[] };
    let [l, t] = [0, 0];
    for (const view of views) {
      const { left, right, links } = layChain(view);
      for (const spot of links) {
        if (l >= MOST_LINKS) break;
        this.#links.setMatrixAt(l, aligned(spot, (l % 2) * (Math.PI / 2) + Math.PI / 4));
        targets.links.push(view.id);
        l++;
      }
      for (const [side, spot] of [
        ['left', left],
        ['right', right],
      ] as const) {
        const turns = side === 'left' ? view.leftTurns : view.rightTurns;
        // The body turns on both screws: it runs up the one while it draws the other in.
        this.#upper.setMatrixAt(t, aligned(spot, 0));
        this.#bodies.setMatrixAt(t, aligned(risen(spot, drawnUpM(turns) / 2), -2 * Math.PI * turns));
        this.#lower.setMatrixAt(t, aligned(risen(spot, drawnUpM(turns)), 0));
        targets.tensioners.push(`${view.id}/${side}`);
        t++;
      }
    }
    this.#links.userData.targets = targets.links;
    for (const mesh of [this.#upper, this.#lower, this.#bodies]) mesh.userData.targets = targets.tensioners;
    for (const [mesh, count] of [
      [this.#links, l],
      [this.#upper, t],
      [this.#lower, t],
      [this.#bodies, t],
    ] as const) {
      mesh.count = count;
      mesh.instanceMatrix.needsUpdate = true;
      mesh.boundingSphere = null;
      mesh.boundingBox = null;
    }
  }

  dispose(): void {
    for (const mesh of [this.#links, this.#upper, this.#lower, this.#bodies]) {
      mesh.geometry.dispose();
      mesh.dispose();
    }
  }
}

const risen = ({ at, along }: Spot, byM: number): Spot => ({
  at: at.clone().addScaledVector(along, byM),
  along,
});

/** A spot's own z along the given direction (upward along the leg), turned about it. */
function aligned({ at, along }: Spot, turnRad: number): Matrix4 {
  const turn = new Quaternion()
    .setFromUnitVectors(new Vector3(0, 0, 1), along.clone().normalize())
    .multiply(new Quaternion().setFromAxisAngle(new Vector3(0, 0, 1), turnRad));
  return new Matrix4().compose(at, turn, new Vector3(1, 1, 1));
}
