import { streetTeeSwept } from './reach.ts';
import { wholeKit, type Job } from './job.ts';
import type { ChainState, KitPiece, RigState, ThreadState } from './state.ts';

/** The rig before the first hand touches it: the tee as found, every kit piece on the board. */
export function setUp(job: Job): RigState {
  const kit: Record<string, KitPiece> = {};
  for (const entry of wholeKit(job)) {
    kit[entry.id] = {
      id: entry.id,
      kind: entry.kind,
      stamped: entry.stamped ?? null,
      trueSize: entry.trueSize ?? entry.stamped ?? null,
      defects: entry.defects ?? {},
      inspected: false,
      rejected: false,
      where: job.kit.includes(entry) ? 'board' : 'rig',
      sealant: false,
    };
  }
  return {
    job,
    kit,
    site: {
      done: {},
      cleaned: {
        boss: false,
        pipe: false,
        coupling: false,
        bore: false,
        closingPlug: false,
        weldBead: false,
      },
      oiledAtS: {},
      marks: {},
      zeroed: { main: false, second: false, head: false, test: false },
      detectorBumped: false,
      detectorAt: 'hole',
      bonded: { tee: false, service: false },
      curbOpen: !job.system.service.curbShut,
      inHole: true,
      mainIsolated: false,
      isolatedAtS: null,
      record: {},
      signed: {},
    },
    plug: { at: 'tee', turnsBack: 0, broken: false, torqueNm: job.workpiece.plugBreakNm },
    tee: {
      at: 'coupling',
      turnsBack: 0,
      broken: false,
      strained: 0,
      sweptM: streetTeeSwept(job).untrimmed,
      trim: 'whole',
      filed: false,
    },
    branch: { cut: 'whole', pilotPlugged: false, purged: false, capped: false },
    seatRing: { piece: null },
    collar: { gasket: null, collar: null, bolts: [0, 0] },
    saddle: { on: 'board', piece: null, cradles: [] },
    chains: [slackChain(), slackChain()],
    stack: [],
    valve: { openRad: 0 },
    testHead: { ventOpen: 1, pumpUntilS: 0, strokes: 0 },
    bleed: { openRad: 0 },
    hose: 'none',
    rod: {
      tip: null,
      load: null,
      travelM: 0,
      held: false,
      collarTravelM: null,
      engaged: null,
      resting: false,
      stuckPulls: 0,
      turns: 0,
    },
    stopper: {
      piece: null,
      at: 'board',
      belowPortM: 0,
      torqueNm: 0,
      squeezeTurns: 0,
      squeezedAtS: 0,
      tiltRad: 0,
      slippedM: 0,
    },
    keeper: { piece: null, at: 'board', engagedTurns: 0, torqueNm: 0, movedTurns: 0 },
    closing: { piece: null, at: 'board', ...unthreaded },
    renewal: {
      piece: null,
      at: 'board',
      ...unthreaded,
      mostTurns: 0,
      plug: { piece: null, at: 'board', ...unthreaded },
    },
    line: { laid: false, cap: null, tieIn: null, tieInStrained: false, riser: null, riserOpen: 0 },
    testSet: { on: null, ventOpen: 0, pumpUntilS: 0, strokes: 0 },
    ending: null,
  };
}

const unthreaded: ThreadState = { engagedTurns: 0, torqueNm: 0, crossed: false, threadFound: false };

function slackChain(): ChainState {
  return { piece: null, hooked: false, left: 0, right: 0, settledM: 0, unsettledM: 0, taps: 0 };
}
