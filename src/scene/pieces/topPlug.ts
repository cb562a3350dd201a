import { pieces, taperThreads } from '../../core/catalogue/index.ts';
import { square, threadedBody } from './squareHead.ts';
import type { PieceShape } from './part.ts';

/** Square-headed plug, origin on its shoulder. */
export const topPlug: PieceShape = ({ teeSize, variant }) => {
  const d = pieces.topPlug.dims(teeSize);
  const face = taperThreads[teeSize].madeUpM - d.threadLengthM;
  return [
    {
      name: 'thread',
      stuff: 'iron',
      cut: true,
      body: threadedBody(teeSize, d, face, [], variant === 'free'),
    },
    { name: 'square', stuff: 'iron', cut: true, body: square(d) },
  ];
};
