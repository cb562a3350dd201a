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
import type { PieceKind } from '../piece.ts';

/** One entry a kind; each file owns its piece's dimensions. */
export const pieces = {
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
} satisfies { [K in PieceKind]: { kind: K } };
