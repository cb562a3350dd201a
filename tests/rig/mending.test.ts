import { describe, expect, it } from 'vitest';
import { crewFor, spoilt, type Crew, type Job } from '../crew.ts';

const seized = (breakNm: number) => (job: Job) => void (job.workpiece.plugBreakNm = breakNm);
const pulls = (crew: Crew): number => {
  crew.does({ kind: 'plug.turn', turns: -1 / 12, holdBack: true });
  return crew.last('plug.turned').torqueNm;
};

describe('penetrating oil', () => {
  it('does nothing at once, and in half an hour lets a plug go that no wrench moved', () => {
    const crew = crewFor(seized(450));
    expect(pulls(crew)).toBe(420);
    expect(crew.run.rig.plug.turnsBack).toBe(0);
    crew.does({ kind: 'oil.apply', at: 'plug' });
    expect(pulls(crew.copy())).toBe(420);
    crew.waits(1800);
    // 450 N·m less 40 % of it times 1 − e^(−1800/600), both assumed
    const soaked = 450 * (1 - 0.4 * (1 - Math.exp(-1820 / 600)));
    expect(Math.abs(pulls(crew) - soaked)).toBeLessThan(0.01);
    expect(crew.run.rig.plug.turnsBack).toBeGreaterThan(0);
  });

  it('reaches only a thread that lies bare', () => {
    const crew = crewFor().upTo('sealedOnTee');
    expect(crew.tries({ kind: 'oil.apply', at: 'plug' })).toBe('covered');
  });
});

describe('a rag and a wire', () => {
  it('take grit off a ring and oil off a stopper, and leave a nick and worn rubber as they are', () => {
    const crew = crewFor(
      spoilt('seatRing-1', { gritCdAM2: 1e-7 }),
      spoilt('boreStopper-1', { oily: true, rubberWornCdAM2: 1e-8 }),
    );
    crew.does({ kind: 'piece.clean', piece: 'seatRing-1' }, { kind: 'piece.clean', piece: 'boreStopper-1' });
    expect(crew.run.rig.kit['seatRing-1'].defects).toEqual({});
    expect(crew.run.rig.kit['boreStopper-1'].defects).toEqual({ rubberWornCdAM2: 1e-8 });
    expect(crew.told('piece.cleaned').map((f) => f.cameOff)).toEqual([['gritCdAM2'], ['oily']]);
  });

  it('free a blocked bleed where it stands: it was silent over a full barrel, and hisses', () => {
    const crew = crewFor(spoilt('rodBarrel', { bleedBlocked: 1 })).upTo('sealedOnTee');
    crew.barrelOn('socket', null).opensValve().rodDown().turnsRod(-8).rodUp().opensBleed();
    expect(crew.reads.bleedHeard).toBe(false);
    expect(crew.gaugePa('above')).toBeGreaterThan(2e5);
    crew.does({ kind: 'bleed.clear' });
    expect(crew.last('bleed.cleared').cameOut).toBe(true);
    expect(crew.waits(1).reads.bleedHeard).toBe(true);
  });
});

describe('a blower', () => {
  it('clears the hole in a fraction of the time still air takes', () => {
    const gassed = crewFor().upTo('sealedOnTee');
    gassed.does({ kind: 'hose.lead', outlet: 'inHole' });
    gassed.barrelOn('socket', null).opensValve().rodDown().turnsRod(-8).rodUp().shutsValve().opensBleed();
    gassed.waits(10);
    const left = gassed.copy().waits(45 + 120);
    gassed.does({ kind: 'site.do', task: 'ventilate' }).waits(120);
    expect(left.lelShare).toBeGreaterThan(0.002);
    expect(gassed.lelShare).toBeLessThan(left.lelShare / 5);
  });
});

describe('a stopper that drops from a weak holder', () => {
  const loaded = (seed: number): Crew => {
    const crew = crewFor(spoilt('stopperHolder', { weakDetent: true }));
    Object.assign(crew.scenario, { seed });
    return crew.upTo('plugDrawn').barrelOn('stopperHolder', 'boreStopper');
  };
  const dropped = (seed: number): Crew => loaded(seed).opensValve().rodDown(0.3);
  const seeds = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
  const falls = seeds.map((seed) => dropped(seed));

  it('hangs across the port or is gone into the main, as chance has it', () => {
    const where = falls.map((crew) => crew.last('stopper.dropped').into);
    expect(new Set(where)).toEqual(new Set(['tee', 'main']));
    for (const crew of falls) {
      const lost = crew.last('stopper.dropped').into === 'main';
      expect(crew.run.rig.kit['boreStopper-1'].where === 'lost').toBe(lost);
    }
  });

  it('is fetched by the magnet through the valve, and may be used again', () => {
    const crew = falls.find((one) => one.last('stopper.dropped').into === 'tee');
    if (crew === undefined) throw new Error('none of the seeds leaves it in the tee');
    crew.rodUp().shutsValve().bleedsDown().takesOff('rodBarrel');
    crew.does({ kind: 'rod.fit', tip: 'magnet' }).puts('rodBarrel').holdsRod().opensValve().rodDown();
    expect(crew.last('rod.engaged').with).toBe('stopper');
    crew.rodUp().shutsValve().bleedsDown().takesOff('rodBarrel').does({ kind: 'rod.load', piece: null });
    expect(crew.run.rig.kit['boreStopper-1'].where).toBe('board');
    expect(crew.run.rig.stopper.at).toBe('board');
  });

  it('lies on the shut ball where it fell above it, and goes down when the ball is opened', () => {
    const crew = loaded(3);
    crew.takesOff('rodBarrel').puts('upperSpool').puts('rodBarrel').holdsRod().rodUp().rodDown(0.5);
    expect(crew.last('stopper.dropped').into).toBe('valve');
    crew.opensValve();
    expect(['tee', 'main']).toContain(crew.last('stopper.dropped').into);
  });
});
