import Ajv2020 from 'ajv/dist/2020.js';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseScenario, scenarioJsonSchema, setJsonSchema } from '../../src/core/scenario/index.ts';
import { exercise } from './exercise.ts';

// An independent judge of the published schema: ajv, JSON Schema draft 2020-12.
const valid = new Ajv2020({ strict: true, strictTypes: false, strictTuples: false, allErrors: true }).compile(
  scenarioJsonSchema(),
);

type Loose = Record<string, unknown> & { job: Record<string, Record<string, unknown>> };
const spoilt: readonly (readonly [string, (draft: Loose) => void])[] = [
  ['a number where a text belongs', (d) => (d.title = 7)],
  ['a text where a number belongs', (d) => (d.job.system.temperatureK = 'cold')],
  ['a value out of bounds', (d) => (d.job.site.holeDepthM = 50)],
  ['an unknown word', (d) => (d.job.workpiece.boss = 'shiny')],
  ['an unknown entry', (d) => (d.brif = '')],
  ['a missing entry', (d) => delete d.seed],
  ['a piece of no known kind', (d) => ((d.job.kit as unknown as { kind: string }[])[0].kind = 'hammer')],
  [
    'a list in the place of a set that may be empty',
    (d) => ((d.job.kit as unknown as { defects: unknown }[])[0].defects = []),
  ],
  ['a text one character too long, each of them written in two halves', (d) => (d.title = '🜂'.repeat(121))],
  ['an id with a blank', (d) => (d.id = 'two words')],
];

describe('the published schema of an exercise', () => {
  it('counts a character as one, however it is written, as the reader does', () => {
    const draft = exercise() as unknown as Loose;
    draft.title = '🜂'.repeat(120);
    expect(valid(draft)).toBe(true);
    expect('scenario' in parseScenario(draft)).toBe(true);
  });

  it('names its draft', () => {
    expect(scenarioJsonSchema()).toHaveProperty('$schema', 'https://json-schema.org/draft/2020-12/schema');
  });

  it.each([
    ['scenario', scenarioJsonSchema],
    ['set', setJsonSchema],
  ])('stands beside the exercises as the command prints it: %s', (name, made) => {
    const file = readFileSync(`scenarios/${name}.schema.json`, 'utf8');
    expect(JSON.parse(file)).toEqual(made());
  });

  it('takes the shipped exercise', () => {
    valid(exercise());
    expect(valid.errors).toBeNull();
  });

  it.each(spoilt)('refuses %s, as the reader does', (_, spoil) => {
    const draft = exercise() as unknown as Loose;
    spoil(draft);
    expect(valid(draft)).toBe(false);
    expect('problems' in parseScenario(draft)).toBe(true);
  });
});
