import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { Chance } from '../../src/cli/bench/randomActions.ts';
import { parseScenario, scenarioJsonSchema, type ParsedScenario } from '../../src/core/scenario/index.ts';
import { shippedNames, shippedText } from '../scenarios/shipped.ts';
import { generated } from './generated.ts';
import { hostile, spoiltValue } from './spoilt.ts';

// Ours against an independent judge of the published schema: ajv, JSON Schema draft 2020-12. The test script takes a
// part of the 10,000 that `FILES=10000 npx vitest run tests/scenario/agreement.test.ts` reads.
const FILES = Number(process.env.FILES ?? 2000);
/** Longest that one file may take, ms. */
const FILE_MOST_MS = 1000;

const valid = new Ajv2020({ strict: true, strictTypes: false, strictTuples: false }).compile(
  scenarioJsonSchema(),
);

/** One text read: it must be quick, throw nothing, and say where and why in a sentence. */
function read(input: string | Uint8Array): ParsedScenario {
  const begun = performance.now();
  const parsed = parseScenario(input);
  expect(performance.now() - begun).toBeLessThan(FILE_MOST_MS);
  if ('scenario' in parsed) return parsed;
  expect(parsed.problems.length).toBeGreaterThan(0);
  for (const { where, says } of parsed.problems) {
    expect(typeof where).toBe('string');
    expect(says).toMatch(/^\p{Lu}[^]*\.$/u);
  }
  return parsed;
}

/** Whether every entry is what the schema says, by ours. */
const fits = (parsed: ParsedScenario): boolean => 'scenario' in parsed || parsed.refusedAs === 'whole';

describe('ten thousand strange exercise files', () => {
  const texts = shippedNames.map(shippedText);
  const tally = { fit: 0, unfit: 0, whole: 0 };

  const agree = (document: unknown, what: string): void => {
    const text = JSON.stringify(document);
    const parsed = read(text);
    if (valid(JSON.parse(text)) !== fits(parsed))
      expect.fail(`${what}: ${JSON.stringify(parsed).slice(0, 300)}; ajv: ${JSON.stringify(valid.errors)}`);
    if (fits(parsed)) tally.fit += 1;
    else tally.unfit += 1;
    if ('refusedAs' in parsed && parsed.refusedAs === 'whole') tally.whole += 1;
  };

  it(
    'are judged as the published schema judges them, where exercises were spoilt',
    { timeout: 300_000 },
    () => {
      for (let seed = 0; seed < FILES * 0.4; seed += 1) {
        const chance = new Chance(seed);
        agree(spoiltValue(JSON.parse(chance.pick(texts)), chance), `spoilt ${seed}`);
      }
      expect(Math.min(tally.fit, tally.unfit)).toBeGreaterThan(FILES * 0.04);
      expect(tally.whole).toBeGreaterThan(0);
    },
  );

  it(
    'are judged so where they were made up from the schema, and where those were spoilt',
    { timeout: 300_000 },
    () => {
      for (let seed = 0; seed < FILES * 0.2; seed += 1) {
        const chance = new Chance(seed);
        const made = generated(chance);
        expect(valid(made), `made ${seed}: ${JSON.stringify(valid.errors)}`).toBe(true);
        agree(made, `made ${seed}`);
        agree(spoiltValue(made, chance), `made and spoilt ${seed}`);
      }
    },
  );

  it('are refused before anything is built of them, where they could hurt', { timeout: 300_000 }, () => {
    const met = new Set<string>();
    for (let seed = 0; seed < FILES * 0.2; seed += 1) {
      const chance = new Chance(seed);
      const { bytes, how } = hostile(chance.pick(texts), chance);
      const parsed = read(bytes);
      met.add(how);
      if (!('refusedAs' in parsed) || parsed.refusedAs !== 'text')
        expect.fail(`${seed}, ${how}: ${JSON.stringify(parsed).slice(0, 300)}`);
    }
    expect(met.size).toBe(15);
    expect(({} as Record<string, unknown>).x).toBeUndefined();
  });
});
