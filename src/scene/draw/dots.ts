import { BufferAttribute, BufferGeometry, Points } from 'three';
import type { Dot } from '../particles.ts';
import type { Rgb, Theme } from '../palette.ts';
import { hex } from '../palette.ts';
import { linear, type Materials } from './materials.ts';

const MOST_DOTS = 1200;

const tints: Readonly<Record<Theme, Readonly<Record<Dot['kind'], Rgb>>>> = {
  light: { gas: hex('#5b2bd0'), air: hex('#6d7278'), bubble: hex('#2f6f9f') },
  dark: { gas: hex('#c9b8ff'), air: hex('#b9bec5'), bubble: hex('#9fd4ff') },
};

/** All particles and bubbles in one call; the buffers are filled in place. */
export class Dots {
  readonly points: Points;
  readonly #position = new BufferAttribute(new Float32Array(MOST_DOTS * 3), 3);
  readonly #size = new BufferAttribute(new Float32Array(MOST_DOTS), 1);
  readonly #tint = new BufferAttribute(new Float32Array(MOST_DOTS * 3), 3);
  readonly #materials: Materials;

  constructor(materials: Materials) {
    this.#materials = materials;
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', this.#position);
    geometry.setAttribute('size', this.#size);
    geometry.setAttribute('tint', this.#tint);
    geometry.setDrawRange(0, 0);
    this.points = new Points(geometry, materials.dots);
    this.points.frustumCulled = false;
    this.points.visible = false;
  }

  show(dots: readonly Dot[]): void {
    const count = Math.min(MOST_DOTS, dots.length);
    const palette = tints[this.#materials.theme];
    for (let i = 0; i < count; i++) {
      const { at, sizeM, kind } = dots[i];
      const c = linear(palette[kind]);
      this.#position.setXYZ(i, at[0], at[1], at[2]);
      // A bubble is drawn as a ring: told to the shader by a negative size.
      this.#size.setX(i, kind === 'bubble' ? -sizeM : sizeM);
      this.#tint.setXYZ(i, c.r, c.g, c.b);
    }
    this.points.visible = count > 0;
    this.points.geometry.setDrawRange(0, count);
    for (const attribute of [this.#position, this.#size, this.#tint]) attribute.needsUpdate = true;
  }

  dispose(): void {
    this.points.geometry.dispose();
  }
}
