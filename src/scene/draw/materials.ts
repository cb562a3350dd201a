import { BackSide, Color, DoubleSide, FrontSide, ShaderMaterial, Vector4 } from 'three';
import type { Stuff } from '../pieces/part.ts';
import { finishes, palettes, type Look, type Palette, type Rgb, type Theme } from '../palette.ts';
import { dotFragment, dotVertex, gasFragment, gasVertex, partFragment, partVertex } from './shader.ts';

export const linear = ([r, g, b]: Rgb): Color => new Color().setRGB(r, g, b, 'srgb');

const patterns: Readonly<Record<Look['pattern'], number>> = { plain: 0, lines: 1, cross: 2, dots: 3 };

/** Values all parts share: one section plane, one hatch spacing, one quality. */
export interface SharedUniforms {
  /** Points with a negative distance to it are cut away. */
  readonly plane: { value: Vector4 };
  readonly on: { value: number };
  readonly spacingM: { value: number };
  readonly rims: { value: number };
  readonly pixelsPerM: { value: number };
  /** 1 while one looks down the bore: no light but a lamp at the eye. */
  readonly lamp: { value: number };
}

/** One material for each stuff, direction of hatching, and whether it is cut or chosen; made when first asked for. */
export class Materials {
  readonly shared: SharedUniforms = {
    plane: { value: new Vector4(-1, 0, 0, 0) },
    on: { value: 1 },
    spacingM: { value: 0.004 },
    rims: { value: 1 },
    pixelsPerM: { value: 1000 },
    lamp: { value: 0 },
  };
  readonly gas: ShaderMaterial;
  readonly dots: ShaderMaterial;
  readonly #made = new Map<string, { material: ShaderMaterial; stuff: Stuff; chosen: boolean }>();
  readonly #never = { value: 0 };
  #theme: Theme;

  constructor(theme: Theme) {
    this.#theme = theme;
    this.gas = new ShaderMaterial({
      vertexShader: gasVertex,
      fragmentShader: gasFragment,
      uniforms: { uPlane: this.shared.plane },
      side: BackSide,
    });
    this.dots = new ShaderMaterial({
      vertexShader: dotVertex,
      fragmentShader: dotFragment,
      uniforms: { uPixelsPerM: this.shared.pixelsPerM },
    });
  }

  get palette(): Palette {
    return palettes[this.#theme];
  }

  get theme(): Theme {
    return this.#theme;
  }

  part(stuff: Stuff, slant: 1 | -1, cut: boolean, chosen: boolean): ShaderMaterial {
    const key = `${stuff} ${slant} ${cut} ${chosen}`;
    const known = this.#made.get(key);
    if (known) return known.material;
    const material = new ShaderMaterial({
      vertexShader: partVertex,
      fragmentShader: partFragment,
      uniforms: {
        uPlane: this.shared.plane,
        uCut: cut ? this.shared.on : this.#never,
        uSpacing: this.shared.spacingM,
        uRims: this.shared.rims,
        uLamp: this.shared.lamp,
        uSlant: { value: slant },
        uPattern: { value: 0 },
        uSkin: { value: new Color() },
        uFace: { value: new Color() },
        uHatch: { value: new Color() },
        uLine: { value: new Color() },
        uGlow: { value: new Color() },
        uMetal: { value: finishes[stuff].metal },
        uRough: { value: finishes[stuff].rough },
        uGrain: { value: finishes[stuff].grainM },
        uMottle: { value: finishes[stuff].mottle },
      },
      side: cut ? DoubleSide : FrontSide,
    });
    this.#made.set(key, { material, stuff, chosen });
    this.#colour(material, stuff, chosen);
    return material;
  }

  setTheme(theme: Theme): void {
    this.#theme = theme;
    for (const { material, stuff, chosen } of this.#made.values()) this.#colour(material, stuff, chosen);
  }

  dispose(): void {
    for (const { material } of this.#made.values()) material.dispose();
    this.gas.dispose();
    this.dots.dispose();
  }

  #colour(material: ShaderMaterial, stuff: Stuff, chosen: boolean): void {
    const { stuffs, line, chosen: glow } = this.palette;
    const { skin, face, hatch, pattern } = stuffs[stuff];
    const u = material.uniforms;
    u.uSkin.value.copy(linear(skin));
    u.uFace.value.copy(linear(face));
    u.uHatch.value.copy(linear(hatch));
    u.uLine.value.copy(linear(line));
    u.uPattern.value = patterns[pattern];
    u.uGlow.value.copy(linear(chosen ? glow : [0, 0, 0]));
  }
}
