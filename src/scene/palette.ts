import type { Stuff } from './pieces/part.ts';

export type Theme = 'light' | 'dark';
export type Rgb = readonly [number, number, number];

/** How a stuff looks: its skin, its cut face and the hatching on it (sRGB, 0 to 1). */
export interface Look {
  readonly skin: Rgb;
  readonly face: Rgb;
  readonly hatch: Rgb;
  /** Lines one way, lines both ways, dots, or none. */
  readonly pattern: 'lines' | 'cross' | 'dots' | 'plain';
}

export interface Palette {
  readonly paper: Rgb;
  readonly line: Rgb;
  readonly chosen: Rgb;
  readonly stuffs: Readonly<Record<Stuff, Look>>;
}

export const hex = (code: string): Rgb => [
  parseInt(code.slice(1, 3), 16) / 255,
  parseInt(code.slice(3, 5), 16) / 255,
  parseInt(code.slice(5, 7), 16) / 255,
];

const look = (skin: string, face: string, hatch: string, pattern: Look['pattern'] = 'lines'): Look => ({
  skin: hex(skin),
  face: hex(face),
  hatch: hex(hatch),
  pattern,
});

/** How light is answered in the full tier; grain is the size of its mottling, m, and how strong it is. */
export interface Finish {
  readonly metal: number;
  readonly rough: number;
  readonly grainM: number;
  readonly mottle: number;
}

const finish = (metal: number, rough: number, grainM = 0, mottle = 0): Finish => ({
  metal,
  rough,
  grainM,
  mottle,
});

export const finishes: Readonly<Record<Stuff, Finish>> = {
  steel: finish(0.75, 0.48),
  bright: finish(0.9, 0.26),
  iron: finish(0.45, 0.66, 0.0012, 0.35),
  brass: finish(0.9, 0.3),
  rubber: finish(0, 0.75),
  seal: finish(0, 0.5),
  glass: finish(0, 0.12),
  paint: finish(0.05, 0.38),
  marker: finish(0, 0.6),
  dial: finish(0, 0.5),
  soil: finish(0, 0.95, 0.014, 0.1),
  wood: finish(0, 0.8, 0.009, 0.14),
  coating: finish(0, 0.55, 0.005, 0.25),
  scale: finish(0.1, 0.85, 0.001, 0.5),
  tool: finish(0.6, 0.42),
  weld: finish(0.6, 0.5, 0.0022, 0.4),
};

const light: Palette = {
  paper: hex('#f5f3ee'),
  line: hex('#2b3138'),
  chosen: hex('#d9702b'),
  stuffs: {
    steel: look('#a3aeb9', '#dce3e9', '#5f6d7a'),
    bright: look('#c9d1d8', '#f1f4f6', '#7d8a96'),
    iron: look('#8b8d93', '#d9d7d4', '#4f5056'),
    brass: look('#cfae63', '#f4e6bd', '#9b7d33'),
    rubber: look('#474b52', '#6a6f78', '#2c2f34', 'cross'),
    glass: look('#c4dde2', '#d9ecef', '#8fb4bb', 'plain'),
    paint: look('#c2553a', '#e9a48f', '#93361f'),
    dial: look('#fbfaf6', '#fbfaf6', '#888888', 'plain'),
    soil: look('#e6dfd0', '#ebe4d5', '#c9bda3', 'dots'),
    seal: look('#e8e6df', '#f3f1ea', '#b9b5a8', 'dots'),
    marker: look('#f2c200', '#f2c200', '#a58400', 'plain'),
    wood: look('#d3b183', '#e4caa2', '#a5845a'),
    scale: look('#7a4a2c', '#7a4a2c', '#5b3520', 'plain'),
    tool: look('#5f7f8f', '#b9cdd6', '#3f5a68'),
    coating: look('#2f3a3c', '#3d4a4d', '#232c2e', 'plain'),
    weld: look('#8d857c', '#5d5a58', '#3f3c3a', 'plain'),
  },
};

const dark: Palette = {
  paper: hex('#15191e'),
  line: hex('#0b0d10'),
  chosen: hex('#f0954f'),
  stuffs: {
    steel: look('#8894a1', '#3b4651', '#9aa9b8'),
    bright: look('#b3bdc7', '#4b5762', '#c0ccd8'),
    iron: look('#74767c', '#3c3b3a', '#9d9b97'),
    brass: look('#b6974f', '#57481f', '#d5b767'),
    rubber: look('#3a3e45', '#22252a', '#5d636c', 'cross'),
    glass: look('#7fa4ac', '#3f5c63', '#7fa4ac', 'plain'),
    paint: look('#b9523a', '#5e2417', '#e08a72'),
    dial: look('#e9e6dd', '#e9e6dd', '#555555', 'plain'),
    soil: look('#4c463b', '#37322a', '#6f6655', 'dots'),
    seal: look('#c9c6bc', '#77746b', '#a9a59a', 'dots'),
    marker: look('#ffd43a', '#ffd43a', '#a58400', 'plain'),
    wood: look('#8d7350', '#4a3c29', '#9a7f58'),
    scale: look('#8a5733', '#8a5733', '#5b3520', 'plain'),
    tool: look('#56727f', '#2b3c44', '#7f9daa'),
    coating: look('#20282a', '#2c3638', '#171d1f', 'plain'),
    weld: look('#6f6962', '#8b857e', '#a9a39c', 'plain'),
  },
};

export const palettes: Readonly<Record<Theme, Palette>> = { light, dark };
