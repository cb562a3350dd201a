import { describe, expect, it } from 'vitest';
import { faultIds, faults, meaning } from '../../src/core/faults/index.ts';
import { PSI_PA } from '../../src/core/units/index.ts';
import { faultSpeech, sayMeaning } from '../../src/text/faults/meaning/say.ts';
import { faultWords } from '../../src/text/faults/words.ts';
import { unitsOf } from '../../src/text/index.ts';
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
    expect(told.says).toBe('bothChambers');
    expect(Math.abs(told.numbers.firstPaPerS / lossPaPerS - 1)).toBeLessThan(0.02);
    expect(told.numbers.secondPaPerS).toBeLessThan(told.numbers.firstPaPerS);
  });

  it('of that O-ring is more where the main stands lower, for gas presses it to', () => {
    const low = exercise((s) => (s.job.system.mainPressureGaugePa = 10 * PSI_PA)).job;
    const perPa = (of: typeof job): number =>
      meaning(faults.oRingNicked, 9e-10, of).numbers.firstPaPerS / (101325 + of.system.mainPressureGaugePa);
    expect(perPa(low)).toBeGreaterThan(1.2 * perPa(job));
  });

  it('of an O-ring above the ball is gas, for no proof holds it', () => {
    expect(meaning(faults.oRingNicked, 9e-10, job, 'rodBarrel').says).toBe('gasLost');
    expect(meaning(faults.oRingNicked, 9e-10, job, 'testHead').says).toBe('bothChambers');
  });

  it('of a main that moves is where it comes to stand', () => {
    const { numbers } = meaning(faults.regulatorCreep, 10 * PSI_PA, job);
    expect(numbers.mainGaugePa / PSI_PA).toBeCloseTo(45, 1);
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

describe('what a fault comes to, in words', () => {
  const said = async (
    language: 'en' | 'es',
    id: (typeof faultIds)[number],
    size = usual(id),
  ): Promise<string> =>
    sayMeaning(id, meaning(faults[id], size, job), await faultSpeech(language), unitsOf('us'));

  it('is a live sentence with the figures of this job', async () => {
    expect(await said('en', 'oRingNicked')).toMatch(
      /^At the main’s pressure it costs 0\.\d\d psi a minute in a proof of the first chamber, 0\.\d\d psi in the second\.$/,
    );
    expect(await said('en', 'oRingNicked', 9e-9)).not.toBe(await said('en', 'oRingNicked'));
    expect(await said('en', 'pressureAboveTag', 0.3)).toBe('The main stands at 45.5 psig.');
    expect(await said('en', 'thinWall')).toBe((await faultWords('en')).thinWall.what);
  });

  it.each(faultIds)(
    'is whole and of its own language for %s, with a figure where there are degrees',
    async (id) => {
      const [english, spanish] = [await said('en', id), await said('es', id)];
      for (const sentence of [english, spanish]) {
        expect(sentence).toMatch(/^[\p{Lu}\d].*\.$/u);
        expect(sentence).not.toMatch(/[{}]|NaN|undefined/);
      }
      expect(spanish).not.toBe(english);
      if (faults[id].severity !== null) expect(english).toMatch(/\d/);
    },
  );

  it('may follow a slider', async () => {
    const speech = await faultSpeech('en');
    const begun = performance.now();
    for (const id of faultIds) sayMeaning(id, meaning(faults[id], usual(id), job), speech, unitsOf('us'));
    // all of them in the time that one may take
    expect(performance.now() - begun).toBeLessThan(50);
  });
});
