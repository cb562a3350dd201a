import { describe, expect, it } from 'vitest';
import { crewFor, type Crew } from '../crew.ts';

/** Lowest and highest pressure under the saddle while so many seconds pass, Pa gauge, and steps at the pace of a watch. */
function swing(crew: Crew, durationS: number): { low: number; high: number } {
  let [low, high] = [Infinity, 0];
  for (let atS = 0; atS < durationS; atS += 1) {
    const now = crew.waits(1).gaugePa('chamber');
    [low, high] = [Math.min(low, now), Math.max(high, now)];
  }
  return { low, high };
}

/*
 * Two ways astray that random crews found: seated and lifted were two states of the rig, and gas that hovered between
 * them swung from one to the other, every two milliseconds at the first seat and every ten seconds at the second.
 */
describe('a saddle that gas has lifted', () => {
  it('hovers over the boss where chains are slack and the chamber is live', () => {
    const crew = crewFor().upTo('plugDrawn').barrelOn('socket', null).opensValve().drawsUp(-3).waits(30);
    expect(crew.last('saddle.lifted').forceN).toBeGreaterThan(0);
    const { low, high } = swing(crew, 30);
    expect(high / low - 1).toBeLessThan(1e-3);
    expect(crew.told('saddle.lifted')).toHaveLength(1);
    expect(crew.told('blow.began')).toHaveLength(1);
  });

  it('hovers on its gasket where a plug three turns in feeds it', () => {
    const crew = crewFor().upTo('teeDrawn').takesOff('valveCap').barrelOn('socket', 'closingPlug');
    crew
      .opensValve()
      .rodDown()
      .turnsRod(-1 / 4)
      .turnsRod(3)
      .rodUp()
      .drawsUp(-3)
      .waits(30);
    const { low, high } = swing(crew, 40);
    expect(low).toBeGreaterThan(3e4);
    expect(high / low - 1).toBeLessThan(1e-3);
    expect(crew.told('blow.began')).toHaveLength(1);
  });
});
