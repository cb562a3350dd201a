import { describe, expect, it } from 'vitest';
import { render, screen } from '@testing-library/svelte';
import { PSI_PA } from '../../src/core/units/index.ts';
import { dialFaces, Gauge, pointerAngle } from '../../src/panel/index.ts';

describe('a round gauge', () => {
  it('points to the numeral it reads, over three quarters of its face', () => {
    for (const numeral of dialFaces.us.numerals)
      expect(pointerAngle(Number(numeral.text) * PSI_PA, dialFaces.us)).toBeCloseTo(
        numeral.angle === -135 ? -135 : numeral.angle,
        6,
      );
    expect(pointerAngle(0, dialFaces.us)).toBe(-135);
    expect(pointerAngle(700_000, dialFaces.si)).toBeCloseTo(135, 6);
  });

  it('has a division for every psi and a longer one for every fifth', () => {
    expect(dialFaces.us.ticks).toHaveLength(101);
    expect(dialFaces.us.ticks.filter((tick) => tick.long)).toHaveLength(21);
  });

  it('stops a little past full scale and rests on its pin below zero', () => {
    expect(pointerAngle(1e9, dialFaces.us)).toBeLessThan(145);
    expect(pointerAngle(-1e9, dialFaces.us)).toBeGreaterThan(-145);
  });

  it('says its reading in the units chosen, and that it is not on the rig when it is not', async () => {
    const { rerender } = render(Gauge, { name: 'Main', readingGaugePa: 35 * PSI_PA, system: 'us' });
    expect(screen.getByRole('figure').textContent).toContain('35.0 psig');
    await rerender({ system: 'si' });
    expect(screen.getByRole('figure').textContent).toContain('241 kPa');
    await rerender({ readingGaugePa: null });
    expect(screen.getByRole('figure').textContent).toContain('not on the rig');
  });
});
