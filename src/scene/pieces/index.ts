import type { PieceKind } from '../../core/catalogue/index.ts';
import { boreStopper } from './boreStopper.ts';
import { chain } from './chain.ts';
import { closingPlug } from './closingPlug.ts';
import { coupling } from './coupling.ts';
import { cradleBlock } from './cradleBlock.ts';
import { cupGasket } from './cupGasket.ts';
import { depthCollar } from './depthCollar.ts';
import { gaugeRing } from './gaugeRing.ts';
import { isolationValve } from './isolationValve.ts';
import { keeperPlug } from './keeperPlug.ts';
import { lowerSpool } from './lowerSpool.ts';
import { magnet } from './magnet.ts';
import { main } from './main.ts';
import { newTopPlug } from './newTopPlug.ts';
import type { PieceShape } from './part.ts';
import { purgeRiser } from './purgeRiser.ts';
import { renewalTee } from './renewalTee.ts';
import { rod } from './rod.ts';
import { rodBarrel } from './rodBarrel.ts';
import { saddle } from './saddle.ts';
import { seatRing } from './seatRing.ts';
import { serviceCap } from './serviceCap.ts';
import { serviceLine } from './serviceLine.ts';
import { serviceTee } from './serviceTee.ts';
import { sightCap } from './sightCap.ts';
import { socket } from './socket.ts';
import { splitCollar } from './splitCollar.ts';
import { stopperHolder } from './stopperHolder.ts';
import { testHead } from './testHead.ts';
import { testSet } from './testSet.ts';
import { tieIn } from './tieIn.ts';
import { topPlug } from './topPlug.ts';
import { upperSpool } from './upperSpool.ts';
import { valveCap } from './valveCap.ts';

/** Every kind of piece has a shape, or this does not compile. */
export const shapes: Record<PieceKind, PieceShape> = {
  main,
  coupling,
  serviceTee,
  topPlug,
  serviceLine,
  seatRing,
  saddle,
  cradleBlock,
  chain,
  isolationValve,
  lowerSpool,
  upperSpool,
  sightCap,
  testHead,
  rodBarrel,
  rod,
  socket,
  stopperHolder,
  magnet,
  depthCollar,
  boreStopper,
  keeperPlug,
  cupGasket,
  splitCollar,
  closingPlug,
  valveCap,
  gaugeRing,
  serviceCap,
  renewalTee,
  newTopPlug,
  tieIn,
  testSet,
  purgeRiser,
};
