import type { Fact, GaugeName, LeakPlace, LookPlace, Sight, TroubleKind } from '../rig/index.ts';
import type { Felt, Story } from './fault.ts';

/** Any of several ways to notice. */
export function anyFelt(...ways: readonly Felt[]): Felt {
  return (fact, story, at) => ways.some((way) => way(fact, story, at));
}

/** The piece was looked over and the flaw seen. */
export function inspected(flaw: string): Felt {
  return (f, { on }) => f.fact === 'piece.inspected' && f.piece === on && f.found.includes(flaw);
}

/** Seen by eye at a place. */
export function looked(at: LookPlace, shows: (saw: Sight) => boolean): Felt {
  return (f) => f.fact === 'looked' && f.at === at && shows(f.saw);
}

/** Seen on a look round, or turned up by a task, a bleed or the saw. */
export function sign(what: TroubleKind): Felt {
  return (f) => signsOf(f).includes(what);
}

function signsOf(f: Fact): readonly TroubleKind[] {
  if (f.fact === 'looked') return f.saw.signs ?? [];
  if (f.fact === 'site.done' || f.fact === 'bleed.turned' || f.fact === 'branch.cut') return f.found ?? [];
  return [];
}

/** Bubbles under leak fluid at one of these places. */
export function bubblesAt(...places: readonly LeakPlace[]): Felt {
  return (f) => f.fact === 'leak.looked' && places.includes(f.at) && f.bubbles !== 'none';
}

/** The head's gauge moved between two readings with nothing touched, by more than a proof allows. */
export function headMoved(way: 'fell' | 'rose', over?: 'tee' | 'coupling'): Felt {
  return (fact, { facts, limits }, at) => {
    if (fact.fact !== 'gauge.read' || fact.gauge !== 'head') return false;
    if (over !== undefined && fact.under.saddleOn !== over) return false;
    for (let i = at - 1; i >= 0; i -= 1) {
      const before = facts[i];
      if (before.fact === 'pumped' || before.fact === 'vent.turned' || before.fact === 'valve.turned')
        return false;
      if (before.fact !== 'gauge.read' || before.gauge !== 'head') continue;
      const fell = before.readingGaugePa - fact.readingGaugePa;
      if (way === 'fell' ? fell > limits.dropPa : -fell > limits.risePa) return true;
    }
    return false;
  };
}

/** A puff from a bleed over the shut ball that had gone quiet before. */
export const puffOverShutBall: Felt = (fact, { facts }, at) => {
  if (fact.fact !== 'bleed.turned' || !fact.puff) return false;
  for (let i = at - 1; i >= 0; i -= 1) {
    const before = facts[i];
    if (before.fact === 'valve.turned') return false;
    if (before.fact === 'bleed.quiet') return shutBefore(facts, i);
  }
  return false;
};

function shutBefore(facts: Story['facts'], at: number): boolean {
  for (let i = at; i >= 0; i -= 1) {
    const fact = facts[i];
    if (fact.fact === 'valve.turned') return fact.openRad <= 0;
  }
  return false;
}

/** How long the first bleed after the bore was stopped hissed against what it should, as a share. */
export function stopHiss(is: (shareOfExpected: number) => boolean): Felt {
  return (fact, { facts, limits }, at) => {
    if (fact.fact !== 'bleed.quiet') return false;
    const squeezed = facts.findIndex((f) => f.fact === 'stopper.squeezed' && f.inBore);
    if (squeezed < 0 || squeezed > at) return false;
    const first = facts.findIndex((f, i) => i > squeezed && f.fact === 'bleed.quiet');
    return first === at && is(fact.hissedS / limits.expectedHissS);
  };
}

/** The main read otherwise than at the first reading, by more than sound gauges differ: Pa. */
const MAIN_MOVED_PA = 13790;

/** The main's gauge shows that its pressure has moved. */
export function mainMoved(way: 'up' | 'down'): Felt {
  return (fact, { facts }) => {
    if (fact.fact !== 'gauge.read' || fact.gauge !== 'main') return false;
    const first = facts.find((f) => f.fact === 'gauge.read' && f.gauge === 'main');
    if (first?.fact !== 'gauge.read') return false;
    const up = fact.readingGaugePa - first.readingGaugePa;
    return way === 'up' ? up > MAIN_MOVED_PA : -up > MAIN_MOVED_PA;
  };
}

/** Gas by the detector, whether read or by its alarm. */
export const gasInHole: Felt = (f, { limits }) =>
  (f.fact === 'gas.alarm' && f.step > 0) || (f.fact === 'detector.read' && f.lelShare >= limits.workLelShare);

/** A gauge that reads the main. */
export function onMain(gauge: GaugeName): boolean {
  return gauge === 'main' || gauge === 'second';
}
