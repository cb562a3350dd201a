import { drawUniform, seedGenerator } from '../../units/index.ts';
import { sealRecord, type RunRecord } from '../../run/index.ts';
import type { Scenario } from '../../scenario/index.ts';
import { inventedMorning } from './day.ts';
import { performPlan, steadyPlan, type Plan } from './plan.ts';
import { skipsFirstProof, slipNames, slips, type Draw } from './slips.ts';

export interface CohortSize {
  /** Exercises that are performed; each trainee keeps to one. */
  readonly scenarios: readonly Scenario[];
  /** How many runs. */
  readonly size: number;
  readonly seed: number;
}

/** A run of a trainee who does not exist. */
export interface InventedRun {
  /** A file name that no other run of the cohort has. */
  readonly name: string;
  readonly record: RunRecord;
}

/** Most attempts of one trainee, and how much of the slips is left from one to the next. */
const ATTEMPTS_MOST = 4;
const LEARNT_SHARE = 0.55;

/** All sit the exercise as an assessment. */
const assessed = { mode: 'assessment', asked: 0 } as const;

/** One who does not exist: how many slips a first attempt has, and how prone to each. */
interface Trainee {
  readonly name: string;
  readonly scenario: Scenario;
  readonly attempts: number;
  readonly slipsAtFirst: number;
  readonly prone: readonly number[];
  readonly firstDay: number;
}

/**
 * Invents a cohort: the steady crew's job with personal slips, fewer from attempt to attempt. The same exercises, size
 * and seed give the same runs to the last bit. All sign honestly but one: exactly one run of the cohort holds a false
 * signature, at the first proof. Throws RangeError without an exercise.
 */
export function* cohort({ scenarios, size, seed }: CohortSize): Generator<InventedRun, void, undefined> {
  if (scenarios.length === 0) throw new RangeError('no exercise to perform');
  const draw = drawFrom(seed);
  const plans = new Map<string, Plan>();
  const liar = Math.min(size - 1, Math.floor(size * (0.3 + 0.4 * draw())));
  let made = 0;
  for (let nth = 0; made < size; nth += 1) {
    const trainee = invent(nth, scenarios, draw);
    const { scenario } = trainee;
    const plan = plans.get(scenario.id) ?? steadyPlan(scenario);
    plans.set(scenario.id, plan);
    for (let attempt = 1; attempt <= trainee.attempts && made < size; attempt += 1) {
      const slipped = slip(plan, trainee, attempt, draw);
      const lies = made === liar;
      const { entries, run } = performPlan(
        scenario,
        lies ? skipsFirstProof(slipped) : slipped,
        lies ? 'H2' : null,
      );
      const begunAt = inventedMorning(trainee.firstDay + 7 * (attempt - 1), Math.floor(draw() * 120));
      const by = { person: trainee.name, attempt, begunAt };
      made += 1;
      const number = String(made).padStart(4, '0');
      yield {
        name: `${number}-${trainee.name.toLowerCase().replace(' ', '-')}-${attempt}.run.json`,
        record: sealRecord(scenario, entries, run, { by, sitting: assessed }),
      };
    }
  }
}

function invent(nth: number, scenarios: readonly Scenario[], draw: Draw): Trainee {
  return {
    name: `Trainee ${String(nth + 1).padStart(3, '0')}`,
    scenario: scenarios[nth % scenarios.length],
    attempts: 1 + Math.floor(ATTEMPTS_MOST * draw()),
    slipsAtFirst: 8 * draw() * draw() + 0.5,
    prone: slipNames.map(() => draw() * draw()),
    firstDay: nth % 60,
  };
}

function slip(plan: Plan, { slipsAtFirst, prone }: Trainee, attempt: number, draw: Draw): Plan {
  let expected = slipsAtFirst;
  for (let i = 1; i < attempt; i += 1) expected *= LEARNT_SHARE;
  const count = Math.floor(expected + draw());
  const all = prone.reduce((sum, share) => sum + share, 0);
  let slipped = plan;
  for (let i = 0; i < count; i += 1) {
    let left = draw() * all;
    const at = prone.findIndex((share) => (left -= share) < 0);
    slipped = slips[slipNames[at < 0 ? slipNames.length - 1 : at]](slipped, draw);
  }
  return slipped;
}

function drawFrom(seed: number): Draw {
  let generator = seedGenerator(seed);
  return () => {
    const drawn = drawUniform(generator);
    generator = drawn.generator;
    return drawn.value;
  };
}
