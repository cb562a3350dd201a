import { isStacked, type Fact, type Job, type KitKind } from '../rig/index.ts';
import { kindOf } from './recall.ts';

/** How the rig stands as the facts alone tell it: enough to say what a reading or a look is evidence of. */
export interface Standing {
  readonly valveOpenRad: number;
  readonly bleedOpenRad: number;
  readonly ventOpen: number;
  /** Kinds above the saddle, from below. */
  readonly stack: readonly KitKind[];
  readonly saddleOn: 'board' | 'tee' | 'coupling';
  readonly collarOn: boolean;
  readonly load: KitKind | 'plug' | 'tee' | null;
  readonly held: boolean;
  readonly hose: 'none' | 'inHole' | 'away';
  readonly plugOut: boolean;
  readonly teeOut: boolean;
  readonly cut: 'whole' | 'pilot' | 'through';
}

/** Before the first hand: nothing on the tee, all shut. */
export const standingAtStart: Standing = {
  valveOpenRad: 0,
  bleedOpenRad: 0,
  ventOpen: 0,
  stack: [],
  saddleOn: 'board',
  collarOn: false,
  load: null,
  held: false,
  hose: 'none',
  plugOut: false,
  teeOut: false,
  cut: 'whole',
};

/** The piece on top of everything, or null with only the saddle or nothing there. */
export function topOf(standing: Standing): KitKind | null {
  return standing.stack[standing.stack.length - 1] ?? null;
}

/** How it stands after one more fact. Returns the same object when the fact moves nothing. */
export function stand(standing: Standing, fact: Fact, job: Job): Standing {
  switch (fact.fact) {
    case 'valve.turned':
      return { ...standing, valveOpenRad: fact.openRad };
    case 'bleed.turned':
      return { ...standing, bleedOpenRad: fact.openRad };
    case 'vent.turned':
      return { ...standing, ventOpen: fact.open };
    case 'piece.placed':
      return placed(standing, kindOf(job, fact.piece));
    case 'piece.removed':
      return removed(standing, kindOf(job, fact.piece));
    case 'plug.free':
      return { ...standing, plugOut: true, load: 'plug' };
    case 'tee.free':
      return { ...standing, teeOut: true, load: 'tee' };
    case 'renewal.turned':
      return fact.engagedTurns > 0 ? { ...standing, teeOut: false, load: null } : standing;
    case 'stopper.left':
    case 'stopper.dropped':
      return { ...standing, load: null };
    case 'branch.cut':
      return {
        ...standing,
        cut: fact.part === 'through' ? 'through' : standing.cut === 'whole' ? 'pilot' : standing.cut,
      };
    case 'done':
      return done(standing, fact, job);
    default:
      return standing;
  }
}

/** How it stood after each fact, in the order of the facts. */
export function standings(facts: readonly Fact[], job: Job): readonly Standing[] {
  const after: Standing[] = [];
  let now = standingAtStart;
  for (const fact of facts) {
    now = stand(now, fact, job);
    after.push(now);
  }
  return after;
}

function placed(standing: Standing, kind: KitKind | null): Standing {
  if (kind === null) return standing;
  if (isStacked(kind)) {
    return {
      ...standing,
      stack: [...standing.stack, kind],
      bleedOpenRad: 0,
      held: kind === 'rodBarrel' ? false : standing.held,
      valveOpenRad: kind === 'isolationValve' ? 0 : standing.valveOpenRad,
      ventOpen: kind === 'testHead' ? 1 : standing.ventOpen,
    };
  }
  if (kind === 'saddle')
    return { ...standing, saddleOn: standing.collarOn || standing.teeOut ? 'coupling' : 'tee' };
  if (kind === 'splitCollar') return { ...standing, collarOn: true };
  return standing;
}

function removed(standing: Standing, kind: KitKind | null): Standing {
  if (kind === null) return standing;
  if (isStacked(kind)) {
    const at = standing.stack.lastIndexOf(kind);
    return {
      ...standing,
      stack: standing.stack.filter((_, i) => i < at),
      bleedOpenRad: 0,
      held: kind === 'rodBarrel' ? false : standing.held,
    };
  }
  if (kind === 'saddle') return { ...standing, saddleOn: 'board', stack: [] };
  if (kind === 'splitCollar') return { ...standing, collarOn: false };
  return standing;
}

function done(standing: Standing, fact: Extract<Fact, { fact: 'done' }>, job: Job): Standing {
  switch (fact.action.kind) {
    case 'rod.hold':
      return { ...standing, held: fact.action.held };
    case 'rod.load':
      return { ...standing, load: kindOf(job, fact.action.piece) };
    case 'hose.lead':
      return { ...standing, hose: fact.action.outlet };
    default:
      return standing;
  }
}
