import type { Action, KitKind, RigState } from '../core/rig/index.ts';

/** A pull on something in the picture: turns clockwise from above, or metres downward, since the last one. */
export interface Pull {
  readonly kind: 'turn' | 'slide';
  /** `id/part` of what is held. */
  readonly target: string;
  readonly amount: number;
  /** The hand let go. */
  readonly ended: boolean;
}

/** Who pulls: what stands on the rig, the id of the thing that is held, and whether a second wrench holds back. */
interface Held {
  readonly rig: RigState;
  readonly id: string;
  readonly holdBack: boolean;
}

/** What a hold on a part means: the least step a hand can tell, in the pull's unit, and the act it comes to. */
interface Hold {
  readonly step: number;
  readonly action: (amount: number, held: Held) => Action;
  /** One pull is one act, done when the hand lets go: a torque wrench is read before it is relaxed. */
  readonly once?: true;
  /** There and back are one movement, and both count. */
  readonly bothWays?: true;
}

/** Two degrees, the least a lever is moved by. */
const leverStep = 1 / 180;
/** A handle that is turned counter-clockwise opens; a quarter turn is all of it. */
const opening = (turns: number): number => Math.max(-1.6, Math.min(1.6, -turns * 2 * Math.PI));
const strokeM = 0.1;
/** A drag that would turn a free wrench once pulls so hard on one that does not give, N·m. */
const WRENCH_NM_A_TURN = 600;
/** A torque wrench is read to this, and pulled no harder than that, N·m. */
const WRENCH_STEP_NM = 5;
const WRENCH_MOST_NM = 400;

const bleed: Hold = {
  step: leverStep,
  action: (turns) => ({ kind: 'bleed.turn', angleRad: opening(turns) }),
};
const valve: Hold = {
  step: leverStep,
  action: (turns) => ({ kind: 'valve.turn', angleRad: opening(turns) }),
};
const tensioner = (side: 'left' | 'right'): Hold => ({
  step: 1 / 24,
  action: (turns, { rig, id }) => ({
    kind: 'tensioner.turn',
    chain: Math.max(
      0,
      rig.chains.findIndex((chain) => chain.piece === id),
    ),
    side,
    turns: Math.max(-3, Math.min(3, turns)),
  }),
});
const collarBolt = (bolt: number): Hold => ({
  step: 1 / 12,
  action: (turns) => ({ kind: 'collarBolt.turn', bolt, turns: Math.max(-4, Math.min(4, turns)) }),
});

const holds: Readonly<Record<string, Hold>> = {
  'turn isolationValve/handle': valve,
  'turn isolationValve/stem': valve,
  'turn rodBarrel/lever': bleed,
  'turn sightCap/lever': bleed,
  'turn chain/left': tensioner('left'),
  'turn chain/right': tensioner('right'),
  'turn splitCollar/leftBolt': collarBolt(0),
  'turn splitCollar/rightBolt': collarBolt(1),
  'turn testHead/lever': {
    step: 0.0125,
    action: (turns) => ({ kind: 'vent.turn', open: Math.max(-1, Math.min(1, -turns * 4)) }),
  },
  'slide testHead/plunger': {
    step: strokeM,
    bothWays: true,
    action: (lengthM) => ({
      kind: 'pump.stroke',
      strokes: Math.max(1, Math.min(10, Math.floor(Math.abs(lengthM) / strokeM + 1e-9))),
    }),
  },
  'slide rod/outer': {
    step: 0.001,
    action: (lengthM) => ({ kind: 'rod.move', lengthM: Math.max(-0.5, Math.min(0.5, lengthM)) }),
  },
  'turn rod/outer': { step: 1 / 12, action: (turns) => ({ kind: 'rod.turn', turns }) },
  'turn rod/inner': { step: 1 / 12, action: (turns) => ({ kind: 'innerRod.turn', turns }) },
  'turn topPlug/square': {
    step: 1 / 24,
    action: (turns, { holdBack }) => ({ kind: 'plug.turn', turns, holdBack }),
  },
  'turn keeperPlug/square': {
    step: WRENCH_STEP_NM / WRENCH_NM_A_TURN,
    once: true,
    action: (turns, { holdBack }) => ({
      kind: 'keeper.pull',
      torqueNm: Math.max(1, Math.min(WRENCH_MOST_NM, Math.round(turns * WRENCH_NM_A_TURN))),
      holdBack,
    }),
  },
  'turn serviceTee/body': {
    step: 1 / 24,
    action: (turns, { holdBack }) => ({ kind: 'tee.turn', turns, holdBack }),
  },
};

