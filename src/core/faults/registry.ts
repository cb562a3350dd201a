import { mislabelledSeatRing } from './faults/mislabelledSeatRing.ts';
import { mislabelledStopper } from './faults/mislabelledStopper.ts';
import { mislabelledSocket } from './faults/mislabelledSocket.ts';
import { keeperWrongThread } from './faults/keeperWrongThread.ts';
import { closingPlugWrongThread } from './faults/closingPlugWrongThread.ts';
import { keeperStemLong } from './faults/keeperStemLong.ts';
import { keeperStemShort } from './faults/keeperStemShort.ts';
import { closingPlugBottoms } from './faults/closingPlugBottoms.ts';
import { bossPitted } from './faults/bossPitted.ts';
import { bossBeyondUse } from './faults/bossBeyondUse.ts';
import { scaleUnderChain } from './faults/scaleUnderChain.ts';
import { gritOnRing } from './faults/gritOnRing.ts';
import { weldBeadUnderGasket } from './faults/weldBeadUnderGasket.ts';
import { boreScale } from './faults/boreScale.ts';
import { filingsOnSeat } from './faults/filingsOnSeat.ts';
import { sealantOnRubber } from './faults/sealantOnRubber.ts';
import { oRingNicked } from './faults/oRingNicked.ts';
import { stopperWorn } from './faults/stopperWorn.ts';
import { stopperOily } from './faults/stopperOily.ts';
import { weakDetent } from './faults/weakDetent.ts';
import { glandWeeping } from './faults/glandWeeping.ts';
import { bleedBlocked } from './faults/bleedBlocked.ts';
import { valvePassing } from './faults/valvePassing.ts';
import { valveStiff } from './faults/valveStiff.ts';
import { gaugeStuck } from './faults/gaugeStuck.ts';
import { gaugeReadsLow } from './faults/gaugeReadsLow.ts';
import { gaugeUnfit } from './faults/gaugeUnfit.ts';
import { ventNotShutting } from './faults/ventNotShutting.ts';
import { pumpCheckLeaks } from './faults/pumpCheckLeaks.ts';
import { hoseKinked } from './faults/hoseKinked.ts';
import { hoseDrifts } from './faults/hoseDrifts.ts';
import { gasketPinched } from './faults/gasketPinched.ts';
import { gasketBlows } from './faults/gasketBlows.ts';
import { windowCracked } from './faults/windowCracked.ts';
import { looseJoint } from './faults/looseJoint.ts';
import { socketLetsGo } from './faults/socketLetsGo.ts';
import { socketHolds } from './faults/socketHolds.ts';
import { stopperLetsGo } from './faults/stopperLetsGo.ts';
import { detectorFailsBump } from './faults/detectorFailsBump.ts';
import { detectorReadsLow } from './faults/detectorReadsLow.ts';
import { plugPassing } from './faults/plugPassing.ts';
import { plugSeized } from './faults/plugSeized.ts';
import { plugRounded } from './faults/plugRounded.ts';
import { teeSeized } from './faults/teeSeized.ts';
import { weldLeaks } from './faults/weldLeaks.ts';
import { weldWeepsAfterBite } from './faults/weldWeepsAfterBite.ts';
import { couplingThreadWorn } from './faults/couplingThreadWorn.ts';
import { curbPassing } from './faults/curbPassing.ts';
import { farFeed } from './faults/farFeed.ts';
import { unknownBranch } from './faults/unknownBranch.ts';
import { secondHouse } from './faults/secondHouse.ts';
import { excessFlowDevice } from './faults/excessFlowDevice.ts';
import { insertInService } from './faults/insertInService.ts';
import { mainOutOfRound } from './faults/mainOutOfRound.ts';
import { thinWall } from './faults/thinWall.ts';
import { suspectWrap } from './faults/suspectWrap.ts';
import { wrongService } from './faults/wrongService.ts';
import { pressureAboveTag } from './faults/pressureAboveTag.ts';
import { pressureAboveRating } from './faults/pressureAboveRating.ts';
import { regulatorCreep } from './faults/regulatorCreep.ts';
import { mainRisesAfterStop } from './faults/mainRisesAfterStop.ts';
import { mainFalling } from './faults/mainFalling.ts';
import { temperatureDrift } from './faults/temperatureDrift.ts';
import { odourAbsent } from './faults/odourAbsent.ts';
import { liquidFromBleed } from './faults/liquidFromBleed.ts';
import { otherLeak } from './faults/otherLeak.ts';
import { stillAir } from './faults/stillAir.ts';
import { ignitionSource } from './faults/ignitionSource.ts';
import { ignitionArrives } from './faults/ignitionArrives.ts';
import { publicApproaches } from './faults/publicApproaches.ts';
import { waterInHole } from './faults/waterInHole.ts';
import { coldRubber } from './faults/coldRubber.ts';
import { strayVolts } from './faults/strayVolts.ts';
import { pipeSprings } from './faults/pipeSprings.ts';
import { workerDown } from './faults/workerDown.ts';
import type { Fault } from './fault.ts';
import type { FaultId } from './ids.ts';

/** Every fault, by its name. A name without a file does not compile. */
export const faults: Readonly<Record<FaultId, Fault>> = {
  mislabelledSeatRing,
  mislabelledStopper,
  mislabelledSocket,
  keeperWrongThread,
  closingPlugWrongThread,
  keeperStemLong,
  keeperStemShort,
  closingPlugBottoms,
  bossPitted,
  bossBeyondUse,
  scaleUnderChain,
  gritOnRing,
  weldBeadUnderGasket,
  boreScale,
  filingsOnSeat,
  sealantOnRubber,
  oRingNicked,
  stopperWorn,
  stopperOily,
  weakDetent,
  glandWeeping,
  bleedBlocked,
  valvePassing,
  valveStiff,
  gaugeStuck,
  gaugeReadsLow,
  gaugeUnfit,
  ventNotShutting,
  pumpCheckLeaks,
  hoseKinked,
  hoseDrifts,
  gasketPinched,
  gasketBlows,
  windowCracked,
  looseJoint,
  socketLetsGo,
  socketHolds,
  stopperLetsGo,
  detectorFailsBump,
  detectorReadsLow,
  plugPassing,
  plugSeized,
  plugRounded,
  teeSeized,
  weldLeaks,
  weldWeepsAfterBite,
  couplingThreadWorn,
  curbPassing,
  farFeed,
  unknownBranch,
  secondHouse,
  excessFlowDevice,
  insertInService,
  mainOutOfRound,
  thinWall,
  suspectWrap,
  wrongService,
  pressureAboveTag,
  pressureAboveRating,
  regulatorCreep,
  mainRisesAfterStop,
  mainFalling,
  temperatureDrift,
  odourAbsent,
  liquidFromBleed,
  otherLeak,
  stillAir,
  ignitionSource,
  ignitionArrives,
  publicApproaches,
  waterInHole,
  coldRubber,
  strayVolts,
  pipeSprings,
  workerDown,
};
