import { closingPlug } from './closingPlug.ts';
import type { PieceShape } from './part.ts';

/** The new top plug is a solid square-headed plug like the closing plug of its size, origin on its shoulder. */
export const newTopPlug: PieceShape = (spec) => closingPlug(spec);
