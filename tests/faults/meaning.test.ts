import { describe, expect, it } from 'vitest';
import { faultIds, faults, meaning } from '../../src/core/faults/index.ts';
import { PSI_PA } from '../../src/core/units/index.ts';
import { faultWords } from '../../src/text/faults/words.ts';
import { exercise } from '../judge/play.ts';

const job = exercise().job;
const usual = (id: (typeof faultIds)[number]): number => faults[id].severity?.usual ?? 1;

describe('what a fault costs', () => {
  it('is what the gas laws give for a nicked O-ring over the first chamber, within 2 %', () => {
    // Isothermal choked blow-down of air through CdA, worked by hand: dp/dt = CdA·p·Ψ·√(RT/M)/V with k 1.40,
    // Ψ = 0.6847, R 8.314, T 288.7 K, M 28.96 g/mol; volume of the first chamber 1.32 L (the handbook's, assumed).
    const upstream = 101325 + 35 * PSI_PA;
    const lossPaPerS = (9e-10 * upstream * 0.6847 * Math.sqrt((8.314 * 288.7) / 0.02896)) / 1.32e-3;
    const told = meaning(faults.oRingNicked, 9e-10, job);
    expect(told.says).toBe('firstChamber');
    expect(Math.abs(told.numbers.lossPaPerS / lossPaPerS - 1)).toBeLessThan(0.02);
  });

  it('of a change in temperature is the gas law’s 0.17 psi a kelvin', () => {
    // Handbook: 0.17 psi/K at 35 psig (from p/T of a shut volume).
    expect(meaning(faults.temperatureDrift, 1, job).numbers.pa / PSI_PA).toBeCloseTo(0.17, 2);
  });

  it.each(faultIds)('of %s grows with its severity, at every end finite', (id) => {
    const { severity } = faults[id];
    if (severity === null) return expect(meaning(faults[id], 1, job).says).toBe('asPlanted');
    const told = [severity.low, usual(id), severity.high].map((size) => {
      const { numbers } = meaning(faults[id], size, job);
      return Object.values(numbers)[0];
    });
    expect(told.every(Number.isFinite)).toBe(true);
    expect(told[0]).toBeLessThan(told[2]);
    expect(severity.usual).toBeGreaterThanOrEqual(severity.low);
    expect(severity.usual).toBeLessThanOrEqual(severity.high);
  });
});

describe('what is said of a fault', () => {
  it.each(['en', 'es'] as const)(
    'is there for every one in %s: what it is, how it shows, what to do',
    async (language) => {
      const words = await faultWords(language);
      expect(new Set(Object.keys(words))).toEqual(new Set(faultIds));
      for (const { what, noticed, act } of Object.values(words))
        for (const says of [what, noticed, act]) expect(says).toMatch(/^\p{Lu}.*\.$/u);
    },
  );

  it('is not the same in both languages', async () => {
    const [english, spanish] = [await faultWords('en'), await faultWords('es')];
    for (const id of faultIds) expect(spanish[id].what).not.toBe(english[id].what);
  });
});
