import { altered, type Manner } from './altered.ts';
import type { FeltFact } from './felt.ts';
import type { Step } from './hand.ts';
import { steady } from './steady/index.ts';

/** How much of a torque a heavy hand feels, and a light one (assumed: what a pull without a torque wrench is off by). */
const HEAVY_FEELS = 0.66;
const LIGHT_FEELS = 1.7;

/** A crew whose arms tell it that a thing is looser than it is: it pulls on past what is asked for. */
export const heavy = altered(steady, () => feeling(HEAVY_FEELS));

/** A crew whose arms tell it that a thing is tight when it is not: it stops short of what is asked for. */
export const light = altered(steady, () => feeling(LIGHT_FEELS));

function feeling(share: number): Manner {
  return {
    instead: (step) => ({ steps: [pulled(step, share)] }),
    feels: (fact) => feltAs(fact, share),
  };
}

/** A pull asked for by its torque is given until the arm believes it has been reached. */
function pulled(step: Step, share: number): Step {
  if ('waitS' in step || step.kind !== 'keeper.pull') return step;
  return { ...step, torqueNm: step.torqueNm / share };
}

/** What is drawn up by feel. An old thread that has to be broken loose is as stiff as it is to anybody. */
function feltAs(fact: FeltFact, share: number): FeltFact {
  switch (fact.fact) {
    case 'tensioner.turned':
    case 'stopper.squeezed':
    case 'keeper.turned':
    case 'closing.turned':
      return { ...fact, torqueNm: fact.torqueNm * share };
    default:
      return fact;
  }
}
