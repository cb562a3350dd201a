import { describe, expect } from 'vitest';
import { crewFor, type Crew } from '../crew.ts';
import { absPa, ATM_PA, inSeriesKgPerS, MM2, openings, PSI_PA } from './handbook.ts';
import { consequence, expectNear } from './law.ts';

/** What a ring of another size leaves open, m² effective (assumed: 6 mm²). */
const WRONG_RING_M2 = 6 * MM2;
/** Hand pump: 0.15 L at 40 strokes a minute of air of 1.2232 kg/m³ (p·M/(R·T) at 60 °F). */
const PUMPED_KG_PER_S = ((0.15e-3 * 40) / 60) * 1.2232;

function underTestOn(ring: string): Crew {
  return crewFor().takes('seatRing', ring).upTo('sealedOnTee').underTest();
}

describe('a seat ring of the wrong size', () => {
  consequence('never pumps up: forty strokes hold 0.03 psi, what so small a drop needs through 6 mm²', () => {
    const crew = underTestOn('seatRing-34').pumps(39);
    crew.begins({ kind: 'pump.stroke', strokes: 10 }).waits(10);
    // Torricelli for a small drop, W = CdA·√(2ρ·Δp); at two thousandths of the pressure the nozzle law's own smooth
    // band (δ 1e-3) takes a further (1 + (δ·p/Δp)²)^(-1/4) off the flow, so the drop stands that much higher
    const dropPa = crew.gaugePa('above');
    const torricelli = WRONG_RING_M2 * Math.sqrt(2 * 1.2232 * dropPa);
    const band = (1 + ((1e-3 * (ATM_PA + dropPa)) / dropPa) ** 2) ** -0.25;
    expectNear(torricelli * band, PUMPED_KG_PER_S, 0.02, 'kg/s:');
    // our own sheet of behaviour, to its last figure
    expect(Math.abs(dropPa / PSI_PA - 0.03)).toBeLessThanOrEqual(0.005);
    expect(crew.reads.headGaugePa).toBe(0);
  });

  consequence('stands no higher for pumping longer, while the right ring gains a stroke by a stroke', () => {
    const after = (ring: string, strokes: number): number => {
      const crew = underTestOn(ring).pumps(strokes - 10);
      return crew.begins({ kind: 'pump.stroke', strokes: 10 }).waits(14.9).gaugePa('above');
    };
    expectNear(after('seatRing-34', 40), after('seatRing-34', 20), 0.01);
    expectNear(after('seatRing-1', 20), 2 * after('seatRing-1', 10), 0.02);
    expectNear(after('seatRing-34', 20) + ATM_PA, ATM_PA, 0.003);
  });

  consequence('blows once the plug is drawn under it: bore, thread and gap in a row by API 520', () => {
    const crew = crewFor().takes('seatRing', 'seatRing-34').upTo('sealedOnTee').barrelOn('socket', null);
    crew.opensValve().rodDown().turnsRod(-8).waits(10);
    const flow = inSeriesKgPerS([openings.lowerBore, openings.topThread, WRONG_RING_M2], absPa(35));
    expectNear(crew.kgPerS('seat'), flow, 0.05, 'kg/s:');
    expect(crew.last('blow.began').from).toBe('seat');
  });
});
