import { mm } from '../sizes.ts';

/**
 * The one joint all pieces above the main share (our own design, assumed): a male spigot on top with an O-ring in its face,
 * a skirt below that screws down over it. The bore runs through unbroken.
 */
export const rigJoint = {
  boreM: mm(76.2),
  spigotOdM: mm(92),
  spigotLengthM: mm(22),
  skirtOdM: mm(108),
  bodyOdM: mm(98),
} as const;
