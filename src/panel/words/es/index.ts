import { coach } from './coach.ts';
import { grasp } from './grasp.ts';
import { hands } from './hands.ts';
import { instruments } from './instruments.ts';
import { pages } from './pages.ts';
import { settings } from './settings.ts';
import { sitting } from './sitting.ts';
import { sounds } from './sounds.ts';
import { work } from './work.ts';

export { exerciseInSpanish } from './exercises.ts';

/** Every word of the screens in Spanish. */
export const spanish = {
  ...pages,
  ...work,
  ...instruments,
  ...grasp,
  ...hands,
  ...coach,
  ...settings,
  ...sitting,
  ...sounds,
};
