import { describe as group, expect, it } from 'vitest';
import scenarioFile from '../../scenarios/abandon-1in-tee-on-4in-main/scenario.json';
import { drive, hasty, steady } from '../../src/core/hands/index.ts';
import { barrelOn, tipZM } from '../../src/core/rig/index.ts';
import { read, trueFlows, truePressures, type RunState } from '../../src/core/run/index.ts';
import type { Scenario } from '../../src/core/scenario/index.ts';
import { describe, dotsAt, shownOf, type SceneView } from '../../src/scene/index.ts';

const scenario = scenarioFile as unknown as Scenario;

const view = (run: RunState): SceneView => {
  const truth = { pressuresGaugePa: truePressures(run), flows: trueFlows(run) };
  return describe(run.rig, shownOf(run, read(run), truth));
};

function everyNumber(value: unknown, path: string, wrong: string[]): void {
  if (typeof value === 'number' && !Number.isFinite(value)) wrong.push(path);
  else if (value !== null && typeof value === 'object') {
    for (const [key, part] of Object.entries(value)) everyNumber(part, `${path}.${key}`, wrong);
  }
}

group('a whole job can be drawn at every step', () => {
  it.each([
    ['steady', steady],
    ['hasty', hasty],
  ] as const)(
    'by the %s hand: every number a number, every piece once, tip where the rig has it',
    (_name, hand) => {
      let steps = 0;
      const kinds = new Set<string>();
      const cells = new Set<string>();
      drive(scenario, hand, (run) => {
        steps++;
        const seen = view(run);
        const wrong: string[] = [];
        everyNumber(seen, 'view', wrong);
        expect(wrong).toEqual([]);
        const ids = seen.items.map((i) => i.id);
        expect(new Set(ids).size).toBe(ids.length);
        seen.items.forEach((i) => kinds.add(i.kind));
        seen.gas.forEach((b) => cells.add(b.cell));
        const tip = seen.items.find((i) => ['socket', 'stopperHolder', 'magnet'].includes(i.kind));
        if (tip && barrelOn(run.rig)) expect(tip.position[2]).toBeCloseTo(tipZM(run.rig) ?? NaN, 9);
        for (const flow of seen.flows) expect(flow.kgPerS).toBeGreaterThan(0);
      });
      expect(steps).toBeGreaterThan(30);
      for (const kind of ['serviceTee', 'saddle', 'isolationValve', 'rod', 'boreStopper'])
        expect(kinds).toContain(kind);
      for (const cell of ['main', 'barrel', 'chamber', 'above', 'service1']) expect(cells).toContain(cell);
    },
  );

  it('a closed rig at rest draws streams only where something passes, and fewer than ten dots of them', () => {
    let quietest = Infinity;
    drive(scenario, steady, (run) => {
      if (run.rig.stack.some((p) => p.kind === 'testHead') && run.rig.testHead.ventOpen === 0) {
        quietest = Math.min(quietest, dotsAt(view(run).flows, [], 100).length);
      }
    });
    expect(quietest).toBeLessThan(10);
  });
});
