import { describe as group, expect, it } from 'vitest';
import scenario from '../../scenarios/abandon-1in-tee-on-4in-main/scenario.json';
import { act, setUp, stillAir, type Action, type Job, type RigState } from '../../src/core/rig/index.ts';
import { describe, nothingShown } from '../../src/scene/index.ts';

const job = scenario.job as unknown as Job;
const place = (piece: string): Action => ({ kind: 'piece.place', piece, holdBack: true });
/** Forty strokes a minute. */
const strokeS = 1.5;

function doing(rig: RigState, ...actions: Action[]): RigState {
  return actions.reduce((now, action) => {
    const outcome = act(now, action, stillAir);
    if (typeof outcome === 'string') throw new Error(`${JSON.stringify(action)} is hindered: ${outcome}`);
    return outcome.rig;
  }, rig);
}

/** How far the plunger is in at a time, 0 to 1, by the picture of a rig that the judge would see. */
function plunger(rig: RigState, atS: number): number {
  const { items } = describe(rig, { ...nothingShown, readings: { headGaugePa: 0, atS } });
  return items.find((one) => one.kind === 'testHead')?.joints.pumpStroke ?? NaN;
}

group('the hand pump’s plunger', () => {
  const built = doing(
    setUp(job),
    place('seatRing-1'),
    place('saddle'),
    place('isolationValve'),
    place('testHead'),
  );
  const pumping = doing(built, { kind: 'pump.stroke', strokes: 4 });

  it('stands out while nobody pumps', () => {
    expect(plunger(built, 0)).toBe(0);
  });

  it('goes in and comes out again once a stroke', () => {
    const inAt = [0, 1, 2, 3].map((stroke) => plunger(pumping, (stroke + 0.5) * strokeS));
    const outAt = [0, 1, 2, 3, 4].map((stroke) => plunger(pumping, stroke * strokeS));
    inAt.forEach((share) => expect(share).toBeGreaterThan(0.99));
    outAt.forEach((share) => expect(share).toBeLessThan(0.01));
    expect(plunger(pumping, 0.25 * strokeS)).toBeCloseTo(0.5, 2);
  });

  it('is out when the last stroke is done', () => {
    expect(plunger(pumping, 4 * strokeS + 10)).toBe(0);
  });
});
