import { actionSchema, type Action } from '../../rig/index.ts';
import type { RecordEntry } from '../../run/index.ts';
import type { Scenario } from '../../scenario/index.ts';
import * as v from 'valibot';
import type { Act } from './acts.ts';
import { amountOf } from './keys.ts';

/** How one act may go otherwise than in the model run. */
export const ways = ['leftOut', 'never', 'swapped', 'less', 'more', 'early', 'late', 'wrongPiece'] as const;
export type Way = (typeof ways)[number];

/** One entry of an open-loop play: its action, and how long after the one before, s. */
export interface Step {
  readonly action: Action;
  readonly gapS: number;
}

/** One act of the model run done otherwise: steps up to `from` are the model's, and `tail` is played after them. */
export interface Deviation {
  readonly act: Act;
  readonly way: Way;
  readonly from: number;
  readonly tail: readonly Step[];
}

/** A model run laid out for deviating: its acts, and its entries as steps. */
export interface Model {
  readonly scenario: Scenario;
  readonly steps: readonly Step[];
  readonly acts: readonly Act[];
}

/** The entries of a run as steps, counted from the clock at which it began, s. */
export function stepsOf(entries: readonly RecordEntry[], begunAtS: number): readonly Step[] {
  return entries.map(({ action, atS }, i) => ({ action, gapS: atS - (entries[i - 1]?.atS ?? begunAtS) }));
}

/** Every single deviation of a model run. One that would change nothing is none. */
export function deviationsOf(model: Model): readonly Deviation[] {
  return model.acts.flatMap((act, i) =>
    ways.flatMap((way): Deviation[] => {
      const made = makers[way](model, act, i);
      return made === null ? [] : [{ act, way, ...made }];
    }),
  );
}

type Made = Pick<Deviation, 'from' | 'tail'> | null;
type Maker = (model: Model, act: Act, i: number) => Made;

const makers: Readonly<Record<Way, Maker>> = {
  leftOut: ({ steps }, act) => ({ from: act.from, tail: steps.slice(act.to) }),
  never: (model, act) => (act.of > 1 && act.occurrence === 1 ? withoutKey(model, act) : null),
  swapped: ({ steps, acts }, act, i) => {
    if (i + 1 >= acts.length) return null;
    const { to } = acts[i + 1];
    const tail = [...steps.slice(act.to, to), ...steps.slice(act.from, act.to), ...steps.slice(to)];
    return { from: act.from, tail };
  },
  less: (model, act) => scaled(model, act, 0.5),
  more: (model, act) => scaled(model, act, 1.5),
  early: ({ steps, acts }, act, i) => {
    const before = acts.slice(0, i).findLast(isSignature);
    if (!before || isSignature(act)) return null;
    const moved = steps.slice(act.from, act.to);
    return {
      from: before.from,
      tail: [...moved, ...steps.slice(before.from, act.from), ...steps.slice(act.to)],
    };
  },
  late: ({ steps, acts }, act, i) => {
    const after = acts.slice(i + 1).find(isSignature);
    if (!after || isSignature(act)) return null;
    const moved = steps.slice(act.from, act.to);
    return { from: act.from, tail: [...steps.slice(act.to, after.to), ...moved, ...steps.slice(after.to)] };
  },
  wrongPiece: ({ scenario, steps }, act) => {
    const { action } = steps[act.from];
    if (action.kind !== 'piece.place' && action.kind !== 'rod.load' && action.kind !== 'rod.fit') return null;
    const meant = action.kind === 'rod.fit' ? action.tip : action.piece;
    const other = meant === null ? null : otherOf(scenario, meant);
    if (meant === null || other === null) return null;
    return {
      from: act.from,
      tail: steps.slice(act.from).map((step) => ({ ...step, action: renamed(step.action, meant, other) })),
    };
  },
};

function isSignature(act: Act): boolean {
  return act.key.startsWith('sign ');
}

function withoutKey({ steps, acts }: Model, { key, from }: Act): Made {
  const left = acts.filter((act) => act.key !== key && act.from >= from);
  return { from, tail: left.flatMap((act) => steps.slice(act.from, act.to)) };
}

/** Amounts of an act times a share, as far as a hand can; strokes of a pump are counted over the act. */
function scaled({ steps }: Model, act: Act, share: number): Made {
  const own = steps.slice(act.from, act.to);
  const changed = own.map((step) => ({ ...step, action: timesShare(step.action, share) }));
  if (changed.every((step, i) => amountOf(step.action) === amountOf(own[i].action))) return null;
  return { from: act.from, tail: [...changed, ...steps.slice(act.to)] };
}

function timesShare(action: Action, share: number): Action {
  const amount = amountOf(action);
  if (amount === null) return action;
  const wanted = { ...action, [amountField(action)]: amountFor(action, amount * share) };
  const valid = v.safeParse(actionSchema, wanted);
  return valid.success ? valid.output : action;
}

function amountFor(action: Action, wanted: number): number {
  if (action.kind === 'valve.turn' || action.kind === 'bleed.turn')
    return Math.max(-1.6, Math.min(1.6, wanted));
  if (action.kind === 'tensioner.turn') return Math.max(-3, Math.min(3, wanted));
  if (action.kind === 'pump.stroke' || action.kind === 'testSet.pump') {
    const most = action.kind === 'pump.stroke' ? 10 : 60;
    return Math.max(1, Math.min(most, Math.floor(wanted + 0.5)));
  }
  return wanted;
}

function amountField(action: Action): string {
  switch (action.kind) {
    case 'valve.turn':
    case 'bleed.turn':
      return 'angleRad';
    case 'vent.turn':
    case 'testSet.vent':
    case 'riser.turn':
      return 'open';
    case 'rod.move':
      return 'lengthM';
    case 'pump.stroke':
    case 'testSet.pump':
      return 'strokes';
    case 'keeper.pull':
      return 'torqueNm';
    case 'collar.set':
      return 'travelM';
    case 'leakFluid.apply':
      return 'watchS';
    default:
      return 'turns';
  }
}

/** Another piece of the same kind on the board, or null. */
function otherOf({ job: { kit } }: Scenario, piece: string): string | null {
  const kind = kit.find(({ id }) => id === piece)?.kind;
  return kit.find((one) => one.kind === kind && one.id !== piece && one.kind !== 'chain')?.id ?? null;
}

/** The other piece is worked with from then on, as a crew does that does not see what it holds. */
function renamed(action: Action, meant: string, other: string): Action {
  if (action.kind === 'piece.inspect' || action.kind === 'piece.reject') return action;
  if ('piece' in action && action.piece === meant) return { ...action, piece: other };
  if (action.kind === 'rod.fit' && action.tip === meant) return { ...action, tip: other };
  return action;
}
