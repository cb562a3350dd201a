import { coach } from './coach.ts';
import { grasp } from './grasp.ts';
import { hands } from './hands.ts';
import { instruments } from './instruments.ts';
import { pages } from './pages.ts';
import { settings } from './settings.ts';
import { sitting } from './sitting.ts';
import { sounds } from './sounds.ts';
import { work } from './work.ts';

/** Every word of the screens that is not about the rig itself; the rig's own words are the text catalogue's. */
export const english = {
  ...pages,
  ...work,
  ...instruments,
  ...grasp,
  ...hands,
  ...coach,
  ...settings,
  ...sitting,
  ...sounds,
} as const;
