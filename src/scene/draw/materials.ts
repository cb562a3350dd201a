import { BackSide, Color, DoubleSide, FrontSide, ShaderMaterial, Vector4 } from 'three';
import type { Stuff } from '../pieces/part.ts';
import { finishes, palettes, type Look, type Palette, type Rgb, type Theme } from '../palette.ts';
import { dotFragment, dotVertex, gasFragment, gasVertex, partFragment, partVertex } from './shader.ts';

export const linear = ([r, g, b]: Rgb): Color => new Color().setRGB(r, g, b, 'srgb');
const onScreen = ([r, g, b]: Rgb): Color => new Color().setRGB(r, g, b, 'srgb-linear');

const patterns: Readonly<Record<Look['pattern'], number>> = { plain: 0, lines: 1, cross: 2, dots: 3 };

/** Values all parts share: one section plane, one hatch spacing. */
export interface SharedUniforms {
  /** Points with a negative distance to it are cut away. */
  readonly plane: { value: Vector4 };
  readonly spacingM: { value: number };
  readonly pixelsPerM: { value: number };
}

/** What all parts are drawn for; each combination is a shader of its own, with nothing in it that is not needed. */
export interface Manner {
  /** Cut open by the section plane. */
  readonly cut: boolean;
  /** Looking down the bore: no light but a lamp at the eye. */
  readonly lamp: boolean;
  /** With drawn edges, and light answered by the stuff. */
  readonly full: boolean;
}

interface Made {
  readonly material: ShaderMaterial;
  readonly stuff: Stuff;
  readonly cut: boolean;
  readonly chosen: boolean;
}

/** One material for each stuff, direction of hatching, and whether it is cut or chosen; made when first asked for. */
export class Materials {
  readonly shared: SharedUniforms = {
    plane: { value: new Vector4(-1, 0, 0, 0) },
    spacingM: { value: 0.004 },
    pixelsPerM: { value: 1000 },
  };
  readonly gas: ShaderMaterial;
  readonly dots: ShaderMaterial;
  readonly #made = new Map<string, Made>();
  #theme: Theme;
  #manner: Manner = { cut: true, lamp: false, full: false };

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
        uSpacing: this.shared.spacingM,
        uSlant: { value: slant },
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
    });
    const made = { material, stuff, cut, chosen };
    this.#made.set(key, made);
    this.#dress(made);
    return material;
  }

  setTheme(theme: Theme): void {
    this.#theme = theme;
    for (const made of this.#made.values()) this.#dress(made);
  }

  draw(manner: Manner): void {
    const { cut, lamp, full } = this.#manner;
    if (cut === manner.cut && lamp === manner.lamp && full === manner.full) return;
    this.#manner = manner;
    for (const made of this.#made.values()) this.#dress(made);
  }

  dispose(): void {
    for (const { material } of this.#made.values()) material.dispose();
    this.gas.dispose();
    this.dots.dispose();
  }

  /** The shaders met before are kept by the renderer: going back to a manner compiles nothing. */
  #dress({ material, stuff, cut, chosen }: Made): void {
    const { cut: opened, lamp, full } = this.#manner;
    const { stuffs, line, chosen: glow } = this.palette;
    const { skin, face, hatch, pattern } = stuffs[stuff];
    const isCut = cut && opened;
    const shining = chosen ? glow : ([0, 0, 0] as const);
    // In the plain tier a cut face is never lit, so its colours need no way from light to screen.
    const flat = lamp || full ? linear : onScreen;
    const u = material.uniforms;
    u.uSkin.value.copy(linear(skin));
    u.uGlow.value.copy(linear(shining));
    u.uLine.value.copy(flat(line));
    u.uHatch.value.copy(flat(hatch));
    u.uFace.value.copy(flat(face)).add(flat(shining).multiplyScalar(0.35));
    material.defines = {
      ...(isCut ? { CUT: 1, PATTERN: patterns[pattern] } : {}),
      ...(lamp ? { LAMP: 1 } : {}),
      ...(full && !lamp ? { FULL: 1 } : {}),
    };
    // What is whole is closed: its far side is never seen.
    material.side = isCut ? DoubleSide : FrontSide;
    material.needsUpdate = true;
  }
}
