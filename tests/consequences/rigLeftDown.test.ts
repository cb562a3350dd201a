import { describe, expect } from 'vitest';
import { due } from '../../src/core/procedure/index.ts';
import { could, read, type RunState } from '../../src/core/run/index.ts';
import { atPsig, crewFor, type Crew } from '../crew.ts';
import { absPa, circleM2, inSeriesKgPerS, openings, PSI_PA } from './handbook.ts';
import { consequence, expectNear } from './law.ts';

/** From the main through the tee's bore, its top thread and the open ball to the open top. */
const way = [openings.lowerBore, openings.topThread, openings.rigBore, openings.rigBore];

/** Plug out, barrel on, rod down through the open ball, and the barrel unscrewed where it stands. */
function liftedRodDown(psig: number): Crew {
  const crew = crewFor(atPsig(psig)).upTo('plugDrawn').barrelOn('socket', null);
  crew.opensValve().rodDown().opensBleed().waits(30).shutsBleed();
  return crew.takesOff('rodBarrel');
}

const advised = (run: RunState) => due(run, (action) => could(run, action) === null, read(run));

describe('the barrel taken off with its rod down through the open ball', () => {
  consequence('is thrown by the main’s own pressure, 247 lbf at 35 psig, and ends the job', () => {
    const crew = liftedRodDown(35);
    expectNear(crew.last('piece.removed').thrustN, 35 * PSI_PA * circleM2(0.0762), 0.01, 'N:');
    expect(crew.run.rig.ending).toEqual({ kind: 'hurt', cause: 'stackThrown' });
  });

  consequence('at 10 psig can be held, and leaves the main blowing by the open ball as API 520 gives', () => {
    const crew = liftedRodDown(10);
    expect(crew.run.rig.ending).toBeNull();
    expect(crew.run.rig.valve.openRad).toBeGreaterThan(1.5);
    expect(crew.run.rig.rod).toMatchObject({ travelM: 0, engaged: null, held: false });
    crew.waits(1);
    expectNear(crew.kgPerS('open'), inSeriesKgPerS(way, absPa(10)), 0.05, 'kg/s:');
    expect(crew.last('blow.began').from).toBe('open');
  });

  consequence('leaves a ball that nothing stands in: shut, it stops the blow', () => {
    const crew = liftedRodDown(10).waits(20);
    expect(crew.told('blow.ended')).toHaveLength(0);
    crew.shutsValve().waits(2);
    expect(crew.told('blow.ended')).toHaveLength(1);
    expectNear(crew.gaugePa('chamber'), 10 * PSI_PA, 0.02, 'Pa:');
  });

  consequence('does not come off while a firm stopper holds its holder in the bore', () => {
    const crew = crewFor(atPsig(10)).upTo('stopProved');
    expect(crew.tries({ kind: 'piece.remove', piece: crew.piece('rodBarrel'), holdBack: true })).toBe(
      'heldByThread',
    );
    crew.does({ kind: 'innerRod.turn', turns: -10 }, { kind: 'collar.set', travelM: null });
    expect(crew.tries({ kind: 'piece.remove', piece: crew.piece('rodBarrel'), holdBack: true })).toBeNull();
    expect(crew.run.rig.rod.load).toBe('stopper');
    expectNear(crew.kgPerS('open'), inSeriesKgPerS(way, absPa(10)), 0.05, 'kg/s:');
  });
});

describe('a blow that goes on', () => {
  consequence('sends everybody out, and after a minute to the valves of the main', () => {
    const crew = liftedRodDown(10).does({ kind: 'leaveHole' });
    expect(crew.told('blow.began')).toHaveLength(1);
    const { atS } = crew.last('blow.began');
    crew.waits(Math.max(0, atS + 40 - crew.clockS));
    expect(advised(crew.run)?.why).not.toBe('isolateMain');
    crew.waits(21);
    expect(advised(crew.run)?.action).toEqual({ kind: 'site.do', task: 'findShutoff' });
    crew.does({ kind: 'site.do', task: 'findShutoff' });
    const next = advised(crew.run);
    expect(next?.why).toBe('isolateMain');
    expect(next?.action).toEqual({ kind: 'main.isolate' });
    crew.does({ kind: 'main.isolate' }).waits(1);
    expect(crew.run.rig.ending).toEqual({ kind: 'isolated' });
    // all that blew until the valves were reached, as API 520 gives it for the time it took
    const blewS = crew.last('ended').atS - atS;
    expectNear(crew.lostKg('toHole'), blewS * inSeriesKgPerS(way, absPa(10)), 0.06, 'kg:');
  });
});
