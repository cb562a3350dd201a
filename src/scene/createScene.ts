import { Color, Scene, Vector3, WebGLRenderer } from 'three';
import type { SceneView } from './describe/view.ts';
import { Turntable } from './draw/camera.ts';
import { Chains } from './draw/chains.ts';
import { Details } from './draw/details.ts';
import { Dots } from './draw/dots.ts';
import { fenceAfter } from './draw/fence.ts';
import { GasBodies } from './draw/gas.ts';
import { listen, targetOf } from './draw/gestures.ts';
import { Ground } from './draw/ground.ts';
import { handlesIn } from './draw/handles.ts';
import { Items } from './draw/items.ts';
import { linear, Materials } from './draw/materials.ts';
import { paceOf } from './draw/pace.ts';
import { pickAt, type Picked } from './draw/picker.ts';
import { listenersOf } from './draw/listeners.ts';
import type { Intent } from './intents.ts';
import type { RigScene, SceneOptions, Stir } from './rigScene.ts';
import { shareCorners } from './shape/geometry.ts';
import { dotsAt } from './particles.ts';
import { visibleIn } from './visible.ts';
import { viewpoint, type ViewName, type Viewpoint } from './views.ts';

/** Down the bore there is no light but the lamp. */
const DARK = new Color(0x050608);
/** Frames slower than this on the first try make the picture plain, ms. */
const PLAIN_ABOVE_MS = 24;
/** Frames timed before the tier is settled. */
const MEASURES = 4;
/** The eye goes no farther at a time than in this, s. */
const LONGEST_STEP_S = 0.25;
const HATCH_PIXELS = 7;
const HATCH_BASE_M = 0.0005;

/**
 * Draws a described rig on a canvas. It never advances a run: it is given views and gives back intents.
 * Nothing is drawn unless something changed or gas is seen to move. Throws where the canvas has no WebGL 2.
 */
