import { mm } from '../sizes.ts';
import { ASSUMED, type Source } from '../source.ts';
import type { PieceEntry } from '../piece.ts';
import { rigJoint } from './rigJoint.ts';

export interface IsolationValveDims {
  readonly boreM: number;
  /** From seat to top face. */
  readonly heightM: number;
  readonly ballCentreM: number;
  readonly ballRadiusM: number;
  /** Length of the bore through the ball. */
  readonly ballBoreLengthM: number;
  readonly bodyOdM: number;
  readonly handleLengthM: number;
  readonly belowBallM3: number;
  readonly ballM3: number;
  readonly aboveBallM3: number;
}

const fromBall: Source = 'computed: gas volumes divided by the bore area';

const radius = rigJoint.boreM / 2;
const halfBore = mm(76.7) / 2;
const dims: IsolationValveDims = {
  boreM: rigJoint.boreM,
  heightM: mm(190),
  ballCentreM: mm(95),
  ballRadiusM: Math.sqrt(radius * radius + halfBore * halfBore),
  ballBoreLengthM: 2 * halfBore,
  bodyOdM: mm(136),
  handleLengthM: mm(260),
  belowBallM3: 0.26e-3,
  ballM3: 0.35e-3,
  aboveBallM3: 0.26e-3,
};

/** Full-port quarter-turn ball valve. Bore lengths follow from the net volumes 0.26, 0.35 and 0.26 L. */
export const isolationValve = {
  kind: 'isolationValve',
  sizedBy: 'one',
  sizes: ['one'],
  dims: (): IsolationValveDims => dims,
  sources: {
    boreM: ASSUMED,
    heightM: ASSUMED,
    ballCentreM: ASSUMED,
    ballRadiusM: fromBall,
    ballBoreLengthM: fromBall,
    bodyOdM: ASSUMED,
    handleLengthM: ASSUMED,
    belowBallM3: ASSUMED,
    ballM3: ASSUMED,
    aboveBallM3: ASSUMED,
  },
  netVolumeM3: 0.87e-3,
} satisfies PieceEntry<'one', IsolationValveDims>;
