/** One American taper pipe thread, by the formulas of ASME B1.20.1; lengths in metres. */
export interface TaperThread {
  pitchM: number;
  /** Pitch diameter at the small end. */
  e0M: number;
  /** Pitch diameter at the hand-tight plane. */
  e1M: number;
  /** Effective thread. */
  l2M: number;
  /** Wrench make-up: three threads up to NPS 2. */
  l3M: number;
  /** Thread height. */
  heightM: number;
  handTightTurns: number;
  totalTurns: number;
}

/** Taper on diameter: 1 in 16. */
const TAPER = 1 / 16;

/**
 * A thread from its pipe's outside diameter, pitch and hand-tight length L1 (which the standard tabulates):
 * E0 = D − (0.05 D + 1.1)p, E1 = E0 + L1/16, L2 = (0.80 D + 6.8)p, height 0.80p, with D and p in inches.
 */
export function taperThread(outsideDiameterM: number, threadsPerInch: number, l1M: number): TaperThread {
  const inchM = 0.0254;
  const pitchIn = 1 / threadsPerInch;
  const outsideIn = outsideDiameterM / inchM;
  const e0In = outsideIn - (0.05 * outsideIn + 1.1) * pitchIn;
  const l3In = 3 * pitchIn;
  return {
    pitchM: pitchIn * inchM,
    e0M: e0In * inchM,
    e1M: e0In * inchM + l1M * TAPER,
    l2M: (0.8 * outsideIn + 6.8) * pitchIn * inchM,
    l3M: l3In * inchM,
    heightM: 0.8 * pitchIn * inchM,
    handTightTurns: l1M / (pitchIn * inchM),
    totalTurns: (l1M + l3In * inchM) / (pitchIn * inchM),
  };
}

/** Radial gap a turn of backing off opens, m: pitch/32, an upper bound on the slot. */
export function slackPerTurnM(pitchM: number): number {
  return pitchM / 32;
}

/** Torque to turn a thread so many turns past hand-tight, N·m. Zero short of hand-tight. */
export function makeUpTorqueNm(turnsPastHandTight: number, torquePerTurnNm: number): number {
  return Math.max(0, turnsPastHandTight) * torquePerTurnNm;
}

/** Turns past hand-tight a torque reaches. */
export function turnsForTorque(torqueNm: number, torquePerTurnNm: number): number {
  return Math.max(0, torqueNm) / torquePerTurnNm;
}

/** The gap a thread leaves, as a slot for the network. */
export interface ThreadSlot {
  perimeterM: number;
  gapM: number;
  lengthM: number;
}

/**
 * The slot round a thread backed off from where it sealed: gap grows by the taper with the turns, and the slot gets
 * shorter as the thread comes out. No turns back, no slot.
 */
export function backedOffSlot(
  thread: { pitchM: number; e1M: number },
  turnsBack: number,
  engagedTurns: number,
): ThreadSlot {
  const turns = Math.max(0, turnsBack);
  const left = Math.max(0.25, engagedTurns - turns);
  return {
    perimeterM: Math.PI * thread.e1M,
    gapM: slackPerTurnM(thread.pitchM) * turns,
    lengthM: left * thread.pitchM,
  };
}

/** How a thread was made up, for its leak. */
export interface MadeUpThread {
  turnsPastHandTight: number;
  /** Turns past hand-tight from which it seals. */
  sealTurns: number;
  sealant: boolean;
  crossed: boolean;
}

/**
 * Effective leak area, m², of a thread made up in gas: sealed with sealant and turns enough; the given leaks without
 * sealant or crossed; short of its turns the open slot at hand-tight closes with the cube of the turns, as a slot does.
 */
export function madeUpLeakCdAM2(
  made: MadeUpThread,
  leaks: { sealedM2: number; noSealantM2: number; crossedM2: number; handTightM2: number },
): number {
  if (made.crossed) return leaks.crossedM2;
  const floor = made.sealant ? leaks.sealedM2 : leaks.noSealantM2;
  const missing = Math.max(0, Math.min(1, 1 - made.turnsPastHandTight / made.sealTurns));
  return floor + leaks.handTightM2 * missing * missing * missing;
}
