import { Mesh, PerspectiveCamera, Vector3, Vector4 } from 'three';
import { beforeAll, describe, expect, it } from 'vitest';
import { Chains } from '../../src/scene/draw/chains.ts';
import { Ground } from '../../src/scene/draw/ground.ts';
import { Items } from '../../src/scene/draw/items.ts';
import { Materials } from '../../src/scene/draw/materials.ts';
import { pickAt, type Picked } from '../../src/scene/draw/picker.ts';
import { viewsOfMoments } from './views/moments.ts';

/** Chance that is the same every time (a linear congruence; its quality does not matter here). */
function chances(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) % 4294967296;
    return state / 4294967296;
  };
}

interface Shot {
  readonly picked: Picked;
  readonly beforeM: number;
  readonly cut: boolean;
}

describe('a pick', () => {
  const materials = new Materials('light');
  const [items, chains, ground] = [new Items(materials), new Chains(materials), new Ground(materials)];
  const roots = [items.root, chains.root, ground.root];
  beforeAll(() => {
    const view = viewsOfMoments().get('plug-drawn');
    if (!view) throw new Error('The job never came to it.');
    items.sync(view.items);
    chains.sync(view.chains);
    ground.sync(view.hole, view.cables);
    for (const root of roots) root.updateMatrixWorld(true);
  });

  const isCut = ({ id, part }: Picked): boolean => {
    let cut = id.startsWith('chain');
    for (const root of roots) {
      root.traverse((o) => {
        const data = o.userData as { id?: string; part?: string; cut?: boolean };
        if (o instanceof Mesh && data.id === id && data.part === part) cut = data.cut === true;
      });
    }
    return cut;
  };

  /** Looks from all round at the rig, the section laid anyhow, and says how far before the plane each hit lies. */
  function shoot(count: number, heeded: boolean): Shot[] {
    const chance = chances(7);
    const shots: Shot[] = [];
    for (let n = 0; n < count; n++) {
      const turn = 2 * Math.PI * chance();
      const plane = new Vector4(-Math.cos(turn), -Math.sin(turn), 0, 0.06 * (chance() - 0.5));
      const eye = turn + 1.6 * (chance() - 0.5);
      const camera = new PerspectiveCamera(26, 1, 0.01, 10);
      camera.up.set(0, 0, 1);
      camera.position.set(1.6 * Math.cos(eye), 1.6 * Math.sin(eye), 0.1 + 0.5 * chance());
      camera.lookAt(0, 0, 0.05 + 0.4 * chance());
      camera.updateMatrixWorld(true);
      const [x, y] = [0.4 * (chance() - 0.5), 0.4 * (chance() - 0.5)];
      const picked = pickAt(x, y, camera, roots, heeded ? plane : null);
      if (!picked) continue;
      const way = new Vector3(x, y, 0.5).unproject(camera).sub(camera.position).normalize();
      const at = camera.position.clone().addScaledVector(way, picked.distanceM);
      const depth = plane.x * at.x + plane.y * at.y + plane.z * at.z + plane.w;
      shots.push({ picked, beforeM: -depth, cut: isCut(picked) });
    }
    return shots;
  }

  it('never answers with what the section took away', () => {
    const shots = shoot(150, true);
    expect(shots.length).toBeGreaterThan(60);
    for (const { picked, beforeM, cut } of shots) {
      if (cut) expect(beforeM, `${picked.id}/${picked.part}`).toBeLessThan(1e-9);
    }
  });

  it('would have, were the section not heeded', () => {
    expect(shoot(60, false).filter(({ cut, beforeM }) => cut && beforeM > 0.001).length).toBeGreaterThan(10);
  });
});
