import { Group, InstancedMesh, Matrix4, Quaternion, Vector3 } from 'three';
import { pieces } from '../../core/catalogue/index.ts';
import { shapes } from '../pieces/index.ts';
import { EYE_BELOW_ARM_M } from '../pieces/chain.ts';
import { toGeometry } from '../shape/geometry.ts';
import type { ChainView } from '../describe/view.ts';
import type { Materials } from './materials.ts';

const MOST_LINKS = 160;
const MOST_TENSIONERS = 4;

interface Spot {
  readonly at: Vector3;
  readonly along: Vector3;
}

/** Links and tensioners of both chains, each kind of part drawn in one call. */
export class Chains {
  readonly root = new Group();
  readonly #links: InstancedMesh;
  readonly #ends: InstancedMesh;
  readonly #bodies: InstancedMesh;

  constructor(materials: Materials) {
    const [link, ends, body] = shapes.chain({ teeSize: '1', mainNps: '4' });
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
    this.#ends = instanced(ends, MOST_TENSIONERS);
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
        this.#ends.setMatrixAt(t, aligned(spot, 0));
        this.#bodies.setMatrixAt(t, aligned(spot, -2 * Math.PI * turns));
        targets.tensioners.push(`${view.id}/${side}`);
        t++;
      }
    }
    this.#links.userData.targets = targets.links;
    this.#ends.userData.targets = targets.tensioners;
    this.#bodies.userData.targets = targets.tensioners;
    for (const [mesh, count] of [
      [this.#links, l],
      [this.#ends, t],
      [this.#bodies, t],
    ] as const) {
      mesh.count = count;
      mesh.instanceMatrix.needsUpdate = true;
      mesh.boundingSphere = null;
      mesh.boundingBox = null;
    }
  }

  dispose(): void {
    for (const mesh of [this.#links, this.#ends, this.#bodies]) {
      mesh.geometry.dispose();
      mesh.dispose();
    }
  }
}

/** A spot's own z along the given direction (upward along the leg), turned about it. */
function aligned({ at, along }: Spot, turnRad: number): Matrix4 {
  const turn = new Quaternion()
    .setFromUnitVectors(new Vector3(0, 0, 1), along.clone().normalize())
    .multiply(new Quaternion().setFromAxisAngle(new Vector3(0, 0, 1), turnRad));
  return new Matrix4().compose(at, turn, new Vector3(1, 1, 1));
}

/**
 * Where tensioners and links lie: from each arm along the tangent to the round they bear on, and round it below.
 * Left is away from the service (−y), right toward it. An unhooked chain hangs slack.
 */
export function layChain(view: ChainView): { left: Spot; right: Spot; links: Spot[] } {
  const sag = view.hooked ? 0 : 0.035;
  const radius = view.radiusM + sag;
  const centre = view.centreZM - sag * 0.2;
  const advance = pieces.chain.dims().advancePerTurnM;
  const rise = view.armZM - centre;
  const reach = Math.hypot(view.halfSpanM, rise);
  // Angle of the tangent point, measured from the downward direction at the centre.
  const toArm = Math.atan2(view.halfSpanM, -rise);
  const touch = reach > radius ? toArm - Math.acos(radius / reach) : toArm;
  const point = (a: number) => new Vector3(view.xM, radius * Math.sin(a), centre - radius * Math.cos(a));
  const arm = new Vector3(view.xM, view.halfSpanM, view.armZM);
  const legUp = arm.clone().sub(point(touch)).normalize();
  const mirror = (v: Vector3) => new Vector3(v.x, -v.y, v.z);
  const right: Spot = { at: arm, along: legUp };
  const left: Spot = { at: mirror(arm), along: mirror(legUp) };

  const eye = EYE_BELOW_ARM_M - Math.min(0.01, (view.leftTurns + view.rightTurns) * 0.5 * advance * 0.2);
  const pitch = pieces.chain.dims().linkPitchM;
  const straight = Math.max(0, arm.distanceTo(point(touch)) - eye);
  const half = straight + radius * touch;
  const count = Math.max(2, Math.round((2 * half) / pitch));
  const step = (2 * half) / count;
  const links: Spot[] = [];
  for (let i = 0; i < count; i++) {
    const s = -half + step * (i + 0.5);
    const side = s < 0 ? -1 : 1;
    const along = Math.abs(s);
    const onArc = along <= radius * touch;
    const a = onArc ? along / radius : touch;
    const at = onArc ? point(a) : point(touch).addScaledVector(legUp, along - radius * touch);
    const dir = onArc ? new Vector3(0, Math.cos(a), Math.sin(a)) : legUp.clone();
    links.push(side > 0 ? { at, along: dir } : { at: mirror(at), along: mirror(dir) });
  }
  return { left, right, links };
}
