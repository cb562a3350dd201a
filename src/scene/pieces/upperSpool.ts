import { pieces } from '../../core/catalogue/index.ts';
import { spoolParts } from './spool.ts';
import type { PieceShape } from './part.ts';

export const upperSpool: PieceShape = () => spoolParts(pieces.upperSpool.dims());
