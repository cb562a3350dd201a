import { SHUT_RAD, type ReferReason, type TroubleKind } from '../rig/index.ts';
import type { FeltFact, FeltOf } from './felt.ts';
import type { View } from './hand.ts';
import type { Order } from './order.ts';
import { mainOpen, topKind } from './seen.ts';
import { signsIn } from './signs.ts';

/** Thrown inside a piece of work when the right thing is to stop and refer back. */
export class StopWork {
  readonly reason: ReferReason;
  constructor(reason: ReferReason) {
    this.reason = reason;
  }
}

/** What a crew carries along: the order, the last view, what it has read, and the pieces it has set aside. */
export interface Crew {
  /** Leaves the hole at the high alarm; a crew that does not is no model. */
  readonly heedsAlarm: boolean;
  /** Signs of trouble seen and not answered yet, those answered, and whether they are answered at all now. */
  readonly signs: Set<TroubleKind>;
  readonly answered: Set<TroubleKind>;
  answersSigns: boolean;
  /** What the main first read, Pa gauge; 0 before. */
  firstMainPa: number;
  readonly order: Order;
  view: View;
  mainReadingPa: number;
  /** What the head showed at each seat while its chamber stood at the main's pressure, Pa gauge: to be written down. */
  readonly proofPa: { tee: number; coupling: number };
  readonly setAside: Set<string>;
  /** What the service's own test stood at, Pa gauge, and the share of gas at the riser when it was purged. */
  lineTestPa: number;
  purgedShare: number;
  /** The ball was opened since the cap went on: what stands under the cap, nobody can bleed. */
  capFilled: boolean;
  /** Gas of the main was let in above the ball and has not been heard going: a silent bleed is then a blocked one. */
  gasAbove: boolean;
}

/** A crew at the beginning of its work, with what those before it read and set aside. */
export function crewOf(order: Order, first: View, heedsAlarm = true): Crew {
  const crew: Crew = {
    heedsAlarm,
    signs: new Set(),
    answered: new Set(),
    answersSigns: heedsAlarm,
    firstMainPa: 0,
    order,
    view: first,
    mainReadingPa: 0,
    proofPa: { tee: 0, coupling: 0 },
    setAside: new Set(),
    lineTestPa: 0,
    purgedShare: 0,
    capFilled: false,
    gasAbove: false,
  };
  remember(crew, first.facts);
  return crew;
}

/** Keeps of what was noticed what the work will want to know again. */
export function remember(crew: Crew, facts: readonly FeltFact[]): void {
  for (const fact of facts) {
    for (const sign of signsIn(fact)) if (!crew.answered.has(sign)) crew.signs.add(sign);
    switch (fact.fact) {
      case 'gauge.read':
        keep(crew, fact);
        break;
      case 'piece.rejected':
        crew.setAside.add(fact.piece);
        break;
      case 'piece.placed':
        if (isCap(crew.order, fact.piece)) crew.capFilled = false;
        break;
      case 'valve.turned':
        if (fact.openRad <= SHUT_RAD) break;
        crew.capFilled = true;
        if (mainOpen(crew.view.rig) && crew.view.rig.stopper !== 'set') crew.gasAbove = true;
        break;
      case 'plug.free':
      case 'tee.free':
        crew.gasAbove ||= fact.chamberClosed;
        break;
      case 'stopper.squeezed':
        crew.gasAbove ||= fact.turns === 0;
        break;
      case 'bleed.quiet':
        crew.gasAbove = false;
        break;
      case 'piece.removed':
        if (topKind(crew.view.rig) === null) crew.gasAbove = false;
        break;
      default:
    }
  }
}

const isCap = ({ kit }: Order, piece: string): boolean =>
  kit.some(({ id, kind }) => id === piece && kind === 'valveCap');

function keep(crew: Crew, { gauge, readingGaugePa, under }: FeltOf<'gauge.read'>): void {
  if (gauge === 'main') {
    crew.mainReadingPa = readingGaugePa;
    if (crew.firstMainPa === 0) crew.firstMainPa = readingGaugePa;
  }
  const proved = gauge === 'head' && crew.mainReadingPa > 0 && readingGaugePa >= crew.mainReadingPa;
  if (proved && under.saddleOn !== 'board') crew.proofPa[under.saddleOn] = readingGaugePa;
}
