import type {
  Action,
  ActionKind,
  CleanPlace,
  HoldPointId,
  KitKind,
  ReferReason,
  SiteTask,
} from '../rig/index.ts';
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

/** The piece was wiped, set aside or taken off again, or not put to use, before the work it endangers began. */
export const notUsed: Reaction = (story, noticedAt) => {
  let inUse = usedBefore(story, noticedAt);
  for (let i = noticedAt; i < story.facts.length; i += 1) {
    const f = story.facts[i];
    if (f.fact === 'piece.cleaned' && f.piece === story.on) return true;
    if (f.fact === 'piece.rejected' && f.piece === story.on) return true;
    inUse = after(inUse, f, story);
  }
  return !inUse;
};

function usedBefore(story: Story, until: number): boolean {
  let inUse = false;
  for (const f of story.facts.slice(0, until)) inUse = after(inUse, f, story);
  return inUse;
}

function after(inUse: boolean, f: Story['facts'][number], { on, job }: Story): boolean {
  if (f.fact === 'piece.placed' && f.piece === on) return true;
  if (f.fact === 'piece.removed' && f.piece === on) return false;
  if (f.fact !== 'done') return inUse;
  const kind = job.kit.find((entry) => entry.id === on)?.kind;
  const takenOut =
    (f.action.kind === 'rod.load' && f.action.piece === null && loads.includes(kind ?? 'saddle')) ||
    (f.action.kind === 'rod.fit' && f.action.tip !== on && tips.includes(kind ?? 'saddle'));
  return takenOut ? false : inUse;
}

const loads: readonly KitKind[] = ['boreStopper', 'keeperPlug', 'closingPlug'];
const tips: readonly KitKind[] = ['socket', 'stopperHolder', 'magnet'];
