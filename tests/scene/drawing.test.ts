import { Mesh, PerspectiveCamera, Vector4, type BufferGeometry } from 'three';
import { describe as group, expect, it } from 'vitest';
import scenario from '../../scenarios/abandon-1in-tee-on-4in-main/scenario.json';
import { pieces } from '../../src/core/catalogue/index.ts';
import { setUp, type Job, type RigState } from '../../src/core/rig/index.ts';
import { layChain } from '../../src/scene/draw/layChain.ts';
import { Items } from '../../src/scene/draw/items.ts';
import { Materials } from '../../src/scene/draw/materials.ts';
import { pickAt } from '../../src/scene/draw/picker.ts';
import { describe, gripOf, readDrag, viewNames, viewpoint } from '../../src/scene/index.ts';

const job = scenario.job as unknown as Job;

const rigged = (): RigState => {
  const rig = setUp(job);
  return {
    ...rig,
    seatRing: { piece: 'seatRing-1' },
    saddle: { ...rig.saddle, on: 'tee', piece: 'saddle' },
    stack: [
      { id: 'isolationValve', kind: 'isolationValve', jointNm: 60 },
      { id: 'rodBarrel', kind: 'rodBarrel', jointNm: 40 },
    ],
    rod: { ...rig.rod, tip: 'socket-1', travelM: 0.1 },
  };
};

const drawn = () => {
  const items = new Items(new Materials('light'));
  items.sync(describe(rigged()).items);
  return items;
};

/** Eye on the near side of the section, level with a point of the axis. */
const eyeAt = (zM: number, yM = 0): PerspectiveCamera => {
  const camera = new PerspectiveCamera(20, 1, 0.01, 10);
  camera.up.set(0, 0, 1);
  camera.position.set(2, yM, zM);
  camera.lookAt(0, yM, zM);
  camera.updateMatrixWorld(true);
  return camera;
};

const section = new Vector4(-1, 0, 0, 0);

group('a pick answers with what is seen', () => {
  it('the body of the valve when whole, its ball through the cut', () => {
    const items = drawn();
    const valveZ = describe(rigged()).marks.ballZM ?? 0;
    const whole = pickAt(0, 0, eyeAt(valveZ, 0.03), [items.root], null);
    expect(whole).toMatchObject({ id: 'isolationValve', part: 'body' });
    const cut = pickAt(0, 0, eyeAt(valveZ, 0.05), [items.root], section);
    expect(cut).toMatchObject({ id: 'isolationValve', part: 'ball' });
  });

  it('the rod, drawn whole, even before the section plane', () => {
    const z = (describe(rigged()).marks.ballZM ?? 0) + 0.2;
    expect(pickAt(0, 0, eyeAt(z), [drawn().root], section)).toMatchObject({ id: 'rod', part: 'outer' });
  });

  it('nothing beside the rig', () => {
    expect(pickAt(0, 0, eyeAt(0.5, 1.5), [drawn().root], section)).toBeNull();
  });
});

group('the picture keeps house', () => {
  it('shapes are made once, kept while poses change, and given back when it is done', () => {
    const items = drawn();
    const geometries = (): BufferGeometry[] => {
      const all: BufferGeometry[] = [];
      items.root.traverse((o) => {
        if (o instanceof Mesh) all.push(o.geometry);
      });
      return all;
    };
    const before = geometries();
    const moved = { ...rigged(), valve: { openRad: 1 } };
    items.sync(describe(moved).items);
    expect(geometries()).toEqual(before);
    let given = 0;
    for (const geometry of new Set(before)) geometry.addEventListener('dispose', () => given++);
    items.dispose();
    expect(given).toBe(new Set(before).size);
    expect(items.root.children).toHaveLength(0);
  });

  it('what has left the rig leaves the picture', () => {
    const items = drawn();
    const before = items.root.children.length;
    items.sync(describe({ ...rigged(), stack: [] }).items);
    // valve, barrel, rod and socket
    expect(items.root.children.length).toBe(before - 4);
  });

  it('a whole rig keeps within 80 calls and 80,000 triangles', () => {
    let [calls, triangles] = [0, 0];
    drawn().root.traverse((o) => {
      if (!(o instanceof Mesh)) return;
      calls++;
      triangles += o.geometry.getAttribute('position').count / 3;
    });
    expect(calls).toBeLessThan(60);
    expect(triangles).toBeLessThan(60000);
  });
});

group('chains', () => {
  const chained = (mainNps: Job['workpiece']['mainNps'], seat: 'tee' | 'coupling'): RigState => {
    const rig = rigged();
    const hung = {
      piece: 'chain-a',
      hooked: true,
      left: 0.3,
      right: 0.3,
      settledM: 0,
      unsettledM: 0,
      taps: 0,
    };
    return {
      ...rig,
      job: { ...job, workpiece: { ...job.workpiece, mainNps } },
      saddle: { ...rig.saddle, on: seat, cradles: ['a', 'b'] },
      chains: [hung, { ...hung, piece: 'chain-b' }],
    };
  };

  it.each(['2', '3', '4', '6', '8', '12'] as const)(
    'run round an NPS %s main, and never through it',
    (mainNps) => {
      for (const seat of ['tee', 'coupling'] as const) {
        for (const view of describe(chained(mainNps, seat)).chains) {
          const { links, left, right } = layChain(view);
          expect(links.length).toBeGreaterThan(4);
          const r = pieces.main.dims(mainNps).odM / 2;
          for (const { at } of links) expect(Math.hypot(at.y, at.z + r)).toBeGreaterThan(r);
          expect(left.at.y).toBeCloseTo(-right.at.y, 9);
          expect(Math.min(...links.map((l) => l.at.z))).toBeLessThan(-2 * r);
        }
      }
    },
  );
});

group('views and hands', () => {
  it.each(viewNames)('%s looks at the rig from the open side of the section', (name) => {
    const view = describe(rigged());
    const place = viewpoint(name, view);
    expect(place.tallM).toBeGreaterThan(0.02);
    if (place.as === 'section') expect(place.eye[0]).toBeGreaterThan(0);
    else expect(place.eye[2]).toBeGreaterThan(0.9 * Math.hypot(...place.eye));
  });

  it('turns with the section plane', () => {
    const { eye } = viewpoint('stack', describe(rigged()), Math.PI / 2);
    const straight = viewpoint('stack', describe(rigged())).eye;
    expect(eye[1]).toBeCloseTo(straight[0], 9);
    expect(eye[0]).toBeCloseTo(-straight[1], 9);
  });

  it('a drag sideways turns a wrench, a drag down lowers the rod; the main cannot be taken hold of', () => {
    expect(gripOf('main', 'pipe')).toBeNull();
    expect(readDrag('turn', null, 420, 0, 0.001)).toEqual({ kind: 'turn', amount: 1 });
    expect(readDrag('slideOrTurn', 'slide', 30, 50, 0.001)).toEqual({ kind: 'slide', amount: 0.05 });
    expect(readDrag('slideOrTurn', 'turn', 210, 50, 0.001)).toEqual({ kind: 'turn', amount: 0.5 });
    expect(readDrag('slideOrTurn', null, 30, 50, 0.001)).toBeNull();
  });
});
