import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/judge/index.ts';
import { atPsig, crewFor, type Crew } from '../crew.ts';

/**
 * What fails a run whatever its points. A verdict can be critical for more than one reason at once, so that each is
 * asked here for its own gravity: the finding itself must say it.
 */
const grave: readonly (readonly [says: string, id: string, play: () => Crew])[] = [
  [
    'the top plug screwed out with nothing above it',
    'plugOutOpen',
    () => crewFor().does({ kind: 'plug.turn', turns: -8, holdBack: true }),
  ],
  [
    'the tee screwed out with nothing above it',
    'teeOutOpen',
    () => crewFor().upTo('serviceParted').does({ kind: 'tee.turn', turns: -8, holdBack: true }),
  ],
  [
    'the branch sawn with the stop unproved',
    'cutStopUnproved',
    () => crewFor().does({ kind: 'branch.cut', part: 'through' }),
  ],
  ['the rod let go at 60 psig, near enough to its stop to hurt nobody', 'rodThrown', () => rodLetGo(60)],
  [
    'a top plug that strikes',
    'thrown',
    () => crewFor(atPsig(60)).does({ kind: 'plug.turn', turns: -8, holdBack: true }),
  ],
  [
    'the barrel lifted off a live chamber',
    'openedUnderPressure',
    () => crewFor().upTo('plugDrawn').barrelOn('socket', null).opensValve().waits(10).takesOff('rodBarrel'),
  ],
  [
    'the valve opened on a live chamber with nothing on it',
    'openedUnderPressure',
    () => crewFor().upTo('plugDrawn').turnsValve(1),
  ],
  [
    'chains let go with the main in the saddle',
    'chainLetGo',
    () => {
      const crew = crewFor().upTo('sealedOnTee').barrelOn('socket', null).opensValve().rodDown();
      crew.turnsRod(-8).rodUp().shutsValve().waits(10);
      for (const side of ['left', 'right'] as const)
        for (const chain of [0, 1]) crew.tries({ kind: 'tensioner.turn', chain, side, turns: -3 });
      for (const chain of [0, 1]) crew.tries({ kind: 'chain.hook', chain, hooked: false });
      return crew;
    },
  ],
  [
    'a hole that can burn with a flame left beside it',
    'flammableAtSource',
    () => blowing({ ignitionSource: true }),
  ],
  ['gas that did burn', 'gasIgnited', () => blowing({ ignitionSource: true })],
  ['a job called complete with nothing done', 'completedUndone', () => crewFor().does({ kind: 'finish' })],
  [
    'a job referred back with the tee open to the hole',
    'stoppedUnsafe',
    () =>
      crewFor(atPsig(1)).does(
        { kind: 'plug.turn', turns: -8, holdBack: true },
        { kind: 'refer', reason: 'other' },
      ),
  ],
  [
    'work gone on with above the rating',
    'wentOnAboveRating',
    () => crewFor(atPsig(61)).does({ kind: 'plug.turn', turns: -1 / 12, holdBack: true }),
  ],
  [
    'a saddle set on a boss beyond use',
    'wentOnBossBeyondUse',
    () => crewFor((job) => (job.workpiece.boss = 'beyondUse')).upTo('sealedOnTee'),
  ],
];

function rodLetGo(psig: number): Crew {
  return crewFor(atPsig(psig))
    .upTo('plugDrawn')
    .barrelOn('socket', null)
    .letsGoOfRod()
    .waits(5)
    .opensValve()
    .waits(5);
}

/** The plug drawn through nothing: gas blows into the hole until its air can burn. */
function blowing(site: { ignitionSource: boolean }): Crew {
  const crew = crewFor((job) => Object.assign(job.site, site));
  return crew.does({ kind: 'plug.turn', turns: -3, holdBack: true }).waits(60);
}

describe('what fails a run whatever its points', () => {
  it.each(grave)('%s is critical of itself (%s)', (_, id, play) => {
    const { findings, verdict } = assess(play().run);
    const named = findings.filter((finding) => finding.id === id);
    expect(named.map((finding) => finding.critical)).toEqual(named.map(() => true));
    expect(named).not.toHaveLength(0);
    expect(verdict).toBe('critical');
  });

  it('a barrel lifted off what little a quiet bleed leaves is no critical matter', () => {
    const crew = crewFor().upTo('plugDrawn').barrelOn('socket', null).opensValve().waits(10);
    const { findings } = assess(crew.shutsValve().bleedsDown().takesOff('rodBarrel').run);
    expect(findings.filter((finding) => finding.id === 'openedUnderPressure')).toEqual([]);
  });
});
