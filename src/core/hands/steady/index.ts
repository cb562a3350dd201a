import { crewOf, act, StopWork, type Crew } from '../crew.ts';
import type { Hand, Work } from '../hand.ts';
import { setUp } from './stage01SetUp.ts';
import { sealOnTee } from './stage02SealOnTee.ts';
import { proveFirst } from './stage03ProveFirst.ts';
import { drawPlug } from './stage04DrawPlug.ts';
import { lookBore } from './stage05Look.ts';
import { stopBore } from './stage06StopBore.ts';
import { lockStop } from './stage07LockStop.ts';
import { partService } from './stage08PartService.ts';
import { sealOnCoupling } from './stage09SealOnCoupling.ts';
import { drawTee } from './stage10DrawTee.ts';
import { closeCoupling } from './stage11Close.ts';
import { handBack } from './stage12HandBack.ts';

/** A crew that does the whole job as it should be done, by its readings alone, and stops where stopping is right. */
export const steady: Hand = function* (order, first) {
  const crew = crewOf(order, first);
  try {
    yield* wholeJob(crew);
  } catch (stop) {
    if (!(stop instanceof StopWork)) throw stop;
    yield* act(crew, { kind: 'refer', reason: stop.reason });
  }
};

function* wholeJob(crew: Crew): Work {
  yield* setUp(crew);
  yield* sealOnTee(crew);
  const proof1 = yield* proveFirst(crew);
  yield* drawPlug(crew);
  yield* lookBore(crew);
  yield* stopBore(crew);
  yield* lockStop(crew);
  yield* partService(crew);
  const proof2 = yield* sealOnCoupling(crew);
  yield* drawTee(crew);
  yield* closeCoupling(crew);
  yield* handBack(crew, [proof1, proof2]);
}
