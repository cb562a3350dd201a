import { describe, expect, it } from 'vitest';
import { evidence } from '../../src/core/procedure/index.ts';
import { crewFor, type Crew } from '../crew.ts';
import { expectNear } from '../consequences/law.ts';

/** Thread of an NPS 1 keeper, ASME B1.20.1: 11.5 to the inch; fully made up after L1 of 0.400 in and three turns. */
const PITCH_M = 0.0254 / 11.5;
const MADE_UP_TURNS = 0.4 * 11.5 + 3;
/** Gap under a keeper fully made up over a stopper at its nominal depth, m (the kit's own, assumed). */
const GAP_M = 0.003;
const NOMINAL_M = 0.004;

/** A stopper squeezed firm with its washer so far below the port, m, let go, and the keeper run in over it. */
function keeperOver(belowPortM: number): Crew {
  const crew = crewFor().upTo('plugDrawn').barrelOn('stopperHolder', 'boreStopper').clampsCollar(belowPortM);
  crew.opensValve().rodDown().squeezesTo(2.3).does({ kind: 'collar.set', travelM: null });
  crew
    .turnsRod(1 / 4)
    .rodUp()
    .shutsValve()
    .bleedsDown()
    .takesOff('rodBarrel');
  crew.barrelOn('socket', 'keeperPlug').opensValve().rodDown();
  return crew.turnsRod(4.6).turnsRod(1.2);
}

/** Where the thread puts the end of the stem, m below the port, after so many turns. */
const stemBelowPortM = (turns: number): number => NOMINAL_M - GAP_M - (MADE_UP_TURNS - turns) * PITCH_M;

describe('a keeper run down onto a stopper that was set too high', () => {
  it('pushes it before its stem, as far as its thread goes down', () => {
    const crew = keeperOver(-0.006);
    const { stopper, keeper } = crew.run.rig;
    expectNear(stopper.belowPortM, stemBelowPortM(keeper.engagedTurns), 0.01, 'm:');
    const byM = crew.told('stopper.pushed').reduce((sum, fact) => sum + fact.byM, 0);
    expectNear(byM, stopper.belowPortM + 0.006, 1e-6, 'm:');
  });

  it('and goes on pushing with every turn after that', () => {
    const crew = keeperOver(-0.006);
    const { stopper, keeper } = crew.run.rig;
    crew.turnsRod(0.05);
    const turns = crew.run.rig.keeper.engagedTurns - keeper.engagedTurns;
    expectNear(crew.run.rig.stopper.belowPortM - stopper.belowPortM, turns * PITCH_M, 0.001, 'm:');
  });

  it('leaves no gap, and so no evidence that the stop lies as it was proved', () => {
    const crew = keeperOver(-0.006);
    const { facts, scenario } = crew.run;
    const gap = evidence('H6', facts, scenario.limits, scenario.job).items.find(({ id }) => id === 'gap');
    expect(crew.last('keeper.turned').gapM).toBe(0);
    expect(gap?.met).toBe(false);
  });

  it('pushes nothing where the stopper lies right', () => {
    const crew = keeperOver(NOMINAL_M);
    expect(crew.told('stopper.pushed')).toHaveLength(0);
    const short = (MADE_UP_TURNS - crew.run.rig.keeper.engagedTurns) * PITCH_M;
    expectNear(crew.last('keeper.turned').gapM, GAP_M + short, 0.01, 'm:');
  });
});
