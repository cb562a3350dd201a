import type { Action, ActionKind } from '../../rig/index.ts';
import type { Plan, PlannedStep } from './plan.ts';

/** A draw in [0, 1). */
export type Draw = () => number;

/** A slip: what it does to a plan. A plan that gives no occasion for it is left as it is. */
export type Slip = (plan: Plan, draw: Draw) => Plan;

type Change = (step: PlannedStep, draw: Draw) => PlannedStep | null;

/** Changes one step of those that qualify, or leaves it out. */
const once =
  (qualifies: (step: PlannedStep) => boolean, change: Change): Slip =>
  (plan, draw) => {
    const places = plan.flatMap((step, i) => (qualifies(step) ? [i] : []));
    if (places.length === 0) return plan;
    const at = places[Math.min(places.length - 1, Math.floor(draw() * places.length))];
    const changed = change(plan[at], draw);
    return plan.flatMap((step, i) => (i !== at ? [step] : changed === null ? [] : [changed]));
  };

const isKind =
  (...kinds: readonly ActionKind[]) =>
  ({ action }: PlannedStep): boolean =>
    kinds.includes(action.kind);
const forget = (...kinds: readonly ActionKind[]): Slip => once(isKind(...kinds), () => null);
const otherwise = (change: (action: Action, draw: Draw) => Action): Change => {
  return (step, draw) => ({ ...step, action: change(step.action, draw) });
};

/** Waits of at least this are holds, s. */
const HOLD_S = 60;

/** The slips a trainee may be prone to, each one act of the job left out or done otherwise (all invented). */
export const slips = {
  forgetsLeakFluid: forget('leakFluid.apply'),
  forgetsMark: forget('mark'),
  forgetsReading: forget('gauge.read'),
  forgetsInspection: forget('piece.inspect'),
  forgetsLook: forget('look'),
  forgetsCleaning: forget('clean'),
  forgetsSiteTask: once(
    ({ action }) => action.kind === 'site.do' && action.task !== 'readOrder',
    () => null,
  ),
  forgetsBond: forget('bond.clamp'),
  forgetsSignature: forget('sign'),
  forgetsToHoldTheRod: once(
    ({ action }) => action.kind === 'rod.hold' && action.held,
    () => null,
  ),
  hurriesHold: once(
    ({ waitS }) => waitS >= HOLD_S,
    (step, draw) => ({ ...step, waitS: step.waitS * (0.2 + 0.5 * draw()) }),
  ),
  pullsUnevenly: once(
    isKind('tensioner.turn'),
    otherwise((action, draw) =>
      action.kind === 'tensioner.turn' && action.turns > 0
        ? { ...action, turns: Math.min(3, action.turns + 0.1 + 0.25 * draw()) }
        : action,
    ),
  ),
  pullsKeeperAmiss: once(
    isKind('keeper.pull'),
    otherwise((action, draw) =>
      action.kind === 'keeper.pull'
        ? { ...action, torqueNm: Math.min(400, action.torqueNm * (draw() < 0.5 ? 0.6 : 1.5)) }
        : action,
    ),
  ),
  forgetsHoldBack: once(
    ({ action }) => 'holdBack' in action && action.holdBack,
    otherwise((action) => ('holdBack' in action ? { ...action, holdBack: false } : action)),
  ),
  opensValveAtOnce: once(
    ({ action }) => action.kind === 'valve.turn' && action.angleRad > 0 && action.angleRad < 0.2,
    otherwise((action) =>
      action.kind === 'valve.turn' ? { ...action, angleRad: 1.5707963267948966 } : action,
    ),
  ),
  leadsHoseIntoHole: once(
    isKind('hose.lead'),
    otherwise((action) => (action.kind === 'hose.lead' ? { ...action, outlet: 'inHole' } : action)),
  ),
} as const satisfies Readonly<Record<string, Slip>>;

export const slipNames = Object.keys(slips) as readonly (keyof typeof slips)[];

/** Signs the first proof without having held it: the hold cut to a few seconds. Goes with a false signature. */
export const skipsFirstProof = (plan: Plan): Plan => {
  const signed = plan.findIndex(({ action }) => action.kind === 'sign' && action.holdPoint === 'H2');
  return plan.map((step, i) => (i < signed && step.waitS >= HOLD_S ? { ...step, waitS: 5 } : step));
};
