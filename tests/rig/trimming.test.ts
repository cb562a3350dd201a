import { describe, expect, it } from 'vitest';
import { drive, steady } from '../../src/core/hands/index.ts';
import { act, setUp, stillAir, type Action, type RigState, type TeeSize } from '../../src/core/rig/index.ts';
import { advance, attempt, begin, type RunState } from '../../src/core/run/index.ts';
import { paired, tees } from '../scenarios/pairings.ts';

const ids = { '3/4': '34', '1': '1', '1-1/4': '114' } as const;
const cutRig = (tee: TeeSize): RigState => {
  const rig = setUp(paired('12', tee, 35).job);
  return { ...rig, plug: { ...rig.plug, at: 'out' }, branch: { ...rig.branch, cut: 'through' } };
};
const does = (rig: RigState, action: Action) => {
  const outcome = act(rig, action, stillAir);
  if (typeof outcome === 'string') throw new Error(`${action.kind}: ${outcome}`);
  return outcome;
};
const passes = (rig: RigState): boolean =>
  does(rig, { kind: 'gaugeRing.try' }).facts.some((f) => f.fact === 'gaugeRing.tried' && f.passes);

describe('a cut tee before it may come up through the rig', () => {
  // Swept circles of the handbook, mm (fitting dimensions from memory, body assumed), against a ring of 76.2 - 3 mm.
  it.each([
    ['3/4', 76, 48, 37],
    ['1', 88, 58, 45],
    ['1-1/4', 104, 72, 55],
  ] as const)('of NPS %s sweeps %i mm as cut, %i sawn flush and %i dressed', (tee, whole, sawn, dressed) => {
    const rig = cutRig(tee);
    const byTheSaw = does(rig, { kind: 'tee.trim', how: 'saw' }).rig;
    const byTheGrinder = does(byTheSaw, { kind: 'tee.trim', how: 'dress' }).rig;
    const sweptMm = [rig, byTheSaw, byTheGrinder].map((r) => r.tee.sweptM * 1000);
    [whole, sawn, dressed].forEach((told, i) => expect(Math.abs(sweptMm[i] - told)).toBeLessThan(1));
  });

  it.each(tees)(
    'of NPS %s does not pass the gauge ring as cut, and takes neither gasket nor saddle',
    (tee) => {
      const rig = cutRig(tee);
      expect(passes(rig)).toBe(false);
      const gasket = `cupGasket-${ids[tee]}`;
      expect(act(rig, { kind: 'piece.place', piece: gasket, holdBack: true }, stillAir)).toBe('doesNotFit');
      const collared = does(rig, {
        kind: 'piece.place',
        piece: `splitCollar-${ids[tee]}`,
        holdBack: true,
      }).rig;
      expect(act(collared, { kind: 'piece.place', piece: 'saddle', holdBack: true }, stillAir)).toBe(
        'doesNotFit',
      );
    },
  );

  it.each(tees)('of NPS %s passes once it is sawn and dressed', (tee) => {
    const sawn = does(cutRig(tee), { kind: 'tee.trim', how: 'saw' }).rig;
    expect(passes(does(sawn, { kind: 'tee.trim', how: 'dress' }).rig)).toBe(true);
  });

  it.each(tees)('of NPS %s stays in the main where the crew skips the trimming', (tee) => {
    const scenario = paired('12', tee, 35);
    const untrimmed = drive(scenario, steady).entries.filter(({ action }) => action.kind !== 'tee.trim');
    let run: RunState = begin(scenario);
    const hindered: string[] = [];
    for (const { atS, action } of untrimmed) {
      run = advance(run, Math.max(atS, run.busyUntilS));
      const attempted = attempt(run, action);
      if ('hindrance' in attempted) hindered.push(`${action.kind} ${attempted.hindrance}`);
      else run = attempted.run;
    }
    expect(hindered).toContain('piece.place doesNotFit');
    expect(run.facts.some((f) => f.fact === 'tee.free')).toBe(false);
    expect(run.rig.tee.at).toBe('coupling');
  });
});
