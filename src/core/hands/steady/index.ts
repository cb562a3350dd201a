import type { StageId } from '../../procedure/index.ts';
import { makeSafe } from '../safe/index.ts';
import type { Work as JobWork } from '../../rig/index.ts';
import { act, crewOf, lookRound, StopWork, type Crew } from '../crew.ts';
import type { Hand, Work } from '../hand.ts';
import { rigOffUnopened } from './recover/rigOff.ts';
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
import { joinAndProve } from './renewJoin.ts';
import { provedOnBench } from './renewBench.ts';
import { purgeAndRelight } from './renewPurge.ts';
import { runIn } from './renewRunIn.ts';
import { setNewPlug } from './renewPlug.ts';
import { testLine } from './renewTest.ts';
import { closeCoupling } from './stage11Close.ts';
import { handBack } from './stage12HandBack.ts';

/**
 * A crew that does the whole job as it should be done, by its readings alone. What goes wrong it looks for, mends and
 * proves again; where stopping is right it makes safe first and then refers back.
 */
export const steady: Hand = function* (order, first) {
  const crew = crewOf(order, first);
  try {
    yield* asOrdered(crew);
  } catch (stop) {
    if (!(stop instanceof StopWork)) throw stop;
    yield* makeSafe(crew);
    yield* rigOffUnopened(crew);
    yield* act(crew, { kind: 'refer', reason: stop.reason });
  }
};

/** The job's pieces of work in their order. */
const pieces: readonly (readonly [StageId, (crew: Crew) => Work])[] = [
  ['s1', setUp],
  ['s2', sealOnTee],
  ['s3', proveFirst],
  ['s4', drawPlug],
  ['s5', lookBore],
  ['s6', stopBore],
  ['s7', lockStop],
  ['s8', partService],
  ['r1', provedOnBench],
  ['s9', sealOnCoupling],
  ['s10', drawTee],
  ['s11', closeCoupling],
  ['r2', runIn],
  ['r3', testLine],
  ['r4', joinAndProve],
  ['r5', setNewPlug],
  ['r6', purgeAndRelight],
  ['s12', handBack],
];

/** Those that this work has: the coupling is closed, or given a new tee. */
function piecesOf(work: JobWork): typeof pieces {
  return pieces.filter(([id]) => (work === 'abandon' ? !id.startsWith('r') : id !== 's11'));
}

/** The whole job, or the stages a drill asks for; then it is told that the work is done. */
function* asOrdered(crew: Crew): Work {
  const { drill, work } = crew.order;
  const own = piecesOf(work);
  yield* through(crew, own.slice(at(own, drill?.from ?? 's1'), at(own, drill?.to ?? 's12') + 1));
  yield* act(crew, { kind: 'finish' });
}

function* through(crew: Crew, works: typeof pieces): Work {
  for (const [stage, work] of works) {
    if (stage !== 's1') yield* lookRound(crew);
    yield* work(crew);
  }
}

const at = (own: typeof pieces, stage: StageId): number => own.findIndex(([id]) => id === stage);

/** The same crew, which does all that comes before a stage and leaves the rest to others. */
export function steadyUpTo(stage: StageId): Hand {
  return function* (order, first) {
    const crew = crewOf(order, first);
    const own = piecesOf(crew.order.work);
    yield* through(crew, own.slice(0, at(own, stage)));
  };
}
