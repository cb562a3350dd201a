import type { Action, ActionKind, CleanPlace, HoldPointId, ReferReason, SiteTask } from '../rig/index.ts';
import type { Reaction, Story } from './fault.ts';

/** Any of several right answers. */
export function anyOf(...answers: readonly Reaction[]): Reaction {
  return (story, noticedAt) => answers.some((answer) => answer(story, noticedAt));
}

/** Stopped and referred back for a reason that names it. */
export function referred(...reasons: readonly ReferReason[]): Reaction {
  return ({ facts }, noticedAt) =>
    facts.some((f, i) => i >= noticedAt && f.fact === 'referred' && reasons.includes(f.reason));
}

/** A task of the site done, with or after the fact that showed it. */
export function task(...tasks: readonly SiteTask[]): Reaction {
  return ({ facts }, noticedAt) =>
    facts.some((f, i) => i >= noticedAt && f.fact === 'site.done' && tasks.includes(f.task));
}

/** An act of the hand after it showed. */
export function act(kind: ActionKind, where: (action: Action) => boolean = () => true): Reaction {
  return ({ facts }, noticedAt) =>
    facts.some((f, i) => i > noticedAt && f.fact === 'done' && f.action.kind === kind && where(f.action));
}

/** A face or place made clean after it showed. */
export function cleaned(at: CleanPlace): Reaction {
  return ({ facts }, noticedAt) => facts.some((f, i) => i > noticedAt && f.fact === 'cleaned' && f.at === at);
}

/** The proof or stop was shown to hold all the same: its hold point stands. */
export function held(...ids: readonly HoldPointId[]): Reaction {
  return (story) => ids.some((id) => story.held(id));
}

/** The main shut at its valves. */
export const isolated: Reaction = ({ facts }) =>
  facts.some((f) => f.fact === 'ended' && f.ending.kind === 'isolated');

/** The piece was wiped, set aside, taken off again, or never put to use once its flaw was known. */
export const notUsed: Reaction = (story, noticedAt) => {
  let inUse = usedBefore(story, noticedAt);
  for (let i = noticedAt; i < story.facts.length; i += 1) {
    const f = story.facts[i];
    if (f.fact === 'piece.cleaned' && f.piece === story.on) return true;
    if (f.fact === 'piece.rejected' && f.piece === story.on) return true;
    inUse = after(inUse, f, story.on);
  }
  return !inUse;
};

function usedBefore(story: Story, until: number): boolean {
  let inUse = false;
  for (const f of story.facts.slice(0, until)) inUse = after(inUse, f, story.on);
  return inUse;
}

function after(inUse: boolean, f: Story['facts'][number], on: string | null): boolean {
  if (f.fact === 'piece.placed' && f.piece === on) return true;
  if (f.fact === 'piece.removed' && f.piece === on) return false;
  const takenOut = f.fact === 'done' && (f.action.kind === 'rod.load' || f.action.kind === 'rod.fit');
  if (takenOut && f.fact === 'done' && 'piece' in f.action && f.action.piece === null) return false;
  if (takenOut && f.fact === 'done' && 'tip' in f.action && f.action.tip !== on) return false;
  return inUse;
}