export function createScene(canvas: HTMLCanvasElement, options: SceneOptions = {}): RigScene {
  const renderer = new WebGLRenderer({ canvas, antialias: false, powerPreference: 'low-power' });
  renderer.info.autoReset = true;
  const materials = new Materials(options.theme ?? 'light');
  const scene = new Scene();
  const items = new Items(materials);
  const chains = new Chains(materials);
  const ground = new Ground(materials);
  const details = new Details(materials);
  const gas = new GasBodies(materials);
  const dots = new Dots(materials);
  scene.add(ground.root, items.root, chains.root, details.root, gas.root, dots.points);

  let wanted = options.tier ?? 'auto';
  let tier: 'full' | 'plain' = wanted === 'full' ? 'full' : 'plain';
  let still = options.reducedMotion ?? false;
  let cut = true;
  let as: Viewpoint['as'] = 'section';
  let taken = false;
  let framed = '';
  let visible = '';
  let view: SceneView | null = null;
  let viewName: ViewName = 'followTheWork';
  let sectionRad = 0;
  let frames = 0;
  let measured = 0;
  let shownDots = 0;
  let lastFrameMs = 0;
  let lastS = 0;
  let clockS = 0;
  let size = { width: 1, height: 1, covered: 0 };
  const listeners = listenersOf<Intent>();
  const frameListeners = listenersOf<Stir>();
  let anew = true;
  const lostListeners = listenersOf<boolean>();
  const eyeListeners = listenersOf<boolean>();
  const heldListeners = listenersOf<string | null>();
  let held = false;
  const take = (now: boolean) => {
    if (now === taken) return;
    taken = now;
    eyeListeners.tell(now);
  };
  const turntable = new Turntable(
    canvas,
    () => invalidate(),
    () => take(true),
  );
  const isCut = () => cut && as === 'section';

  const settle = () => {
    const lamp = as === 'sightCap';
    materials.draw({ cut: isCut(), lamp, full: tier === 'full' });
    shareCorners(scene, tier === 'plain');
    gas.root.visible = isCut();
    ground.root.visible = !lamp;
    scene.background = lamp ? DARK : linear(materials.palette.paper);
    items.setHidden('sightCap.window', lamp);
    invalidate();
  };

  let laid = '';
  /** Gives the canvas as many pixels as it is drawn with. It comes out empty: only before a frame. */
  const lay = (share: number) => {
    const ratio = share * (tier === 'full' ? Math.min(2, Math.max(1.5, devicePixelRatio)) : 1);
    const key = [ratio, size.width, size.height].join();
    if (key === laid) return;
    laid = key;
    renderer.setPixelRatio(ratio);
    renderer.setSize(size.width, size.height, false);
  };

  const isFlowing = (): boolean =>
    view !== null && (view.flows.length > 0 || view.fluid.some((f) => f.gasMolPerS > 0));

  const draw = (nowMs: number, share: number) => {
    lay(share);
    const nowS = nowMs / 1000;
    const passedS = Math.min(LONGEST_STEP_S, Math.max(0, nowS - lastS));
    lastS = nowS;
    const moving = turntable.advance(passedS);
    const flowing = isFlowing();
    if (flowing && !still) clockS += passedS;
    const seen = view
      ? dotsAt(isCut() ? view.flows : outdoors(view), view.fluid, still ? STILL_AT_S : clockS)
      : [];
    shownDots = seen.length;
    dots.show(seen);
    const heightPx = size.height * renderer.getPixelRatio();
    const pixelM = turntable.metresPerPixel(size.height);
    materials.shared.spacingM.value = hatchSpacingM(pixelM);
    materials.shared.pixelsPerM.value = heightPx / 2 / Math.tan((turntable.camera.fov * Math.PI) / 360);
    const before = performance.now();
    renderer.render(scene, turntable.camera);
    frames++;
    if (wanted === 'auto' && measured < MEASURES && view !== null) measure(before);
    else lastFrameMs = performance.now() - before;
    const stir = moving ? 'moving' : anew ? 'drawn' : 'same';
    anew = moving;
    frameListeners.tell(stir);
    if (moving || (flowing && !still)) pace.ask();
  };

  const pace = paceOf({
    draw,
    mark: () => fenceAfter(renderer.getContext() as WebGL2RenderingContext),
    isDear: () => tier === 'plain',
  });
  const pressed = ['pointerdown', 'pointerup', 'keydown', 'keyup'] as const;
  for (const press of pressed) window.addEventListener(press, pace.pressed, { capture: true, passive: true });

  /**
   * The first frame of a tier compiles; the second is timed to its end. A fast plain frame earns a try of the full
   * tier, which stays only if it is fast as well: a quick processor may draw the one and not the other.
   */
  const measure = (before: number) => {
    renderer.getContext().readPixels(0, 0, 1, 1, 0x1908, 0x1401, new Uint8Array(4));
    lastFrameMs = performance.now() - before;
    measured++;
    if (measured % 2 === 1) {
      invalidate();
      return;
    }
    const isFast = lastFrameMs < PLAIN_ABOVE_MS;
    if (!isFast) measured = MEASURES;
    const next = isFast ? 'full' : 'plain';
    if (next === tier) return;
    tier = next;
    settle();
  };

  function invalidate(): void {
    if (!anew) frameListeners.tell('asked');
    anew = true;
    pace.ask();
  }

  const place = (clientX: number, clientY: number): Picked | null => {
    const box = canvas.getBoundingClientRect();
    return lookAt(((clientX - box.left) / box.width) * 2 - 1, 1 - ((clientY - box.top) / box.height) * 2);
  };

  const lookAt = (x: number, y: number): Picked | null => {
    const plane = isCut() ? materials.shared.plane.value : null;
    return pickAt(x, y, turntable.camera, [items.root, chains.root, ground.root], plane);
  };

  const kindOf = (id: string): string =>
    view?.items.find((i) => i.id === id)?.kind ?? (view?.chains.some((c) => c.id === id) ? 'chain' : '');

  const nudge = (key: string, shift = false): boolean => {
    const step = stepOf(key, shift);
    if (step) {
      take(true);
      turntable.nudge(step);
    }
    return step !== null;
  };

  const stopListening = listen(canvas, {
    pick: place,
    kindOf,
    metresPerPixel: () => turntable.metresPerPixel(size.height),
    emit: listeners.tell,
    hold: (target) => {
      held = target !== null;
      heldListeners.tell(target);
      goTo(true);
    },
  });

  /** Go where the chosen view looks, unless it is looked at already, or the user has turned the picture or holds a part. */
  const goTo = (smooth: boolean) => {
    if (!view || taken || held) return;
    const to = viewpoint(viewName, view, sectionRad);
    const key = JSON.stringify([to, size]);
    if (key === framed) return;
    framed = key;
    // Into the bore and out of it one does not travel: one looks through the window or one does not.
    const through = to.as === 'sightCap' || as === 'sightCap';
    as = to.as;
    turntable.goTo(to, smooth && !still && !through);
    settle();
  };

  // The driver may take the picture away and give it back; what was uploaded is uploaded again.
  const lose = () => lostListeners.tell(true);
  const regain = () => {
    lostListeners.tell(false);
    settle();
  };
  canvas.addEventListener('webglcontextlost', lose);
  canvas.addEventListener('webglcontextrestored', regain);
  settle();
  return {
    sync: (next) => {
      const first = view === null;
      const seen = visibleIn(next);
      view = next;
      goTo(!first);
      if (seen === visible) return;
      visible = seen;
      items.sync(next.items);
      chains.sync(next.chains);
      details.sync(next.details);
      ground.sync(next.hole, next.cables);
      gas.sync(next.gas);
      shareCorners(scene, tier === 'plain');
      items.setHidden('sightCap.window', as === 'sightCap');
      invalidate();
    },
    setView: (name) => {
      viewName = name;
      framed = '';
      take(false);
      goTo(true);
    },
    setSection: (offsetM, angleRad) => {
      const [c, s] = [Math.cos(angleRad), Math.sin(angleRad)];
      materials.shared.plane.value.set(-c, -s, 0, offsetM);
      turntable.turnBy(angleRad - sectionRad);
      sectionRad = angleRad;
      framed = JSON.stringify([view ? viewpoint(viewName, view, sectionRad) : null, size]);
      invalidate();
    },
    setCut: (on) => {
      cut = on;
      settle();
    },
    setTier: (next) => {
      wanted = next;
      measured = 0;
      tier = next === 'full' ? 'full' : 'plain';
      settle();
    },
    setTheme: (theme) => {
      materials.setTheme(theme);
      gas.repaint();
      settle();
    },
    setReducedMotion: (on) => {
      still = on;
      invalidate();
    },
    setChosen: (id) => {
      items.choose(id);
      invalidate();
    },
    pick: (x, y) => {
      const box = canvas.getBoundingClientRect();
      const found = place(box.left + x, box.top + y);
      return found ? targetOf(found) : null;
    },
    onIntent: listeners.add,
    handles: () =>
      handlesIn([items.root, chains.root], {
        camera: turntable.camera,
        ...size,
        kindOf,
        pick: lookAt,
      }),
    onHeld: heldListeners.add,
    onTaken: eyeListeners.add,
    onFrame: frameListeners.add,
    onLost: lostListeners.add,
    project: (points) =>
      points.map((p) => {
        const seen = new Vector3(...(p as [number, number, number])).project(turntable.camera);
        return { x: ((seen.x + 1) / 2) * size.width, y: ((1 - seen.y) / 2) * size.height };
      }),
    nudge,
    resize: (width, height, covered = 0) => {
      size = { width: Math.max(1, width), height: Math.max(1, height), covered };
      turntable.resize(size.width, size.height, covered);
      settle();
      goTo(false);
    },
    stats: () => ({
      tier,
      frames,
      calls: renderer.info.render.calls,
      triangles: renderer.info.render.triangles,
      lastFrameMs,
      dots: shownDots,
    }),
    dispose: () => {
      pace.stop();
      for (const press of pressed) window.removeEventListener(press, pace.pressed, { capture: true });
      canvas.removeEventListener('webglcontextlost', lose);
      canvas.removeEventListener('webglcontextrestored', regain);
      stopListening();
      for (const told of [listeners, frameListeners, lostListeners, eyeListeners, heldListeners])
        told.clear();
      turntable.dispose();
      for (const part of [items, chains, details, ground, gas, dots, materials]) part.dispose();
      renderer.dispose();
    },
  };
}

