import { pieces, taperThreads } from '../../core/catalogue/index.ts';
import { square, threadedBody } from './squareHead.ts';
import { HAIR, type PieceShape } from './part.ts';

/** Plug with a stem below it, origin on its shoulder. */
export const keeperPlug: PieceShape = ({ teeSize, variant }) => {
  const d = pieces.keeperPlug.dims(teeSize);
  const face = taperThreads[teeSize].madeUpM - d.threadLengthM;
  const stem = d.stemOdM / 2;
  const bottom = -d.threadLengthM;
  const below = [
    [0, bottom - d.stemM],
    [stem - 0.001, bottom - d.stemM],
    [stem, bottom - d.stemM + 0.001],
    [stem, bottom - (variant === 'free' ? HAIR : 0)],
  ] as const;
  return [
    {
      name: 'thread',
      stuff: 'brass',
      cut: true,
      body: threadedBody(teeSize, d, face, below, variant === 'free'),
    },
    { name: 'square', stuff: 'brass', cut: true, body: square(d) },
  ];
};
