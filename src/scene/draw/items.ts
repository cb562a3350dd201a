import { Group, Matrix4, Mesh, Quaternion, Vector3, type BufferGeometry } from 'three';
import { shapes } from '../pieces/index.ts';
import type { Joint, Part } from '../pieces/part.ts';
import { toGeometry } from '../shape/geometry.ts';
import type { ItemView } from '../describe/view.ts';
import type { Materials } from './materials.ts';

interface DrawnPart {
  readonly part: Part;
  readonly mesh: Mesh;
}

interface DrawnItem {
  readonly group: Group;
  readonly shapeKey: string;
  readonly slant: 1 | -1;
  readonly parts: readonly DrawnPart[];
}

const shapeKeyOf = ({ kind, spec }: ItemView): string =>
  [kind, spec.teeSize, spec.mainNps, spec.variant ?? '', spec.squeeze ?? 0].join('|');

/** Neighbours on the axis are hatched in opposite directions, as on any section drawing. */
const leansLeft: ReadonlySet<string> = new Set([
  'coupling',
  'topPlug',
  'keeperPlug',
  'closingPlug',
  'saddle',
  'lowerSpool',
  'upperSpool',
  'serviceLine',
  'splitCollar',
  'socket',
  'testHead',
  'valveCap',
]);

/** Everything with a place and a turn. Shapes are made once a size and shared; poses are set in place. */
export class Items {
  readonly root = new Group();
  readonly #drawn = new Map<string, DrawnItem>();
  readonly #geometries = new Map<string, BufferGeometry>();
  readonly #materials: Materials;
  #chosen: string | null = null;

  constructor(materials: Materials) {
    this.#materials = materials;
  }

  sync(views: readonly ItemView[]): void {
    const wanted = new Set(views.map((v) => v.id));
    for (const [id, item] of this.#drawn) {
      if (wanted.has(id)) continue;
      this.root.remove(item.group);
      this.#drawn.delete(id);
    }
    for (const view of views) this.#pose(this.#drawnFor(view), view);
  }

  choose(id: string | null): void {
    if (id === this.#chosen) return;
    const before = this.#chosen;
    this.#chosen = id;
    for (const changed of [before, id]) {
      const item = changed === null ? undefined : this.#drawn.get(changed);
      if (item && changed !== null) this.#dress(item, changed);
    }
  }

  /** Shown or hidden whatever the rig says: the window, while one looks through it. */
  setHidden(kindPart: string, hidden: boolean): void {
    for (const item of this.#drawn.values()) {
      for (const { part, mesh } of item.parts) {
        if (`${item.shapeKey.split('|')[0]}.${part.name}` === kindPart) mesh.visible = !hidden;
      }
    }
  }

  dispose(): void {
    for (const geometry of this.#geometries.values()) geometry.dispose();
    this.#geometries.clear();
    this.#drawn.clear();
    this.root.clear();
  }

  #drawnFor(view: ItemView): DrawnItem {
    const shapeKey = shapeKeyOf(view);
    const known = this.#drawn.get(view.id);
    if (known?.shapeKey === shapeKey) return known;
    if (known) this.root.remove(known.group);
    const group = new Group();
    const slant = leansLeft.has(view.kind) ? -1 : 1;
    const parts = shapes[view.kind](view.spec).map((part) => {
      const key = `${shapeKey}|${part.name}`;
      const geometry = this.#geometries.get(key) ?? toGeometry(part.body);
      this.#geometries.set(key, geometry);
      const mesh = new Mesh(geometry);
      mesh.userData = { id: view.id, part: part.name, cut: part.cut, stuff: part.stuff };
      mesh.matrixAutoUpdate = false;
      group.add(mesh);
      return { part, mesh };
    });
    const item: DrawnItem = { group, shapeKey, slant, parts };
    this.#drawn.set(view.id, item);
    this.#dress(item, view.id);
    this.root.add(group);
    return item;
  }

  #dress(item: DrawnItem, id: string): void {
    for (const { part, mesh } of item.parts) {
      mesh.material = this.#materials.part(part.stuff, item.slant, part.cut, id === this.#chosen);
    }
  }

  #pose({ group, parts }: DrawnItem, view: ItemView): void {
    group.position.set(...(view.position as [number, number, number]));
    // Clockwise from above is negative about z; leaning toward +y is negative about x.
    group.rotation.set(-view.tiltRad, 0, -2 * Math.PI * view.turns, 'XYZ');
    for (const { part, mesh } of parts) {
      if (part.joint) mesh.matrix.copy(jointMatrix(part.joint, view.joints[part.joint.by] ?? 0));
    }
    group.updateMatrixWorld(true);
  }
}

function jointMatrix(joint: Joint, value: number): Matrix4 {
  const axis = new Vector3(...(joint.axis as [number, number, number])).normalize();
  if (joint.slides) return new Matrix4().setPosition(axis.multiplyScalar(value * joint.perUnit));
  const at = new Vector3(...(joint.at as [number, number, number]));
  const turn = new Quaternion().setFromAxisAngle(axis, value * joint.perUnit);
  const offset = at.clone().sub(at.clone().applyQuaternion(turn));
  return new Matrix4().compose(offset, turn, new Vector3(1, 1, 1));
}
