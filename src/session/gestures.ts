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

/** What a hold on a part means: the least step a hand can tell, in the pull's unit, and the act it comes to. */
interface Hold {
  readonly step: number;
  readonly action: (amount: number, holdBack: boolean) => Action;
}

/** Two degrees, the least a lever is moved by. */
const leverStep = 1 / 180;
/** A handle that is turned counter-clockwise opens; a quarter turn is all of it. */
const opening = (turns: number): number => Math.max(-1.6, Math.min(1.6, -turns * 2 * Math.PI));
const strokeM = 0.1;

const bleed: Hold = {
  step: leverStep,
  action: (turns) => ({ kind: 'bleed.turn', angleRad: opening(turns) }),
};
const valve: Hold = {
  step: leverStep,
  action: (turns) => ({ kind: 'valve.turn', angleRad: opening(turns) }),
};

const holds: Readonly<Record<string, Hold>> = {
  'turn isolationValve/handle': valve,
  'turn isolationValve/stem': valve,
  'turn rodBarrel/lever': bleed,
  'turn sightCap/lever': bleed,
  'turn testHead/lever': {
    step: 0.0125,
    action: (turns) => ({ kind: 'vent.turn', open: Math.max(-1, Math.min(1, -turns * 4)) }),
  },
  'slide testHead/plunger': {
    step: strokeM,
    action: (lengthM) => ({
      kind: 'pump.stroke',
      strokes: Math.max(1, Math.floor(Math.abs(lengthM) / strokeM)),
    }),
  },
  'slide rod/outer': { step: 0.001, action: (lengthM) => ({ kind: 'rod.move', lengthM }) },
  'turn rod/outer': { step: 1 / 12, action: (turns) => ({ kind: 'rod.turn', turns }) },
  'turn rod/inner': { step: 1 / 12, action: (turns) => ({ kind: 'innerRod.turn', turns }) },
  'turn topPlug/square': {
    step: 1 / 24,
    action: (turns, holdBack) => ({ kind: 'plug.turn', turns, holdBack }),
  },
  'turn serviceTee/body': {
    step: 1 / 24,
    action: (turns, holdBack) => ({ kind: 'tee.turn', turns, holdBack }),
  },
};

/** Ten acts a second at most: what is pulled between is added up. */
const leastBetweenMs = 100;

/** The kind of a thing in the picture by its id: a kit piece's kind, or the id itself for what belongs to the job. */
export function kindOfTarget(target: string, rig: RigState): KitKind | string {
  const id = target.split('/')[0];
  return id in rig.kit ? rig.kit[id].kind : id;
}

/** Adds up pulls on the picture and makes acts of them, in whole steps; the rest is kept until the hand lets go. */
export function readPulls(
  act: (action: Action) => void,
): (pull: Pull, rig: RigState, holdBack: boolean, nowMs: number) => void {
  let held = '';
  let gathered = 0;
  let lastMs = -Infinity;
  return (pull, rig, holdBack, nowMs) => {
    const part = pull.target.split('/')[1] ?? '';
    const name = `${pull.kind} ${kindOfTarget(pull.target, rig)}/${part}`;
    if (name !== held) {
      held = name;
      gathered = 0;
    }
    const hold: Hold | undefined = holds[name];
    if (hold === undefined) return;
    gathered += pull.amount;
    if (!pull.ended && nowMs - lastMs < leastBetweenMs) return;
    const steps = Math.trunc(gathered / hold.step + (gathered < 0 ? -1e-9 : 1e-9));
    if (steps !== 0) {
      act(hold.action(steps * hold.step, holdBack));
      gathered -= steps * hold.step;
      lastMs = nowMs;
    }
    if (pull.ended) gathered = 0;
  };
}
