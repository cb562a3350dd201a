import type { Told } from './told.ts';
import { topOf, type Standing } from './standing.ts';
import { OPEN_RAD, SHUT_RAD, type KitKind } from '../rig/index.ts';

/**
 * One opening of the bleed, from crack to shut (or to when something else was moved). An open bleed that is quiet
 * says little by itself: it must have hissed first, and a weep is too fine to hear until it has been shut in.
 */
export interface Opening {
  readonly openedS: number;
  /** Until it was shut, the valve moved, the piece changed, or now, s. */
  readonly untilS: number;
  /** The valve below stood full open (`open`), shut (`shut`) or between. */
  readonly valve: 'open' | 'between' | 'shut';
  readonly top: KitKind | null;
  readonly load: Standing['load'];
  readonly puff: boolean;
  readonly aboveGaugePa: number;
  /** How long it was heard to hiss, s. */
  readonly hissedS: number;
  /** Quiet from then on, s; null while it still hissed. */
  readonly quietFromS: number | null;
  /** How long the bleed had been shut over the same standing valve and piece, s. */
  readonly shutForS: number;
  /** The rod was in somebody's hands while it was shut and as it opened. */
  readonly rodHeld: boolean;
  /** The hose led out of the hole as it opened. */
  readonly hoseAway: boolean;
}

/** How long an opening stayed quiet, s. */
export function quietFor(opening: Opening): number {
  return opening.quietFromS === null ? 0 : opening.untilS - opening.quietFromS;
}

/**
 * Bled quiet, shut in so long, and opened again without a puff, then or later. Opening it once more after that takes
 * nothing back unless it puffs.
 */
export function shutInQuiet(all: readonly Opening[], shutS: number): boolean {
  const puffedAt = all.reduce((last, o, i) => (o.puff ? i : last), -1);
  const reopened = all.slice(Math.max(1, puffedAt + 1));
  return all.some((o) => o.quietFromS !== null) && reopened.some((o) => o.shutForS >= shutS);
}

type Draft = { -readonly [K in keyof Opening]: Opening[K] };

/** Every opening of the bleed in the order it happened. */
export function openings(told: Told): readonly Opening[] {
  const found: Draft[] = [];
  let current: Draft | null = null;
  let shutSinceS: number | null = null;
  let heldSinceShut = true;
  const close = (atS: number): void => {
    if (current) current.untilS = atS;
    current = null;
  };
  told.facts.forEach((fact, i) => {
    const standing = told.stood[i];
    if (!standing) return;
    if (!standing.held) heldSinceShut = false;
    switch (fact.fact) {
      case 'bleed.turned': {
        const isOpen = fact.openRad > 0;
        const wasOpen = i > 0 && told.stood[i - 1].bleedOpenRad > 0;
        if (isOpen && !wasOpen) {
          current = begin(fact.atS, fact.puff, fact.aboveGaugePa, standing, shutSinceS, heldSinceShut);
          found.push(current);
        } else if (isOpen && current && current.quietFromS !== null && fact.puff) {
          current.puff = true;
          current.quietFromS = null;
        } else if (!isOpen && wasOpen) {
          close(fact.atS);
          shutSinceS = fact.atS;
          heldSinceShut = standing.held;
        }
        return;
      }
      case 'bleed.quiet':
        if (current) {
          current.hissedS += fact.hissedS;
          current.quietFromS = fact.atS;
        }
        return;
      case 'listened':
        if (!current) return;
        if (fact.heard) current.quietFromS = null;
        else current.quietFromS ??= fact.atS;
        return;
      case 'valve.turned':
      case 'piece.placed':
      case 'piece.removed': {
        const stayedQuiet = current !== null && current.quietFromS !== null && shutting(told, i);
        close(fact.atS);
        shutSinceS = fact.atS;
        heldSinceShut = standing.held;
        if (standing.bleedOpenRad > 0) {
          current = begin(fact.atS, false, 0, standing, null, standing.held);
          current.quietFromS = stayedQuiet ? fact.atS : null;
          found.push(current);
        }
        return;
      }
      default:
    }
  });
  close(told.nowS);
  return found;
}

/** The valve below was turned towards shut: what was quiet before stays so. */
function shutting(told: Told, index: number): boolean {
  const fact = told.facts[index];
  return fact.fact === 'valve.turned' && index > 0 && fact.openRad < told.stood[index - 1].valveOpenRad;
}

function begin(
  atS: number,
  puff: boolean,
  aboveGaugePa: number,
  standing: Standing,
  shutSinceS: number | null,
  rodHeld: boolean,
): Draft {
  return {
    openedS: atS,
    untilS: atS,
    valve:
      standing.valveOpenRad >= OPEN_RAD ? 'open' : standing.valveOpenRad <= SHUT_RAD ? 'shut' : 'between',
    top: topOf(standing),
    load: standing.load,
    puff,
    aboveGaugePa,
    hissedS: 0,
    quietFromS: puff ? null : atS,
    shutForS: shutSinceS === null ? 0 : atS - shutSinceS,
    rodHeld,
    hoseAway: standing.hose === 'away',
  };
}
