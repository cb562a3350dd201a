import CameraControls from 'camera-controls';
import {
  Box3,
  Matrix4,
  PerspectiveCamera,
  Quaternion,
  Raycaster,
  Sphere,
  Spherical,
  Vector2,
  Vector3,
  Vector4,
} from 'three';
import type { Viewpoint } from '../views.ts';

CameraControls.install({
  THREE: { Vector2, Vector3, Vector4, Quaternion, Matrix4, Spherical, Box3, Sphere, Raycaster },
});

const FIELD_DEG = 26;
const NEAR_M = 0.05;
const radians = (deg: number): number => (deg * Math.PI) / 180;

/** The eye on its turntable. z is up. */
export class Turntable {
  readonly camera = new PerspectiveCamera(FIELD_DEG, 1, NEAR_M, 30);
  readonly #controls: CameraControls;
  /** Share of the picture's height that nothing covers. */
  #free = 1;

  constructor(canvas: HTMLElement, onMove: () => void, onTaken: () => void) {
    this.camera.up.set(0, 0, 1);
    this.camera.position.set(2, -0.6, 0.8);
    this.#controls = new CameraControls(this.camera, canvas);
    this.#controls.updateCameraUp();
    this.#controls.smoothTime = 0.16;
    this.#controls.draggingSmoothTime = 0.06;
    this.#controls.minDistance = 0.15;
    this.#controls.maxDistance = 8;
    this.#controls.dollyToCursor = true;
    for (const event of ['controlstart', 'control', 'controlend', 'transitionstart', 'wake'] as const) {
      this.#controls.addEventListener(event, onMove);
    }
    // A wheel has no start of its own.
    for (const event of ['controlstart', 'control'] as const) this.#controls.addEventListener(event, onTaken);
  }

  /** @returns true while the eye is still moving */
  advance(durationS: number): boolean {
    return this.#controls.update(durationS);
  }

  /** `lowPx`: so much at the foot of the picture is covered; what is looked at stands in the middle of the rest. */
  resize(widthPx: number, heightPx: number, lowPx: number): void {
    this.camera.aspect = widthPx / Math.max(1, heightPx);
    this.#free = Math.max(0.3, 1 - lowPx / Math.max(1, heightPx));
    this.camera.setViewOffset(widthPx, heightPx, 0, lowPx / 2, widthPx, heightPx);
    this.camera.updateProjectionMatrix();
  }

  goTo(view: Viewpoint, smooth: boolean): void {
    const direction = new Vector3(...(view.eye as [number, number, number])).normalize();
    const target = new Vector3(...(view.target as [number, number, number]));
    // Both the height and the width asked for must be in the picture.
    const tall = Math.max(view.tallM / this.#free, view.wideM / this.camera.aspect);
    // Down a bore one stands at its top and looks through a narrower glass instead of coming nearer.
    const fromM = view.fromM ?? tall / 2 / Math.tan(radians(FIELD_DEG / 2));
    const eye = target.clone().addScaledVector(direction, fromM);
    this.camera.fov = view.fromM === undefined ? FIELD_DEG : (360 / Math.PI) * Math.atan(tall / 2 / fromM);
    this.camera.near = view.fromM === undefined ? NEAR_M : 0.004;
    this.camera.updateProjectionMatrix();
    void this.#controls.setLookAt(eye.x, eye.y, eye.z, target.x, target.y, target.z, smooth);
  }

  /** Turn about the upright axis at once, rad, counter-clockwise from above: the eye goes with the section plane. */
  turnBy(angleRad: number): void {
    void this.#controls.rotate(angleRad, 0, false);
  }

  /** Keys: turn by angles, come nearer by a factor, or shift the picture by shares of its height. */
  nudge(step: {
    azimuthRad?: number;
    polarRad?: number;
    nearer?: number;
    shift?: readonly [number, number];
  }): void {
    if (step.azimuthRad || step.polarRad)
      void this.#controls.rotate(step.azimuthRad ?? 0, step.polarRad ?? 0, true);
    if (step.nearer) void this.#controls.dollyTo(this.#controls.distance / step.nearer, true);
    if (step.shift) {
      const span = this.metresPerPixel(1);
      void this.#controls.truck(step.shift[0] * span, step.shift[1] * span, true);
    }
  }

  /** Size of a pixel at the point looked at, m, for a picture this many pixels high. */
  metresPerPixel(heightPx: number): number {
    return (2 * this.#controls.distance * Math.tan(radians(this.camera.fov / 2))) / Math.max(1, heightPx);
  }

  dispose(): void {
    this.#controls.removeAllEventListeners();
    this.#controls.dispose();
  }
}
