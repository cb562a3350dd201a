import { pieces, taperThreads } from '../../core/catalogue/index.ts';
import { square, threadedBody } from './squareHead.ts';
import type { PieceShape } from './part.ts';

/** Solid steel plug for the coupling, origin on its shoulder. */
export const closingPlug: PieceShape = ({ teeSize, variant }) => {
  const d = pieces.closingPlug.dims(teeSize);
  const face = taperThreads[teeSize].madeUpM - d.threadLengthM;
  return [
    {
      name: 'thread',
      stuff: 'bright',
      cut: true,
      body: threadedBody(teeSize, d, face, [], variant === 'free'),
    },
    { name: 'square', stuff: 'bright', cut: true, body: square(d) },
  ];
};