/** With motion reduced the streams are shown as they would stand at this moment, s. */
const STILL_AT_S = 3;

/** Seen from outside, only what has left the rig shows. */
const outdoors = (view: SceneView) =>
  view.flows.filter((f) => ['open', 'serviceEnd', 'pilot', 'relief'].includes(f.link));

/** Hatching keeps its distance on the screen by doubling and halving its distance on the metal. */
function hatchSpacingM(pixelM: number): number {
  return HATCH_BASE_M * Math.pow(2, Math.ceil(Math.log2((HATCH_PIXELS * pixelM) / HATCH_BASE_M)));
}

const TURN_STEP_RAD = Math.PI / 24;

/** Arrows turn, with shift they move the picture; plus and minus come nearer and go back. */
function stepOf(key: string, shift: boolean): Parameters<Turntable['nudge']>[0] | null {
  const across = { ArrowLeft: -1, ArrowRight: 1 }[key] ?? 0;
  const upward = { ArrowUp: -1, ArrowDown: 1 }[key] ?? 0;
  if (across !== 0 || upward !== 0) {
    return shift
      ? { shift: [across * 0.06, upward * 0.06] }
      : { azimuthRad: across * TURN_STEP_RAD, polarRad: upward * TURN_STEP_RAD };
  }
  if (key === '+' || key === '=') return { nearer: 1.2 };
  return key === '-' ? { nearer: 1 / 1.2 } : null;
}