/** Ten acts a second at most: what is pulled between is added up. */
const leastBetweenMs = 100;

/** The kind of a thing in the picture by its id: a kit piece's kind, or the id itself for what belongs to the job. */
export function kindOfTarget(target: string, rig: RigState): KitKind | string {
  const id = target.split('/')[0];
  return id in rig.kit ? rig.kit[id].kind : id;
}

const holdOf = (kind: Pull['kind'], target: string, rig: RigState): Hold | undefined =>
  holds[`${kind} ${kindOfTarget(target, rig)}/${target.split('/')[1] ?? ''}`];

/** Pulls with a torque wrench that are tried, N·m apart: what was pulled harder before gives only to more. */
const WRENCH_TRIED_NM = 20;
const wrenchPulls = Array.from(
  { length: WRENCH_MOST_NM / WRENCH_TRIED_NM },
  (_, i) => ((i + 1) * WRENCH_TRIED_NM) / WRENCH_NM_A_TURN,
);

/** What tells whether a part gives at all: the least a hand could do on it, either way; with a wrench, how hard it may. */
export function trialPulls(target: string, rig: RigState, holdBack: boolean): Action[] {
  return (['turn', 'slide'] as const).flatMap((kind) => {
    const hold = holdOf(kind, target, rig);
    if (hold === undefined) return [];
    const held: Held = { rig, id: target.split('/')[0], holdBack };
    const tried = hold.once === true ? wrenchPulls : [-hold.step, hold.step];
    return tried.map((amount) => hold.action(amount, held));
  });
}

/** Adds up pulls on the picture and makes acts of them, in whole steps; the rest is kept until the hand lets go. */
export interface Puller {
  pull(pull: Pull, rig: RigState, holdBack: boolean, nowMs: number): void;
  /** The act that letting go now would come to, where one pull is one act; null elsewhere. */
  readonly ready: Action | null;
}

export function readPulls(act: (action: Action) => void): Puller {
  let held = '';
  let gathered = 0;
  let lastMs = -Infinity;
  let ready: Action | null = null;
  return {
    get ready() {
      return ready;
    },
    pull(pull, rig, holdBack, nowMs) {
      const name = `${pull.kind} ${pull.target}`;
      if (name !== held) {
        held = name;
        gathered = 0;
      }
      ready = null;
      const hold = holdOf(pull.kind, pull.target, rig);
      if (hold === undefined) return;
      gathered += hold.bothWays === true ? Math.abs(pull.amount) : pull.amount;
      const steps = Math.trunc(gathered / hold.step + (gathered < 0 ? -1e-9 : 1e-9));
      const whole: Held = { rig, id: pull.target.split('/')[0], holdBack };
      if (hold.once === true) {
        // A wrench put on pulls one way only; drawn back past its start it pulls on nothing.
        const pulled = steps > 0 ? hold.action(steps * hold.step, whole) : null;
        if (!pull.ended) ready = pulled;
        else if (pulled !== null) act(pulled);
      } else if (steps !== 0 && (pull.ended || nowMs - lastMs >= leastBetweenMs)) {
        act(hold.action(steps * hold.step, whole));
        gathered -= steps * hold.step;
        lastMs = nowMs;
      }
      if (pull.ended) gathered = 0;
    },
  };
}
